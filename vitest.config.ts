import { defineConfig } from 'vitest/config';

export default defineConfig({
  // graphql has two copies, and checks that all its objects come from one: the tests load the one that Node loads.
  ssr: { resolve: { conditions: ['module-sync', 'node'] } },
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
  },
});
