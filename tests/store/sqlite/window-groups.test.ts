import { DatabaseSync } from 'node:sqlite';
import { describe, expect, test } from 'vitest';
import type { EditionFilter, EditionTraits, GraphStore, WindowKey } from '../../../src/store/graph-store.ts';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { windowsOfGroups } from '../../support/memory-store-groups.ts';
import { seededRandom } from '../../support/seeded-random.ts';
import { batchOf, edition, windowOf, work } from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

const in1790 = { profile: 'london', dateClass: 'OTHER', first: -65744, last: -65380 };

describe('groups of windows, asked again', () => {
  test('are what was told before and what has been written since, by this process or another', async () => {
    const file = temporaryStore();
    const [store, other] = [await openSqliteStore(file, { create: true }), await openSqliteStore(file)];
    await store.write(batchOf([work('birds'), edition('a')], { windows: [windowOf('edition-of-a')] }));
    const before = await store.windowGroups({});
    expect(windowsOfGroups(before)).toEqual([[in1790, 1]]);
    const again = await store.windowGroups({});
    expect(again.columns[0]).toBe(before.columns[0]);
    expect(windowsOfGroups(await store.windowGroups({ language: 'eng' }))).toEqual([]);

    await other.write(batchOf([edition('b')], { windows: [windowOf('edition-of-b', { profile: 'paris' })] }));
    const after = await store.windowGroups({});
    expect(windowsOfGroups(after)).toEqual([
      [in1790, 1],
      [{ ...in1790, profile: 'paris' }, 1],
    ]);
    expect(after.profiles).toBe(before.profiles);
    expect([before.changeSet, after.changeSet]).toEqual([1, 2]);
    await Promise.all([store.close(), other.close()]);
  });

  test('asked several times at once are told alike', async () => {
    const store = await openSqliteStore(temporaryStore(), { create: true });
    const first = store.write(batchOf([work('birds'), edition('a')], { windows: [windowOf('edition-of-a')] }));
    const asked = [1, 2, 3].map(() => store.windowGroups({}));
    await first;
    for (const groups of await Promise.all(asked)) expect(windowsOfGroups(groups).length).toBeLessThanOrEqual(1);
    const [one, two] = await Promise.all([store.windowGroups({}), store.windowGroups({})]);
    expect([windowsOfGroups(one), windowsOfGroups(two)]).toEqual([[[in1790, 1]], [[in1790, 1]]]);
    await store.close();
  });
});

describe('tallies', () => {
  const names = Array.from({ length: 40 }, (_, i) => `n${i}`);

  /** Writes windows at random, some again and again, a few a batch. */
  async function shuffled(file: string, batches: number, seed: number): Promise<void> {
    const random = seededRandom(seed);
    const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
    const store = await openSqliteStore(file, { create: true });
    await store.write(batchOf([work('birds'), ...names.map(name => edition(name))]));
    for (let batch = 0; batch < batches; batch++) {
      const windows = Array.from({ length: 3 }, () => {
        const detail = pick([undefined, undefined, 'one', 'two']);
        const window = { profile: pick(['london', 'paris', '']), first: pick([1, 2, -5]), last: pick([7, 8]) };
        const traits = pick<EditionTraits>([{}, { form: 'BOOK' }, { languages: ['de', 'fr'], illustrated: true }]);
        const more = detail === undefined ? {} : { detail };
        return windowOf(`edition-of-${pick(names)}`, { ...window, ...more, ...traits });
      });
      await store.write(batchOf([], { windows }));
      if (batch % 17 === 0) await expectCounted(store, file);
    }
    await expectCounted(store, file);
    await store.close();
  }

  const groups = async (store: GraphStore, filter: EditionFilter = {}) =>
    windowsOfGroups(await store.windowGroups(filter)).map(([key, count]) => [JSON.stringify(key), count]);

  async function expectCounted(store: GraphStore, file: string): Promise<void> {
    expect(await groups(store)).toEqual(counted(file));
    expect(await groups(store, { illustrated: true })).toEqual(counted(file, '%illustrated%'));
    expect(await groups(store, { language: 'fr' })).toEqual(counted(file, '%"fr"%'));
    expect(await groups(store, { form: 'BOOK' })).toEqual(counted(file, '%BOOK%'));
    expect(await groups(store, { form: 'ANNUAL' })).toEqual([]);
  }

  /** Counted by SQL from the windows themselves. */
  function counted(file: string, traits = '%'): (readonly [string, number])[] {
    const database = new DatabaseSync(file, { readOnly: true });
    const rows = database
      .prepare(
        `SELECT p.name AS profile, d.text AS detail, w.first, w.last, count(*) AS editions FROM edition_window AS w
         JOIN profile AS p ON p.number = w.profile LEFT JOIN window_detail AS d ON d.number = w.detail
         LEFT JOIN window_traits AS t ON t.number = w.traits WHERE ifnull(t.text, '') LIKE ? GROUP BY 1, 2, 3, 4`,
      )
      .all(traits) as unknown as (WindowKey & { detail: string | null; editions: number })[];
    database.close();
    return rows
      .map(({ profile, detail, first, last, editions }) => {
        const key = { profile, dateClass: 'OTHER', ...(detail === null ? {} : { detail }), first, last };
        return [JSON.stringify(key), editions] as const;
      })
      .sort(([a], [b]) => (a < b ? -1 : 1));
  }

  test.each([3, 4])('come to what is there, whatever was written over (seed %i)', async seed => {
    await shuffled(temporaryStore(), 90, seed);
  });

  test('are few, and each is at least four times as large as the next', async () => {
    const file = temporaryStore();
    await shuffled(file, 75, 5);
    const database = new DatabaseSync(file, { readOnly: true });
    const sizes = database.prepare('SELECT length(numbers) AS bytes FROM window_tally ORDER BY number').all();
    const bytes = sizes.map(row => Number(row['bytes']));
    for (const [i, each] of bytes.slice(1).entries()) expect(bytes[i]).toBeGreaterThanOrEqual(4 * each);
    database.close();
  });

  test('that are wrong are made anew', async () => {
    const file = temporaryStore();
    await shuffled(file, 20, 6);
    const database = new DatabaseSync(file);
    database.exec('DELETE FROM window_tally WHERE number = (SELECT min(number) FROM window_tally)');
    database.close();
    const store = await openSqliteStore(file);
    expect(await groups(store)).not.toEqual(counted(file));
    await store.write(batchOf([], { recount: true }));
    expect(await groups(store)).toEqual(counted(file));
    await store.write(batchOf([], { windows: [windowOf('edition-of-n1', { last: 99 })] }));
    expect(await groups(store)).toEqual(counted(file));
    await store.close();
  });
});
