// Breaks each advice rule in a copy of the project, one change at a time, and sees that a test fails.
// `npm run mutate:rules` prints what was broken and what survived; exit 1 when anything survived.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const copy = mkdtempSync(path.join(tmpdir(), 'loftledger-mutants-'));
process.on('exit', () => rmSync(copy, { recursive: true, force: true }));
for (const name of [
  'src-main',
  'db',
  'test',
  'package.json',
  'tsconfig.json',
  'vitest.config.ts',
  'svelte.config.js',
]) {
  cpSync(path.join(root, name), path.join(copy, name), { recursive: true });
}
symlinkSync(path.join(root, 'node_modules'), path.join(copy, 'node_modules'));

const VERDICTS = ['keep', 'drop', 'replace', 'add', 'ask', 'coach-first', 'wait', 'stop'];

/** Every threshold halved and doubled, every verdict turned into another. */
function mutantsOf(text) {
  const mutants = [];
  const put = (at, length, by, what) =>
    mutants.push({ text: text.slice(0, at) + by + text.slice(at + length), what });
  for (const found of text.matchAll(/^(?:export )?const ([A-Z][A-Z_]*) = (\d+(?:\.\d+)?);/gm)) {
    const [whole, name, value] = found;
    const at = found.index + whole.lastIndexOf(value);
    put(at, value.length, String(Number(value) / 2), `${name} = ${value} halved`);
    put(at, value.length, String(Number(value) * 2), `${name} = ${value} doubled`);
  }
  for (const found of text.matchAll(/(verdict: (?:[^',\n]*\? )?|': )'([a-z-]+)'/g)) {
    if (!VERDICTS.includes(found[2])) continue;
    const at = found.index + found[0].length - found[2].length - 1;
    put(at, found[2].length, found[2] === 'keep' ? 'drop' : 'keep', `verdict ${found[2]} turned`);
  }
  return mutants;
}

const folder = path.join(copy, 'src-main/domain/advice/rules');
const vitest = path.join(root, 'node_modules/vitest/vitest.mjs');
/** The quick ones first: the rest is only run where these notice nothing. */
const TESTS = [
  ['test/unit/domain/advice/rules', 'test/unit/domain/advice/question'],
  ['test/unit/domain/advice', 'test/reference/cases', 'test/reference/player'],
];

function passes(tests) {
  const words = [vitest, 'run', '--bail=1', '--isolate=false', '--reporter=dot', ...tests];
  return spawnSync(process.execPath, words, { cwd: copy, encoding: 'utf8' }).status === 0;
}

if (!TESTS.every(passes)) {
  console.error('The tests fail in the copy before anything is broken, so that they would prove nothing.');
  process.exit(2);
}
let killed = 0;
const survived = [];
const untouched = [];
for (const file of readdirSync(folder, { recursive: true }).sort()) {
  if (!file.endsWith('.ts')) continue;
  const place = path.join(folder, file);
  const text = readFileSync(place, 'utf8');
  const mutants = mutantsOf(text);
  if (mutants.length === 0) untouched.push(file);
  for (const mutant of mutants) {
    writeFileSync(place, mutant.text);
    const alive = TESTS.every(passes);
    if (alive) survived.push(`${file}: ${mutant.what}`);
    else killed++;
    process.stderr.write(alive ? 'S' : '.');
  }
  writeFileSync(place, text);
}
process.stderr.write('\n');
for (const one of survived) console.log(`survived  ${one}`);
console.log(`no threshold or verdict of its own: ${untouched.join(', ')}`);
console.log(`${killed} mutants killed, ${survived.length} survived`);
process.exit(survived.length === 0 ? 0 : 1);
