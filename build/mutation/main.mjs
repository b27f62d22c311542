// Mutation testing of one part of the domain (`npm run mutate -- solve`): every mutant that no test notices is listed.
// Prints the score; exit 1 below the goal. Not part of .ci/run: it takes minutes to hours.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const GOAL_PERCENT = 85;

/** What is changed, and the tests that should notice: those that take long for each mutant are left out. */
const PARTS = {
  flight: [
    'test/unit/domain/flight/**',
    'test/reference/flight/{air,closed-forms,impact,ladder,shots,tour}*',
  ],
  player: ['test/unit/domain/player/**', 'test/reference/{player,need}/**'],
  solve: ['test/unit/domain/solve/**', 'test/reference/solve/{brute-force,alternatives}*'],
  advice: ['test/unit/domain/advice/**', 'test/reference/cases/**'],
};

const [part, ...more] = process.argv.slice(2);
const tests = PARTS[part];
if (!tests) {
  console.error(
    `npm run mutate -- PART [stryker's own flags]; PART is one of ${Object.keys(PARTS).join(', ')}.`,
  );
  process.exit(2);
}
const report = path.join(root, `out/mutation/${part}.json`);
const run = spawnSync(
  process.execPath,
  [
    path.join(root, 'node_modules/@stryker-mutator/core/bin/stryker.js'),
    'run',
    'build/mutation/stryker.config.mjs',
    '--mutate',
    `src-main/domain/${part}/**/*.ts`,
    ...more,
  ],
  {
    cwd: root,
    stdio: 'inherit',
    env: {
      ...process.env,
      MUTATION_TESTS: JSON.stringify(tests),
      MUTATION_REPORT: report,
      BRUTE_FORCE: '150',
    },
  },
);
if (run.status !== 0 || !existsSync(report)) process.exit(run.status || 1);

const { files } = JSON.parse(readFileSync(report, 'utf8'));
const count = {};
for (const { mutants } of Object.values(files)) {
  for (const { status } of mutants) count[status] = (count[status] ?? 0) + 1;
}
const killed = (count.Killed ?? 0) + (count.Timeout ?? 0);
const alive = (count.Survived ?? 0) + (count.NoCoverage ?? 0);
const percent = (100 * killed) / (killed + alive);
console.log(
  `${part}: ${killed} of ${killed + alive} mutants noticed, ${percent.toFixed(1)} %; ${count.NoCoverage ?? 0} in code that no such test runs`,
);
process.exit(percent >= GOAL_PERCENT ? 0 : 1);
