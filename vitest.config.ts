import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/{unit,reference,faults,e2e}/**/*.test.ts'],
    environment: 'node',
    testTimeout: 60_000,
    hookTimeout: 120_000,
    reporters: ['default'],
  },
});
