import { expect } from 'vitest';
import type { ListPosition } from '../../../src/store/graph-store.ts';
import { batchOf, edition, imprint, place, plate, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

export const listLaws: readonly Law[] = [
  {
    says: 'records of a kind come by sort key, then id; those without one first',
    check: async store => {
      const bare = { id: 'plate-of-nothing', kind: 'Plate' } as const;
      const again = { ...plate('dog'), id: 'plate-of-a-dog' };
      await store.write(
        batchOf([plate('hen'), plate('dog'), place('dog'), bare, again, plate('armel', { caption: 'Ärmel' })]),
      );
      expect(await store.list('Plate', undefined, 10)).toEqual([
        { sort: '', id: 'plate-of-nothing' },
        { sort: 'armel', id: 'plate-of-armel' },
        { sort: 'dog', id: 'plate-of-a-dog' },
        { sort: 'dog', id: 'plate-of-dog' },
        { sort: 'hen', id: 'plate-of-hen' },
      ]);
    },
  },
  {
    says: 'sort keys are ordered by code points',
    check: async store => {
      // U+10331 is greater than U+F900 by code point, but its first UTF-16 unit is less.
      const sorts = ['z', '\u6f22', '\uf900', '\u{10331}'];
      const puts = sorts.map((sort, i) => ({ row: plate(`no-${i}`), sort, tokens: [] }));
      await store.write({ ...batchOf([]), put: puts.reverse() });
      expect((await store.list('Plate', undefined, 9)).map(listed => listed.sort)).toEqual(sorts);
    },
  },
  {
    says: 'pages of any size give the whole list, each record once',
    check: async store => {
      const names = Array.from({ length: 23 }, (_, i) => `${i % 3}-${i}`);
      const plates = names.map(name => plate(name, { caption: `caption ${name.slice(0, 1)}` }));
      await store.write(batchOf(plates));
      const whole = await store.list('Plate', undefined, 100);
      expect(whole).toHaveLength(23);
      for (const size of [1, 4, 22, 23, 24]) {
        const paged: ListPosition[] = [];
        for (let page = await store.list('Plate', undefined, size); page.length > 0 && paged.length < 50; ) {
          paged.push(...page);
          page = await store.list('Plate', paged.at(-1), size);
        }
        expect(paged).toEqual(whole);
      }
    },
  },
  {
    says: 'a position need not be that of a record',
    check: async store => {
      await store.write(batchOf([plate('cat'), plate('hen')]));
      expect(await store.list('Plate', { sort: 'dog', id: 'plate-of-any' }, 9)).toEqual([
        { sort: 'hen', id: 'plate-of-hen' },
      ]);
      expect(await store.list('Plate', { sort: 'zebra', id: '' }, 9)).toEqual([]);
    },
  },
  {
    says: 'a record that is renamed stands in its new place alone, and its stored sort key is the new one',
    check: async store => {
      await store.write(batchOf([plate('cat'), plate('hen')]));
      await store.write(batchOf([plate('cat', { caption: 'zebra' })]));
      expect((await store.list('Plate', undefined, 9)).map(listed => listed.id)).toEqual([
        'plate-of-hen',
        'plate-of-cat',
      ]);
      const asked = ['plate-of-cat', 'plate-of-none', 'plate-of-hen'];
      expect(await store.sortKeysOf(asked)).toEqual(['zebra', undefined, 'hen']);
      expect(await store.count('Plate')).toBe(2);
    },
  },
  {
    says: 'records are counted by kind, claims and versions are not',
    check: async store => {
      expect(await store.count('Plate')).toBe(0);
      await store.write(batchOf([work('birds'), edition('a'), edition('b'), place('london')]));
      await store.write(batchOf([edition('a', { title: 'other' }), imprint('a', 'edition-of-a', 'place-of-london')]));
      expect([await store.count('Work'), await store.count('Edition'), await store.count('Plate')]).toEqual([1, 2, 0]);
      const { records, claims } = await store.facts();
      expect({ records, claims }).toEqual({ records: 4, claims: 1 });
    },
  },
];
