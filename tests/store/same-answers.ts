import fc from 'fast-check';
import { expect } from 'vitest';
import { PlatestemmaError } from '../../src/errors.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { type StoreCommand, storeCommands } from '../arbitraries/store-commands.ts';
import { memoryStore } from '../support/memory-store.ts';

/** Runs random commands on a store and on the truth; the answers are the same bytes. */
export async function expectSameAnswers(
  open: () => Promise<GraphStore>,
  runs: number,
  seed = Number(process.env['SEED'] ?? Date.now() % 1_000_000_000),
): Promise<void> {
  await fc.assert(
    fc.asyncProperty(storeCommands(), async commands => {
      const truth = memoryStore();
      const store = await open();
      try {
        for (const command of commands) {
          expect(await answerOf(store, command), command.says).toBe(await answerOf(truth, command));
        }
      } finally {
        await store.close();
      }
    }),
    { seed, numRuns: runs },
  );
}

async function answerOf(store: GraphStore, command: StoreCommand): Promise<string> {
  try {
    return JSON.stringify(await command.run(store)) ?? 'undefined';
  } catch (error) {
    if (error instanceof PlatestemmaError) return error.code;
    throw error;
  }
}
