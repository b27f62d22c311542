import { statSync } from 'node:fs';
import { BaseSequencer } from 'vitest/node';
import { defineConfig } from 'vitest/config';
import { z } from 'zod';

/** Only the tests that one part's mutants are held against (`main.mjs`). */
const tests = z.array(z.string()).parse(JSON.parse(process.env['MUTATION_TESTS'] ?? '[]'));

/** Small files first: the first failure ends the run of a mutant, and large files mostly take longer. */
class QuickFirst extends BaseSequencer {
  override sort(files: Parameters<BaseSequencer['sort']>[0]) {
    const size = ({ moduleId }: (typeof files)[number]) => statSync(moduleId).size;
    return Promise.resolve([...files].sort((a, b) => size(a) - size(b)));
  }
}

export default defineConfig({
  test: {
    include: tests.map((place) => place.replace(/\*\*$/, '**/*.test.ts').replace(/([^*])\*$/, '$1*.test.ts')),
    environment: 'node',
    setupFiles: ['build/mutation/setup.ts'],
    // The domain keeps nothing between calls, so one worker may run all the files of a mutant.
    isolate: false,
    sequence: { sequencer: QuickFirst },
    // Only Stryker may say that a mutant takes too long: a test that the clock fails would count as one that noticed.
    testTimeout: 900_000,
    hookTimeout: 120_000,
  },
});
