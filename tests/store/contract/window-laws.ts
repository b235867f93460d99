import { expect } from 'vitest';
import type { EditionFilter, GraphStore, WindowKey } from '../../../src/store/graph-store.ts';
import { windowsOfGroups } from '../../support/memory-store-groups.ts';
import { batchOf, edition, windowOf, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const in1790 = { profile: 'london', dateClass: 'OTHER', first: -65744, last: -65380 } as const;
const open = { profile: 'london', dateClass: 'OTHER' } as const;
const fromThen = { profile: 'london', dateClass: 'OTHER', first: -65744 } as const;

async function shelve(store: GraphStore) {
  await store.write(
    batchOf([work('birds'), ...[...'abcdef'].map(name => edition(name, { title: name === 'a' ? 'z' : 'title' }))], {
      windows: [
        windowOf('edition-of-a'),
        windowOf('edition-of-b'),
        { edition: 'edition-of-c', ...open },
        { edition: 'edition-of-d', ...fromThen },
        windowOf('edition-of-e', { dateClass: 'IMPRINT', profile: '' }),
        windowOf('edition-of-f', { detail: 'in two parts' }),
      ],
    }),
  );
}

/** How many editions have each window. */
async function counted(
  store: GraphStore,
  filter: EditionFilter = {},
): Promise<readonly (readonly [WindowKey, number])[]> {
  return windowsOfGroups(await store.windowGroups(filter));
}

export const windowLaws: readonly Law[] = [
  {
    says: 'editions are counted by window',
    check: async store => {
      expect(await counted(store)).toEqual([]);
      await shelve(store);
      const { first, last } = in1790;
      expect(await counted(store)).toEqual([
        [{ profile: '', dateClass: 'IMPRINT', first, last }, 1],
        [{ profile: 'london', dateClass: 'OTHER', detail: 'in two parts', first, last }, 1],
        [in1790, 2],
        [fromThen, 1],
        [open, 1],
      ]);
      expect((await store.windowGroups({})).changeSet).toBe(1);
    },
  },
  {
    says: 'counts follow windows that are written again, and are made anew where that is asked for',
    check: async store => {
      await shelve(store);
      const before = await counted(store);
      for (const name of 'ababab') {
        await store.write(batchOf([], { windows: [{ edition: `edition-of-${name}`, ...open }] }));
        await store.write(batchOf([], { windows: [windowOf(`edition-of-${name}`)] }));
      }
      expect(await counted(store)).toEqual(before);
      await store.write(batchOf([], { windows: [windowOf('edition-of-a', { last: 7 })], recount: true }));
      const after = await counted(store);
      expect(after).toContainEqual([in1790, 1]);
      expect(after).toContainEqual([{ ...in1790, last: 7 }, 1]);
      expect(after.reduce((sum, [, count]) => sum + count, 0)).toBe(6);
      await store.write(batchOf([], { recount: true }));
      expect(await counted(store)).toEqual(after);
    },
  },
  {
    says: 'counts seen in the first columns come to no more than in all',
    check: async store => {
      await shelve(store);
      for (const name of 'abcab') {
        await store.write(batchOf([], { windows: [{ edition: `edition-of-${name}`, ...open }] }));
        await store.write(batchOf([], { windows: [{ edition: `edition-of-${name}`, ...fromThen }] }));
      }
      const groups = await store.windowGroups({});
      const whole = new Map(windowsOfGroups(groups).map(([key, count]) => [JSON.stringify(key), count]));
      groups.columns.forEach((_, i) => {
        const some = windowsOfGroups({ ...groups, columns: groups.columns.slice(0, i) });
        for (const [key, count] of some) expect(count).toBeLessThanOrEqual(whole.get(JSON.stringify(key)) ?? 0);
      });
    },
  },
  {
    says: 'editions of some windows come by id; open ends are a value of their own',
    check: async store => {
      await shelve(store);
      const ids = async (windows: readonly WindowKey[]) =>
        (await store.editionsInWindows([windows], {}, undefined, 9)).flat();
      expect(await ids([in1790])).toEqual(['edition-of-a', 'edition-of-b']);
      expect(await ids([open])).toEqual(['edition-of-c']);
      expect(await ids([fromThen, open, in1790, in1790])).toEqual([...'abcd'].map(name => `edition-of-${name}`));
      expect(await ids([{ ...in1790, profile: 'paris' }])).toEqual([]);
      expect(await ids([{ ...in1790, detail: 'in two parts' }])).toEqual(['edition-of-f']);
      expect(await ids([{ ...in1790, detail: 'unheard of' }])).toEqual([]);
      expect(await ids([])).toEqual([]);
    },
  },
  {
    says: 'editions of windows come in pages, bucket by bucket',
    check: async store => {
      await shelve(store);
      const page = async (after: string | undefined, limit: number) =>
        (await store.editionsInWindows([[open, in1790], [], [fromThen]], {}, after, limit)).map(ids =>
          ids.map(id => id.at(-1)).join(''),
        );
      expect(await page(undefined, 9)).toEqual(['abc', '', 'd']);
      expect(await page(undefined, 3)).toEqual(['abc', '', '']);
      expect(await page('edition-of-a', 2)).toEqual(['bc', '', '']);
      expect(await page('edition-of-a', 3)).toEqual(['bc', '', 'd']);
      expect(await page('edition-of-d', 2)).toEqual(['', '', 'd']);
      expect(await store.editionsInWindows([], {}, undefined, 9)).toEqual([]);
    },
  },
  {
    says: 'editions come by title and id with their windows, in pages',
    check: async store => {
      await shelve(store);
      const whole = await store.editionsByTitle({}, undefined, 9);
      expect(whole.map(found => found.id)).toEqual([...'bcdefa'].map(name => `edition-of-${name}`));
      expect(whole[1]).toEqual({
        sort: 'title',
        id: 'edition-of-c',
        window: { edition: 'edition-of-c', ...open },
      });
      expect(whole[4]!.window).toEqual(windowOf('edition-of-f', { detail: 'in two parts' }));
      expect(await store.editionsByTitle({}, whole[1], 2)).toEqual(whole.slice(2, 4));
      expect(await store.editionsByTitle({}, whole[4], 2)).toEqual(whole.slice(5));
    },
  },
  {
    says: 'a window that is written again takes the place of the one before',
    check: async store => {
      await shelve(store);
      await store.write(batchOf([], { windows: [{ edition: 'edition-of-a', ...open }] }));
      expect(await store.windowsOf(['edition-of-a', 'edition-of-none', 'edition-of-b'])).toEqual([
        { edition: 'edition-of-a', ...open },
        undefined,
        windowOf('edition-of-b'),
      ]);
      expect(await store.editionsInWindows([[in1790]], {}, undefined, 9)).toEqual([['edition-of-b']]);
    },
  },
  {
    says: 'the fields of a window come in one order',
    check: async store => {
      await store.write(
        batchOf([work('birds'), edition('a')], {
          windows: [
            {
              ...{ illustrated: true, languages: ['de', 'fr'], form: 'BOOK', last: 2, first: 1, detail: 'd' },
              ...{ dateClass: 'ANNUAL', profile: 'x', edition: 'edition-of-a' },
            },
          ],
        }),
      );
      const [window] = await store.windowsOf(['edition-of-a']);
      expect(Object.keys(window!)).toEqual([
        ...['edition', 'profile', 'dateClass', 'detail', 'first', 'last'],
        ...['form', 'languages', 'illustrated'],
      ]);
    },
  },
];
