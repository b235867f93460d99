import { expect } from 'vitest';
import type { AnyRow, Stamped } from '../../../src/domain/model/row.ts';
import { batchOf, copying, plate, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

export const scanLaws: readonly Law[] = [
  {
    says: 'every record and claim comes once, as it is now, by id',
    check: async store => {
      const claim = copying('a', 'plate-of-b', 'plate-of-a');
      await store.write(batchOf([work('birds'), plate('b'), plate('a'), claim]));
      await store.write(batchOf([plate('a', { caption: 'new' })]));
      expect(await store.scan(undefined, 99)).toEqual([
        { ...claim, since: 1 },
        { ...plate('a', { caption: 'new' }), since: 2 },
        { ...plate('b'), since: 1 },
        { ...work('birds'), since: 1 },
      ]);
    },
  },
  {
    says: 'stretches of any size give the whole, and an id to start after need not be there',
    check: async store => {
      await store.write(batchOf(Array.from({ length: 11 }, (_, i) => plate(`no-${i}`))));
      const whole = await store.scan(undefined, 99);
      for (const size of [1, 3, 11]) {
        const taken: Stamped<AnyRow>[] = [];
        for (let stretch = await store.scan(undefined, size); stretch.length > 0 && taken.length < 50; ) {
          taken.push(...stretch);
          stretch = await store.scan(taken.at(-1)!.id, size);
        }
        expect(taken).toEqual(whole);
      }
      expect((await store.scan('plate-of-no-5a', 2)).map(row => row.id)).toEqual(['plate-of-no-6', 'plate-of-no-7']);
      expect(await store.scan('zebra', 2)).toEqual([]);
    },
  },
  {
    says: 'as of a change set it gives the rows that were there, as they were',
    check: async store => {
      await store.write(batchOf([plate('b'), plate('d')]));
      await store.write(batchOf([plate('a'), plate('b', { caption: 'new' }), plate('c')]));
      await store.write(batchOf([plate('d', { caption: 'last' })]));
      const before = [
        { ...plate('b'), since: 1, until: 2 },
        { ...plate('d'), since: 1, until: 3 },
      ];
      expect(await store.scan(undefined, 9, { asOf: 0 })).toEqual([]);
      expect(await store.scan(undefined, 9, { asOf: 1 })).toEqual(before);
      expect(await store.scan('plate-of-a', 1, { asOf: 1 })).toEqual(before.slice(0, 1));
      expect(await store.scan('plate-of-b', 1, { asOf: 1 })).toEqual(before.slice(1));
      expect((await store.scan(undefined, 9, { asOf: 2 })).map(({ id, since }) => [id, since])).toEqual([
        ['plate-of-a', 2],
        ['plate-of-b', 2],
        ['plate-of-c', 2],
        ['plate-of-d', 1],
      ]);
      expect(await store.scan(undefined, 9, { asOf: 3 })).toEqual(await store.scan(undefined, 9));
    },
  },
];
