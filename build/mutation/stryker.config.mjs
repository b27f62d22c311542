/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'build/mutation/vitest.config.ts', related: false },
  ignorePatterns: ['out', 'dist', '.ci', 'src-renderer'],
  // Texts are for people to judge; tests that copy them would hold nothing.
  mutator: { excludedMutations: ['StringLiteral'] },
  ignoreStatic: true,
  reporters: ['clear-text', 'json'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, allowEmojis: false },
  jsonReporter: { fileName: process.env.MUTATION_REPORT ?? 'out/mutation/report.json' },
  tempDirName: 'out/mutation/tmp',
  concurrency: 2,
  timeoutMS: 20_000,
};
