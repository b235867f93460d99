import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/bench/**', 'tests/long/**'],
    testTimeout: 30_000,
    maxWorkers: 2,
  },
});
