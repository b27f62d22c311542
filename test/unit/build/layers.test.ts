import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

// The layer rules themselves: a small tree in the project's shape, with one wrong import at a time.
const root = path.resolve(import.meta.dirname, '../../..');
let tree = '';

beforeAll(() => {
  tree = mkdtempSync(path.join(tmpdir(), 'loftledger-layers-'));
  for (const name of ['zod', 'better-sqlite3', 'electron']) {
    put(`node_modules/${name}/package.json`, `{"name":"${name}","main":"index.js"}`);
    put(`node_modules/${name}/index.js`, '');
  }
  put('package.json', '{"type":"module"}');
  put('src-main/contract/a.ts', `import { z } from 'zod';\nexport const a = z.string();\n`);
  put('src-main/domain/bag/b.ts', 'export const b = 1;\n');
  put('src-main/domain/solve/s.ts', `import { b } from '../bag/b.ts';\nexport const s = b;\n`);
  put('db/repositories/r.ts', 'export const r = 1;\n');
  put('src-renderer/app.ts', `import { a } from '../src-main/contract/a.ts';\nexport const app = a;\n`);
});
afterAll(() => {
  rmSync(tree, { recursive: true, force: true });
});

function put(name: string, text: string) {
  mkdirSync(path.dirname(path.join(tree, name)), { recursive: true });
  writeFileSync(path.join(tree, name), text);
}

function check() {
  const bin = path.join(root, 'node_modules/dependency-cruiser/bin/dependency-cruiser.mjs');
  const config = path.join(root, 'build/layers.cjs');
  const args = [bin, '--config', config, 'src-main', 'src-renderer', 'db'];
  const done = spawnSync(process.execPath, args, { cwd: tree, encoding: 'utf8' });
  return { status: done.status, text: done.stdout + done.stderr };
}

const WRONG: [name: string, file: string, text: string][] = [
  ['domain reading the disk', 'src-main/domain/bag/disk.ts', `import 'node:fs';`],
  ['domain using a package', 'src-main/domain/bag/package.ts', `import 'zod';`],
  ['domain importing the contract', 'src-main/domain/bag/contract.ts', `import '../../contract/a.ts';`],
  ['domain looking back up the flow', 'src-main/domain/bag/flow.ts', `import '../solve/s.ts';`],
  ['the renderer importing the domain', 'src-renderer/domain.ts', `import '../src-main/domain/bag/b.ts';`],
  ['the renderer importing Electron', 'src-renderer/electron.ts', `import 'electron';`],
  ['the contract importing the database', 'src-main/contract/db.ts', `import '../../db/repositories/r.ts';`],
  ['the database importing the domain', 'db/domain.ts', `import '../src-main/domain/bag/b.ts';`],
  ['SQL outside db', 'src-main/service/sql.ts', `import 'better-sqlite3';`],
  ['a folder that no rule covers', 'src-main/misc/new.ts', `import '../contract/a.ts';`],
  ['two files in a circle', 'db/circle-a.ts', `import './circle-b.ts';`],
];

describe('the layer check', () => {
  it('passes a tree that keeps the rules', () => {
    const result = check();
    expect(result.text).toMatch(
      /no dependency violations found \(\d+ modules, [1-9]\d* dependencies cruised\)/,
    );
    expect(result.status).toBe(0);
  });

  describe('fails', () => {
    let result = { status: null as number | null, text: '' };
    beforeAll(() => {
      for (const [, file, text] of WRONG) put(file, `${text}\n`);
      put('db/circle-b.ts', `import './circle-a.ts';\n`);
      result = check();
    });
    it('as an error', () => {
      expect(result.status).toBeGreaterThan(0);
    });
    it.each(WRONG)('%s', (_name, file) => {
      expect(result.text).toMatch(
        new RegExp(`error (?:not-in-allowed|no-circle): ${file.replace('.', '\\.')} →`),
      );
    });
  });
});
