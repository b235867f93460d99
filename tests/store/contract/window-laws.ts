import { expect } from 'vitest';
import type { GraphStore, WindowGroups, WindowKey } from '../../../src/store/graph-store.ts';
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
        { edition: 'edition-of-c', regular: true, ...open },
        { edition: 'edition-of-d', regular: true, ...fromThen },
        windowOf('edition-of-e', { dateClass: 'IMPRINT', profile: '' }),
        windowOf('edition-of-f', { regular: false }),
      ],
    }),
  );
}

/** In no particular order: compared in one. */
function inOrder({ groups, irregular }: WindowGroups) {
  return { groups: groups.map(group => JSON.stringify(group)).sort(), irregular };
}

export const windowLaws: readonly Law[] = [
  {
    says: 'editions are counted by window, the irregular ones apart',
    check: async store => {
      expect(await store.windowGroups({})).toEqual({ groups: [], irregular: 0 });
      await shelve(store);
      expect(inOrder(await store.windowGroups({}))).toEqual(
        inOrder({
          groups: [
            { ...in1790, count: 2 },
            { ...open, count: 1 },
            { ...fromThen, count: 1 },
            { ...in1790, profile: '', dateClass: 'IMPRINT', count: 1 },
          ],
          irregular: 1,
        }),
      );
    },
  },
  {
    says: 'editions of some windows come by id; open ends are a value of their own',
    check: async store => {
      await shelve(store);
      const ids = (windows: readonly WindowKey[]) => store.editionsInWindows(windows, {}, undefined, 9);
      expect(await ids([in1790])).toEqual(['edition-of-a', 'edition-of-b']);
      expect(await ids([open])).toEqual(['edition-of-c']);
      expect(await ids([fromThen, open, in1790, in1790])).toEqual([...'abcd'].map(name => `edition-of-${name}`));
      expect(await ids([{ ...in1790, profile: 'paris' }])).toEqual([]);
      expect(await ids([])).toEqual([]);
    },
  },
  {
    says: 'editions of windows come in pages',
    check: async store => {
      await shelve(store);
      const page = (after: string | undefined, limit: number) =>
        store.editionsInWindows([open, in1790, fromThen], {}, after, limit);
      expect(await page(undefined, 3)).toEqual(['edition-of-a', 'edition-of-b', 'edition-of-c']);
      expect(await page('edition-of-a', 2)).toEqual(['edition-of-b', 'edition-of-c']);
      expect(await page('edition-of-d', 2)).toEqual([]);
    },
  },
  {
    says: 'irregular editions come by id',
    check: async store => {
      await shelve(store);
      await store.write(batchOf([], { windows: [windowOf('edition-of-b', { regular: false })] }));
      expect(await store.irregularEditions({})).toEqual(['edition-of-b', 'edition-of-f']);
    },
  },
  {
    says: 'editions come by title and id with their windows, the irregular ones among them, in pages',
    check: async store => {
      await shelve(store);
      const whole = await store.editionsByTitle({}, undefined, 9);
      expect(whole.map(found => found.id)).toEqual([...'bcdefa'].map(name => `edition-of-${name}`));
      expect(whole[1]).toEqual({
        sort: 'title',
        id: 'edition-of-c',
        window: { edition: 'edition-of-c', regular: true, ...open },
      });
      expect(whole[4]!.window).toEqual(windowOf('edition-of-f', { regular: false }));
      expect(await store.editionsByTitle({}, whole[1], 2)).toEqual(whole.slice(2, 4));
      expect(await store.editionsByTitle({}, whole[4], 2)).toEqual(whole.slice(5));
    },
  },
  {
    says: 'a window that is written again takes the place of the one before',
    check: async store => {
      await shelve(store);
      await store.write(batchOf([], { windows: [{ edition: 'edition-of-a', regular: true, ...open }] }));
      expect(await store.windowsOf(['edition-of-a', 'edition-of-none', 'edition-of-b'])).toEqual([
        { edition: 'edition-of-a', regular: true, ...open },
        undefined,
        windowOf('edition-of-b'),
      ]);
      expect(await store.editionsInWindows([in1790], {}, undefined, 9)).toEqual(['edition-of-b']);
    },
  },
  {
    says: 'the fields of a window come in one order',
    check: async store => {
      await store.write(
        batchOf([work('birds'), edition('a')], {
          windows: [{ last: 2, first: 1, dateClass: 'ANNUAL', profile: 'x', regular: true, edition: 'edition-of-a' }],
        }),
      );
      const [window] = await store.windowsOf(['edition-of-a']);
      expect(Object.keys(window!)).toEqual(['edition', 'regular', 'profile', 'dateClass', 'first', 'last']);
    },
  },
];
