// What the program claims, measured anew (`npm run proof`): runs the checks against outside sources and prints the
// figures that they tell (test/support/figures.ts). The exit code is that of the checks.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const folder = mkdtempSync(path.join(tmpdir(), 'loftledger-proof-'));
const file = path.join(folder, 'figures.jsonl');
writeFileSync(file, '');
const checks = ['flight', 'need', 'player', 'prices', 'solve', 'cases'];
const run = spawnSync(
  process.execPath,
  [
    path.join(root, 'node_modules/vitest/vitest.mjs'),
    'run',
    '--reporter=dot',
    ...checks.map((name) => `test/reference/${name}`),
  ],
  { cwd: root, stdio: ['ignore', 2, 2], env: { ...process.env, FIGURES: file } },
);
const figures = readFileSync(file, 'utf8')
  .split('\n')
  .filter(Boolean)
  .map((line) => JSON.parse(line))
  .sort((a, b) => (a.what < b.what ? -1 : 1));
rmSync(folder, { recursive: true, force: true });
const width = Math.max(0, ...figures.map(({ what }) => what.length));
for (const { what, value, unit } of figures) {
  const shown = Number.isInteger(value)
    ? value.toLocaleString('en-GB')
    : String(Number(value.toPrecision(3)));
  console.log(`${what.padEnd(width)}  ${shown}${unit && ` ${unit}`}`);
}
process.exit(run.status ?? 1);
