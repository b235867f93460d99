import { expect } from 'vitest';
import { batchOf, copying, plate } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const dogOrigin = { source: 'DLC', key: '42', id: 'plate-of-dog', digest: 'd1' };
const catOrigin = { source: 'UkOxU', key: '42', id: 'plate-of-cat', digest: 'd2' };
const otherDogOrigin = { source: 'DLC', key: '7', id: 'plate-of-dog', digest: 'd3' };
const shelf = batchOf([plate('dog'), plate('cat'), plate('hen')], {
  origins: [catOrigin, dogOrigin, otherDogOrigin],
});

export const originLaws: readonly Law[] = [
  {
    says: 'a record is known by the place it was taken from: source and key together',
    check: async store => {
      await store.write(shelf);
      const asked = [
        { source: 'DLC', key: '42' },
        { source: 'DLC', key: '43' },
        { source: 'UkOxU', key: '42' },
        { source: 'UkOxU', key: '7' },
        { source: 'dlc', key: '42' },
      ];
      expect(await store.byOrigin(asked)).toEqual([
        { id: 'plate-of-dog', digest: 'd1' },
        undefined,
        { id: 'plate-of-cat', digest: 'd2' },
        undefined,
        undefined,
      ]);
      expect(await store.byOrigin([])).toEqual([]);
    },
  },
  {
    says: 'a key is found in every source, by source',
    check: async store => {
      await store.write(shelf);
      expect(await store.byOriginKey(['42', 'none', '7'])).toEqual([[dogOrigin, catOrigin], [], [otherDogOrigin]]);
      expect(await store.byOriginKey([])).toEqual([]);
    },
  },
  {
    says: 'arrivals are told what each of the three questions tells of them',
    check: async store => {
      await store.write(shelf);
      const claim = copying('ab', 'plate-of-dog', 'plate-of-cat');
      await store.write(batchOf([], { await: [{ origin: { source: 'DLC', key: '42' }, claim, role: 'source' }] }));
      const own = [
        { source: 'X', key: '42' },
        { source: 'DLC', key: '42' },
        { source: 'DLC', key: 'none' },
      ];
      const named = [
        { source: 'DLC', key: '7' },
        { source: 'X', key: '7' },
      ];
      for (const [those, others] of [
        [own, named] as const,
        [[], named] as const,
        [own, []] as const,
        [[], []] as const,
      ])
        expect(await store.arrivals(those, others)).toEqual({
          alike: await store.byOriginKey(those.map(({ key }) => key)),
          waiting: await store.awaited(those),
          named: await store.byOrigin(others),
        });
      expect((await store.arrivals(own, named)).waiting.map(links => links.length)).toEqual([0, 1, 0]);
    },
  },
  {
    says: 'a record has all its origins, by source and key',
    check: async store => {
      await store.write(shelf);
      await store.write(batchOf([], { origins: [{ source: 'A', key: '9', id: 'plate-of-dog', digest: 'd4' }] }));
      expect(await store.originsOf(['plate-of-hen', 'plate-of-dog', 'plate-of-none'])).toEqual([
        [],
        [
          { source: 'A', key: '9' },
          { source: 'DLC', key: '42' },
          { source: 'DLC', key: '7' },
        ],
        [],
      ]);
      expect(await store.originsOf([])).toEqual([]);
    },
  },
  {
    says: 'an origin that is written again has the new digest, and may lead to another record',
    check: async store => {
      await store.write(shelf);
      await store.write(batchOf([], { origins: [{ ...dogOrigin, id: 'plate-of-hen', digest: 'new' }] }));
      expect(await store.byOrigin([dogOrigin])).toEqual([{ id: 'plate-of-hen', digest: 'new' }]);
      expect(await store.originsOf(['plate-of-dog', 'plate-of-hen'])).toEqual([
        [{ source: 'DLC', key: '7' }],
        [{ source: 'DLC', key: '42' }],
      ]);
    },
  },
];
