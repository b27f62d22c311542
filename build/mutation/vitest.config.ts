import { defineConfig } from 'vitest/config';
import { z } from 'zod';

/** Only the tests that one part's mutants are held against (`main.mjs`). */
const tests = z.array(z.string()).parse(JSON.parse(process.env['MUTATION_TESTS'] ?? '[]'));

export default defineConfig({
  test: {
    include: tests.map((place) => place.replace(/\*\*$/, '**/*.test.ts').replace(/([^*])\*$/, '$1*.test.ts')),
    environment: 'node',
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
