import { expect } from 'vitest';
import { batchOf, copying, edition, plate, windowOf, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const found = { text: { whole: 'dog', tokens: ['dog'], few: 9 }, filter: {}, limit: 9, cap: 9 };

export const packingLaws: readonly Law[] = [
  {
    says: 'parts that were packed are written with the batch, as one change: their rows are found, dated and counted as others are',
    check: async store => {
      const first = store.pack({
        rows: [plate('a', { labels: [{ text: 'Dog' }] }), work('birds')],
        origins: [{ source: 's', key: 'k', id: 'plate-of-a', digest: 'd' }],
      });
      const second = store.pack({
        rows: [edition('a', { work: 'work-of-birds' })],
        windows: [windowOf('edition-of-a')],
      });
      const batch = batchOf([plate('b')], { packed: [first, second] });
      expect(await store.write(batch)).toEqual({ changeSet: 1 });
      expect((await store.scan(undefined, 9)).map(({ id, since }) => [id, since])).toEqual([
        ['edition-of-a', 1],
        ['plate-of-a', 1],
        ['plate-of-b', 1],
        ['work-of-birds', 1],
      ]);
      expect((await store.search(found)).hits).toMatchObject([{ id: 'plate-of-a', sort: 'dog' }]);
      expect(await store.count('Plate')).toBe(2);
      expect(await store.byOrigin([{ source: 's', key: 'k' }])).toEqual([{ id: 'plate-of-a', digest: 'd' }]);
      expect(await store.windowsOf(['edition-of-a'])).toEqual([windowOf('edition-of-a')]);
      expect(await store.changesAfter(0, 9)).toMatchObject([{ put: [{}, {}, {}, {}] }]);
    },
  },
  {
    says: 'rows of a packed part may name those of parts before it, and rows of the batch those of all parts',
    check: async store => {
      const packed = [
        store.pack({ rows: [plate('a'), plate('b')] }),
        store.pack({ rows: [copying('ab', 'plate-of-b', 'plate-of-a')] }),
        store.pack({ rows: [plate('c')] }),
      ];
      await store.write(batchOf([copying('ca', 'plate-of-c', 'plate-of-a')], { packed }));
      const [copies] = await store.linked(['plate-of-a'], [{ kind: 'Copying', name: 'source' }]);
      expect(copies!.map(({ id }) => id)).toEqual(['copying-of-ab', 'copying-of-ca']);
    },
  },
  {
    says: 'a packed part is not in the store before its batch is written, and not after it has failed',
    check: async store => {
      const rows = [plate('a', { labels: [{ text: 'Dog' }] })];
      const packed = [store.pack({ rows, windows: [] })];
      expect(await store.scan(undefined, 9)).toEqual([]);
      const failing = batchOf([copying('stray', 'plate-of-a', 'plate-of-none')], { packed });
      await expect(store.write(failing)).rejects.toMatchObject({ code: 'NOT_FOUND' });
      expect(await store.scan(undefined, 9)).toEqual([]);
      expect((await store.search(found)).hits).toEqual([]);
      await store.write(batchOf([], { packed }));
      expect((await store.search(found)).hits).toMatchObject([{ id: 'plate-of-a' }]);
    },
  },
  {
    says: 'a row of a packed part that is there already fails the batch',
    check: async store => {
      await store.write(batchOf([plate('a')]));
      const packed = [store.pack({ rows: [plate('b'), plate('a', { caption: 'two' })] })];
      await expect(store.write(batchOf([], { packed }))).rejects.toMatchObject({ code: 'BROKEN_PROMISE' });
      expect(await store.scan(undefined, 9)).toEqual([{ ...plate('a'), since: 1 }]);
    },
  },
];
