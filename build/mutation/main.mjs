// Mutation testing of one part of the domain (`npm run mutate -- solve`): every mutant that no test notices is listed.
// Prints the score; exit 1 below the goal. Not part of .ci/run: it takes minutes to hours.
//   --sample N --seed S   only N mutants drawn at random (the same S, the same ones); the score comes with its
//                         95 % Wilson interval, and the goal is held against the score of the sample
//   --incremental         only what changed since the last such run (not with --sample)
//   --concurrency 1       and every other flag of Stryker's
// Left out throughout: texts, and what runs only while a module loads (its tables), which Stryker cannot turn on per test.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { NOT_DRAWN, wilsonPercent } from './sample.ts';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const GOAL_PERCENT = 85;

/**
 * The tests that should notice what is changed in a part: those that take long for each mutant are left out. Random
 * tests try one in `fewerRuns` of their cases; what they would notice with the rest is not counted.
 */
const PARTS = {
  flight: {
    tests: [
      'test/unit/domain/flight/**',
      'test/reference/flight/{adaptive,air,closed-forms,impact,ladder,shots,tour}*',
    ],
    fewerRuns: 8,
  },
  player: {
    tests: ['test/unit/domain/player/**', 'test/reference/player/**', 'test/reference/need/tee*'],
    fewerRuns: 30,
  },
  solve: {
    tests: [
      'test/unit/domain/solve/**',
      'test/reference/solve/{brute-force,alternatives,plan-alone,unpruned}*',
    ],
    fewerRuns: 60,
  },
  advice: {
    tests: ['test/unit/domain/advice/**', 'test/reference/{cases,player}/**'],
    fewerRuns: 8,
  },
};

const [part, ...flags] = process.argv.slice(2);
const { tests, fewerRuns } = PARTS[part] ?? {};
if (!tests) {
  console.error(
    `npm run mutate -- PART [--sample N --seed S] [stryker's own flags]; PART is one of ${Object.keys(PARTS).join(', ')}.`,
  );
  process.exit(2);
}
const { sample, seed, more } = ownFlags(flags);
const report = path.join(root, `out/mutation/${part}.json`);
rmSync(report, { force: true });
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
      MUTATION_KEPT: path.join(root, `out/mutation/${part}-kept.json`),
      ...(sample ? { MUTATION_SAMPLE: String(sample), MUTATION_SEED: String(seed) } : {}),
      FEWER_RUNS: String(fewerRuns),
    },
  },
);
if (run.status !== 0 || !existsSync(report)) process.exit(run.status || 1);
process.exit(closingLine() >= GOAL_PERCENT ? 0 : 1);

/** Our own flags taken out of those that go to Stryker. */
function ownFlags(args) {
  const { tokens } = parseArgs({ args, strict: false, tokens: true });
  const at = (name) => tokens.find((token) => token.kind === 'option' && token.name === name);
  const whole = (name, otherwise) => {
    const found = at(name);
    if (!found) return otherwise;
    const text = found.inlineValue ? found.value : args[found.index + 1];
    if (!/^[1-9]\d*$/.test(text ?? '')) {
      console.error(`--${name} takes a whole number above 0, not ${text}.`);
      process.exit(2);
    }
    return Number(text);
  };
  const own = new Set();
  for (const name of ['sample', 'seed']) {
    const found = at(name);
    if (!found) continue;
    own.add(found.index);
    if (!found.inlineValue) own.add(found.index + 1);
  }
  return {
    sample: whole('sample', null),
    seed: whole('seed', 1),
    more: args.filter((_, index) => !own.has(index)),
  };
}

/** Prints what came of the mutants, and gives the score in percent. */
function closingLine() {
  const { files } = JSON.parse(readFileSync(report, 'utf8'));
  const mutants = Object.values(files).flatMap((file) => file.mutants);
  const count = (status, reason = /^/) =>
    mutants.filter((m) => m.status === status && reason.test(m.statusReason ?? '')).length;
  const endless = count('Timeout', /^Hit limit/);
  const late = count('Timeout') - endless;
  const killed = count('Killed') + count('Timeout');
  const tried = killed + count('Survived') + count('NoCoverage');
  const percent = (100 * killed) / tried;
  const [low, high] = wilsonPercent(killed, tried);
  const left = count('CompileError', new RegExp(`^${NOT_DRAWN}`));
  console.log(
    [
      `${part}: ${killed} of ${tried} mutants noticed, ${percent.toFixed(1)} %`,
      ...(sample
        ? [
            `a sample (seed ${seed}) of ${tried + left}, 95 % interval ${low.toFixed(1)} to ${high.toFixed(1)} %`,
          ]
        : []),
      `${count('Killed')} by a failing test, ${endless} by an endless loop, ${late} by the clock`,
      `${count('Survived')} survived, ${count('NoCoverage')} in code that no such test runs`,
      `${count('RuntimeError')} could not be run, ${count('Ignored')} left out`,
    ].join('; '),
  );
  return percent;
}
