import { expect, test } from 'vitest';
import type { EditionTraits, EditionWindow, GraphStore } from '../../../src/store/graph-store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { windowsOfGroups } from '../../support/memory-store-groups.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore, inDatabase, openStore } from '../../support/neo4j/empty-neo4j-store.ts';
import { seedOfRun } from '../../support/runs.ts';
import { seededRandom } from '../../support/seeded-random.ts';
import { batchOf, edition, windowOf, work } from '../../support/store-rows.ts';

const names = Array.from({ length: 30 }, (_, i) => `n${i}`);

/** A few windows of some editions, which may have had others. */
function windowsAtRandom(random: () => number): readonly EditionWindow[] {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
  return Array.from({ length: 4 }, () => {
    const detail = pick([undefined, undefined, 'one', 'two']);
    const traits = pick<EditionTraits>([{}, { form: 'BOOK' }, { languages: ['de', 'fr'], illustrated: true }]);
    return windowOf(`edition-of-${pick(names)}`, {
      ...{ profile: pick(['london', 'paris', '']), first: pick([1, 2, -5]), last: pick([7, 8]), ...traits },
      ...(detail === undefined ? {} : { detail }),
    });
  });
}

const filters = [{}, { form: 'BOOK' }, { language: 'fr' }, { illustrated: false }, { work: 'work-of-birds' }] as const;

async function counts(store: GraphStore): Promise<unknown> {
  const groups = await Promise.all(filters.map(filter => store.windowGroups(filter)));
  return groups.map(windowsOfGroups);
}

describeWithNeo4j('groups of windows in Neo4j', () => {
  test('are what two processes have written by turns, asked again and again, by either or anew', async () => {
    const seed = seedOfRun();
    const random = seededRandom(seed);
    const truth = memoryStore();
    const stores = [await emptyNeo4jStore(), await openStore()] as const;
    const shelf = batchOf([work('birds'), ...names.map(name => edition(name))]);
    await Promise.all([truth.write(shelf), stores[0].write(shelf)]);
    for (let batch = 0; batch < 40; batch++) {
      const written = batchOf([], { windows: windowsAtRandom(random), ...(batch === 25 ? { recount: true } : {}) });
      await Promise.all([truth.write(written), stores[batch % 2]!.write(written)]);
      expect(await counts(stores[random() < 0.5 ? 0 : 1]), `seed ${seed}, batch ${batch}`).toEqual(await counts(truth));
    }
    const anew = await openStore();
    expect(await counts(anew)).toEqual(await counts(truth));
    await Promise.all([...stores, anew].map(store => store.close()));
  });

  test('are held by few tallies, none of which stays when it has been merged', async () => {
    const random = seededRandom(7);
    const store = await emptyNeo4jStore();
    await store.write(batchOf([work('birds'), ...names.map(name => edition(name))]));
    for (let batch = 0; batch < 25; batch++) await store.write(batchOf([], { windows: windowsAtRandom(random) }));
    const [[inForce, kept]] = (await inDatabase(
      'MATCH (s:Store) RETURN s.tallies, COLLECT { MATCH (t:WindowTally) RETURN t.number ORDER BY t.number DESC }',
    )) as [[number[], number[]]];
    expect(kept).toEqual(inForce);
    expect(kept.length).toBeLessThanOrEqual(4);
    await store.close();
  });
});
