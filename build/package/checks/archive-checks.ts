import { createHash } from 'node:crypto';
import { packagesIn, type Packed } from './packed.ts';
import type { Project } from '../project.ts';

/** What must hold of the packed archive, one function each. They return what is wrong, a line each. */
export type ArchiveCheck = { what: string; problems: (packed: Packed, project: Project) => string[] };

const BUILT = [
  'out/main/main.js',
  'out/main/solve-worker.js',
  'out/main/entry/worker.js',
  'out/preload/preload.cjs',
  'out/renderer/index.html',
  'package.json',
];

/** What may be in it at all. */
const PLACES = /^(?:package\.json$|out\/(?:main|preload|renderer)\/|node_modules\/)/;

/** Nobody runs them there, or everybody could read what is nobody's business. */
const LEFT_OUT = /\.(?:ts|map|svelte|md|cpp|hpp|h|c|gyp)$|(?:^|\/)(?:test|tests|deps|src)\//;

/** The kind of processor in an ELF file's header (its e_machine, at byte 18). */
const ELF_MACHINE: Readonly<Record<string, number>> = { x64: 62, arm64: 183 };

export const ARCHIVE_CHECKS: readonly ArchiveCheck[] = [
  { what: 'main, preload and window are in the archive, and nothing but them', problems: builtAlone },
  { what: 'all migrations are in it, letter for letter', problems: allMigrations },
  { what: 'one compiled driver, for this processor, outside of the archive', problems: oneDriver },
  { what: 'no package but the dependencies, so none for development', problems: dependenciesAlone },
  { what: 'its package.json starts the program and has no scripts', problems: leanManifest },
  { what: 'no file names a folder of this machine', problems: noMachineFolder },
  { what: 'every file has the hash that the archive says', problems: hashesHold },
];

function builtAlone(packed: Packed): string[] {
  const missing = BUILT.filter((name) => !packed.has(name)).map((name) => `${name} is missing`);
  const others = [...packed.keys()]
    .filter((name) => !PLACES.test(name) || LEFT_OUT.test(name))
    .map((name) => `${name} does not belong in it`);
  return [...missing, ...others];
}

function allMigrations(packed: Packed, { migrations }: Project): string[] {
  if (migrations.size === 0) return ['the project has none'];
  return [...migrations].flatMap(([name, sql]) => {
    const file = packed.get(`out/main/migrations/${name}`);
    if (file === undefined) return [`${name} is missing`];
    return file.read().toString('utf8') === sql ? [] : [`${name} differs from the project's`];
  });
}

function oneDriver(packed: Packed, { arch }: Project): string[] {
  const natives = [...packed].filter(([name]) => name.endsWith('.node'));
  const [only] = natives;
  if (natives.length !== 1 || only === undefined) {
    return [`${String(natives.length)} .node files: ${natives.map(([name]) => name).join(', ')}`];
  }
  const [name, file] = only;
  if (!file.unpacked) return [`${name} is inside the archive, where the system's loader cannot take it from`];
  const outside = [...packed].filter(([, { unpacked }]) => unpacked).map(([path]) => path);
  if (outside.length > 1)
    return [`outside of the archive, where no hash protects them: ${outside.join(', ')}`];
  const machine = file.read().readUInt16LE(18);
  return machine === ELF_MACHINE[arch] ? [] : [`${name} is for machine ${String(machine)}, not ${arch}`];
}

function dependenciesAlone(packed: Packed, { dependencies }: Project): string[] {
  const found = packagesIn(packed);
  return [
    ...found.filter((name) => !dependencies.includes(name)).map((name) => `${name} is in it`),
    ...dependencies.filter((name) => !found.includes(name)).map((name) => `${name} is missing`),
  ];
}

function leanManifest(packed: Packed, { version }: Project): string[] {
  const text = packed.get('package.json')?.read().toString('utf8') ?? '{}';
  const manifest = JSON.parse(text) as Record<string, unknown>;
  return [
    ...(typeof manifest['main'] === 'string' && packed.has(manifest['main'])
      ? []
      : [`main is ${String(manifest['main'])}, which is not there`]),
    ...(manifest['version'] === version ? [] : [`version ${String(manifest['version'])}, not ${version}`]),
    ...['scripts', 'devDependencies'].filter((key) => key in manifest).map((key) => `has ${key}`),
  ];
}

function noMachineFolder(packed: Packed, { machineFolders }: Project): string[] {
  return [...packed].flatMap(([name, file]) => {
    const text = file.read().toString('latin1');
    return machineFolders
      .filter((folder) => text.includes(`${folder}/`))
      .map((folder) => `${name} names ${folder}`);
  });
}

function hashesHold(packed: Packed): string[] {
  return [...packed].flatMap(([name, file]) => {
    if (file.hash === null) return [`${name} has none`];
    const hash = createHash('sha256').update(file.read()).digest('hex');
    return hash === file.hash ? [] : [`${name} differs from its hash`];
  });
}
