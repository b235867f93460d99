import { defineConfig } from 'vitest/config';

/** Tests that share one Neo4j server, which has one database. */
const withNeo4j = 'tests/**/neo4j/**/*.test.ts';

/** Tests that change the process they run in, or look at its threads: each file has one of its own. The others share modules. */
const apart = 'tests/{architecture,docker,hostile,store}/**/*.test.ts';

/** Tests that hold on every engine, run once more on that server: see tests/support/describe-on-engines.ts. */
const onEngines = [
  'tests/story/story.test.ts',
  'tests/story/demo-reach.test.ts',
  'tests/outside/graph-file-of-records.test.ts',
  ...[
    'all-kinds',
    'check-store',
    'edition-window',
    'graph-file-round-trip',
    'history',
    'search',
    'table-round-trip',
  ].map(name => `tests/questions/${name}.test.ts`),
];

export default defineConfig({
  // graphql has two copies, and checks that all its objects come from one: the tests load the one that Node loads.
  ssr: { resolve: { conditions: ['module-sync', 'node'] } },
  test: {
    testTimeout: 60_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: { name: 'local', include: ['tests/**/*.test.ts'], exclude: [apart, withNeo4j], isolate: false },
      },
      { extends: true, test: { name: 'apart', include: [apart], exclude: [withNeo4j] } },
      {
        extends: true,
        test: {
          name: 'neo4j',
          include: [withNeo4j, ...onEngines],
          setupFiles: ['tests/support/neo4j/setup.ts'],
          fileParallelism: false,
          globalSetup: ['tests/support/neo4j/global-setup.ts'],
        },
      },
    ],
  },
});
