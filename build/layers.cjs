// Which folder may import what. A folder that no line covers may import nothing, so it is reported.
// Checked as errors by `npm run check:layers`; test/unit/build/layers.test.ts proves that a wrong import fails.

const domain = (...folders) => folders.map((folder) => `src-main/domain/${folder}`);

/** folder → what it may import: folders of ours, packages (npm:…), Node itself (node). */
const MAY_IMPORT = {
  // The flow of one answer, top down: no folder of the domain looks back.
  'src-main/domain/bag': domain('bag'),
  'src-main/domain/flight': domain('bag', 'flight'),
  'src-main/domain/player': domain('bag', 'flight', 'player'),
  'src-main/domain/prices': domain('bag', 'prices'),
  'src-main/domain/solve': domain('bag', 'flight', 'player', 'prices', 'solve'),
  'src-main/domain/advice': domain('bag', 'flight', 'player', 'prices', 'solve', 'advice'),
  'src-main/domain/report': domain('bag', 'flight', 'player', 'prices', 'solve', 'advice', 'report'),
  'src-main/contract': ['src-main/contract', 'src-main/domain', 'npm:zod'],
  db: ['db', 'src-main/contract', 'npm:better-sqlite3', 'node'],
  'src-main/worker': ['src-main/worker', 'src-main/contract', 'src-main/domain', 'npm:fuse.js', 'node'],
  'src-main/service': [
    'src-main/service',
    'src-main/worker',
    'src-main/contract',
    'src-main/domain',
    'db',
    'node',
    'npm:zod',
    'npm:papaparse',
    'npm:fuse.js',
    'npm:tinypool',
  ],
  'build/find': ['node'],
  'src-main/cli': [
    'src-main/cli',
    'build/find',
    'src-main/host/print',
    'src-main/worker',
    'src-main/service',
    'src-main/contract',
    'src-main/domain',
    'db/errors',
    'node',
  ],
  'src-main/host': ['src-main/host', 'src-main/contract', 'src-main/service', 'node'],
  'src-main/browser-host': [
    'src-main/browser-host',
    'src-main/host',
    'src-main/service',
    'src-main/contract',
    'db/files/lock',
    'db/errors',
    'node',
  ],
  'src-main/electron-host': [
    'src-main/electron-host',
    'src-main/host',
    'src-main/service',
    'src-main/contract',
    'db/files/lock',
    'db/errors',
    'node',
    'npm:electron',
  ],
  'src-main/main': ['src-main/electron-host', 'src-main/host', 'node', 'npm:electron'],
  'src-main/preload': ['src-main/contract', 'npm:electron'],
  'src-renderer': [
    'src-renderer',
    'src-main/contract',
    'npm:svelte',
    'npm:bits-ui',
    'npm:d3-scale',
    'npm:d3-shape',
    'npm:svelte-dnd-action',
  ],
};

const escape = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
const startOf = (folder) => `^${escape(folder)}(?:/|\\.)`;

function target(name) {
  if (name === 'node') return { dependencyTypes: ['core'] };
  if (name.startsWith('npm:')) {
    const pack = escape(name.slice(4));
    return { path: `^(?:node_modules/(?:@types/)?${pack}(?:/|$)|${pack}$)` };
  }
  return { path: startOf(name) };
}

module.exports = {
  forbidden: [
    {
      name: 'no-circle',
      comment:
        'Two files that import each other cannot be read one after the other. Move what both need below them.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'not-to-unresolvable',
      comment: 'The import leads nowhere.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^(?:electron|virtual:)' },
    },
  ],
  allowed: Object.entries(MAY_IMPORT).flatMap(([folder, names]) =>
    names.map((name) => ({ from: { path: startOf(folder) }, to: target(name) })),
  ),
  allowedSeverity: 'error',
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '\\.(?:css|sql|svg|png|woff2)$' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      extensions: ['.ts', '.svelte.ts', '.svelte', '.js', '.mjs', '.json'],
      conditionNames: ['import', 'svelte', 'node', 'default'],
      exportsFields: ['exports'],
      mainFields: ['module', 'main', 'types'],
    },
  },
};
