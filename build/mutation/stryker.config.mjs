/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner', './build/mutation/sample-checker.mjs'],
  checkers: process.env.MUTATION_SAMPLE ? ['sample'] : [],
  vitest: { configFile: 'build/mutation/vitest.config.ts', related: false },
  ignorePatterns: ['out', 'dist', '.ci', 'src-renderer'],
  // Texts are for people to judge; tests that copy them would hold nothing.
  mutator: { excludedMutations: ['StringLiteral'] },
  ignoreStatic: true,
  reporters: ['clear-text', 'json', 'progress-append-only'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, allowEmojis: false },
  jsonReporter: { fileName: process.env.MUTATION_REPORT ?? 'out/mutation/report.json' },
  incrementalFile: process.env.MUTATION_KEPT ?? 'out/mutation/kept.json',
  tempDirName: 'out/mutation/tmp',
  concurrency: 2,
  // An endless loop is mostly stopped by Stryker's count of hits; the clock must not strike on a busy machine.
  timeoutMS: 30_000,
  timeoutFactor: 3,
};
