import { expect } from 'vitest';
import { checkStore } from '../../src/questions/check-store.ts';
import { checksum } from '../../src/questions/export-graph.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { testWorld } from '../support/test-world.ts';

/** Whatever is done, the store is whole afterwards, and holds what it held if no change set was written. */
export async function leavesNothing(
  store: GraphStore,
  work: () => Promise<void>,
): Promise<{ readonly written: number }> {
  const [before, sum] = [await store.lastChangeSet(), await checksum(store)];
  await work();
  const check = await checkStore(store, testWorld(), { rebuild: false });
  expect(check.faults).toEqual([]);
  const written = (await store.lastChangeSet()) - before;
  if (written === 0) expect(check.checksum).toBe(sum);
  return { written };
}
