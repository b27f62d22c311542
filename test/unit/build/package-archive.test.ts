import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { ARCHIVE_CHECKS } from '../../../build/package/checks/archive-checks.ts';
import { packagesIn, type Packed, type PackedFile } from '../../../build/package/checks/packed.ts';
import type { Project } from '../../../build/package/project.ts';

const PROJECT: Project = {
  version: '1.2.3',
  dependencies: ['driver'],
  migrations: new Map([['0001-a.sql', 'CREATE TABLE a;']]),
  shipped: [],
  arch: 'x64',
  machineFolders: ['/home/someone'],
};

const DRIVER = 'node_modules/driver/prebuilds/linux-x64.node';

/** An ELF header up to the kind of processor: 62 is x64. */
const elf = (machine: number) => Buffer.from([...Buffer.alloc(18), machine, 0]);

function file(content: string | Buffer, unpacked = false): PackedFile {
  const bytes = Buffer.from(content);
  return { unpacked, hash: createHash('sha256').update(bytes).digest('hex'), read: () => bytes };
}

/** A sound archive, with files put in or, by null, taken out. */
function archive(changes: Record<string, PackedFile | null> = {}): Packed {
  const files = new Map<string, PackedFile>([
    ['package.json', file('{"version":"1.2.3","main":"out/main/main.js"}')],
    ['out/main/main.js', file('run()')],
    ['out/main/solve-worker.js', file('solve()')],
    ['out/main/entry/worker.js', file('work()')],
    ['out/main/migrations/0001-a.sql', file('CREATE TABLE a;')],
    ['out/preload/preload.cjs', file('bridge()')],
    ['out/renderer/index.html', file('<p>')],
    ['node_modules/driver/package.json', file('{}')],
    [DRIVER, file(elf(62), true)],
  ]);
  for (const [name, changed] of Object.entries(changes)) {
    if (changed === null) files.delete(name);
    else files.set(name, changed);
  }
  return files;
}

const problemsOf = (packed: Packed) =>
  ARCHIVE_CHECKS.flatMap(({ problems }) => problems(packed, PROJECT)).sort();

const WRONG: [name: string, changes: Record<string, PackedFile | null>, problem: string][] = [
  ['no worker', { 'out/main/entry/worker.js': null }, 'out/main/entry/worker.js is missing'],
  ['our sources', { 'src-main/main.ts': file('') }, 'src-main/main.ts does not belong in it'],
  [
    'a source map',
    { 'out/renderer/index.js.map': file('{}') },
    'out/renderer/index.js.map does not belong in it',
  ],
  ['the build’s leavings', { 'out/built-from': file('') }, 'out/built-from does not belong in it'],
  ['a migration missing', { 'out/main/migrations/0001-a.sql': null }, '0001-a.sql is missing'],
  [
    'a migration changed',
    { 'out/main/migrations/0001-a.sql': file('DROP TABLE a;') },
    "0001-a.sql differs from the project's",
  ],
  [
    'two drivers',
    { 'node_modules/driver/prebuilds/win32-x64.node': file(elf(62), true) },
    `2 .node files: ${DRIVER}, node_modules/driver/prebuilds/win32-x64.node`,
  ],
  ['no driver', { [DRIVER]: null }, '0 .node files: '],
  [
    'the driver in the archive',
    { [DRIVER]: file(elf(62)) },
    `${DRIVER} is inside the archive, where the system's loader cannot take it from`,
  ],
  [
    'the driver of another processor',
    { [DRIVER]: file(elf(183), true) },
    `${DRIVER} is for machine 183, not x64`,
  ],
  [
    'scripts left outside of the archive',
    { 'out/main/main.js': file('run()', true) },
    `outside of the archive, where no hash protects them: out/main/main.js, ${DRIVER}`,
  ],
  ['a package for development', { 'node_modules/@x/tool/index.js': file('') }, '@x/tool is in it'],
  [
    'scripts',
    { 'package.json': file('{"version":"1.2.3","main":"out/main/main.js","scripts":{}}') },
    'has scripts',
  ],
  [
    'another version',
    { 'package.json': file('{"version":"1.2.4","main":"out/main/main.js"}') },
    'version 1.2.4, not 1.2.3',
  ],
  [
    'an entry that is not there',
    { 'package.json': file('{"version":"1.2.3","main":"main.js"}') },
    'main is main.js, which is not there',
  ],
  [
    'a folder of this machine',
    { 'out/main/main.js': file('"/home/someone/project/x"') },
    'out/main/main.js names /home/someone',
  ],
  [
    'bytes that differ from their hash',
    { 'out/main/main.js': { ...file('run()'), read: () => Buffer.from('ruin()') } },
    'out/main/main.js differs from its hash',
  ],
  ['no hash', { 'out/main/main.js': { ...file('run()'), hash: null } }, 'out/main/main.js has none'],
];

describe('the checks of the archive', () => {
  it('find nothing wrong in a sound one', () => {
    expect(problemsOf(archive())).toEqual([]);
  });

  it.each(WRONG)('find %s, and that alone', (_name, changes, problem) => {
    expect(problemsOf(archive(changes))).toEqual([problem]);
  });

  it('do not take a project without migrations for whole', () => {
    const check = ARCHIVE_CHECKS.find(({ what }) => what.includes('migrations'));
    expect(check?.problems(archive(), { ...PROJECT, migrations: new Map() })).toEqual([
      'the project has none',
    ]);
  });
});

describe('packagesIn', () => {
  it('sees scopes and packages within packages', () => {
    const names = ['node_modules/@a/b/x.js', 'node_modules/c/node_modules/d/y.js', 'out/main/main.js'];
    expect(packagesIn(new Map(names.map((name) => [name, file('')])))).toEqual(['@a/b', 'd']);
  });
});
