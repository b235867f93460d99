import { describe, expect, test } from 'vitest';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { faultyStore } from '../../support/faulty-store.ts';
import { runs, seedOfRun } from '../../support/runs.ts';
import { sqliteStoreInProcess } from '../../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../../support/temporary-store.ts';
import { firstOtherwise } from './answers-again.ts';

describe('as of a change set', () => {
  const seed = seedOfRun();
  test(`answers are those that were given at the time, after 150 edits, and after 10,000 where there is time (seed ${seed})`, async () => {
    const { store } = sqliteStoreInProcess(temporaryStore());
    expect(await firstOtherwise(store, runs(150, 10_000), runs(15, 100), seed)).toBeUndefined();
  }, 7_200_000);

  test.each<readonly [string, (store: GraphStore) => Partial<GraphStore>]>([
    ['rows are those of now', s => ({ rows: ids => s.rows(ids) })],
    ['links are those of now', s => ({ linked: (ids, via) => s.linked(ids, via) })],
    ['a scan is of now', s => ({ scan: (after, limit) => s.scan(after, limit) })],
    ['versions are left out', s => ({ versions: async id => (await s.versions(id)).slice(0, 1) })],
  ])(
    'that they are others is seen where %s',
    async (fault, spoil) => {
      const { store } = sqliteStoreInProcess(temporaryStore());
      // What does not fit together may break a promise, too.
      const wrong = await firstOtherwise(store, 40, 8, 3, of => faultyStore(of, { fault, spoil })).catch(
        error => error,
      );
      expect(wrong).toBeDefined();
    },
    120_000,
  );
});
