import { expect } from 'vitest';
import type { SearchAsked } from '../../../src/store/graph-store.ts';
import { windowsOfGroups } from '../../support/memory-store-groups.ts';
import { batchOf, copying, dating, edition, plate, windowOf, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const textAsked = (word: string): SearchAsked => ({
  ...{ text: { whole: word, tokens: [word], few: 9 }, filter: {}, limit: 9, cap: 9 },
});
const removing = (...ids: readonly string[]) => batchOf([], { remove: ids.map(id => ({ id })) });

export const removalLaws: readonly Law[] = [
  {
    says: 'what is removed is found by nothing from then on, and stays as it was before',
    check: async store => {
      await store.write(batchOf([plate('a'), plate('b'), copying('b', 'plate-of-b', 'plate-of-a')]));
      expect(await store.write(removing('copying-of-b', 'plate-of-b'))).toEqual({ changeSet: 2 });
      expect(await store.rows(['plate-of-b', 'copying-of-b'])).toEqual([undefined, undefined]);
      expect((await store.list('Plate', undefined, 9)).map(({ id }) => id)).toEqual(['plate-of-a']);
      expect(await store.count('Plate')).toBe(1);
      expect((await store.scan(undefined, 9)).map(({ id }) => id)).toEqual(['plate-of-a']);
      expect((await store.search(textAsked('b'))).hits).toEqual([]);
      expect(await store.sortKeysOf(['plate-of-b'])).toEqual([undefined]);
      const via = [{ kind: 'Copying', name: 'source' }] as const;
      expect(await store.linked(['plate-of-a'], via)).toEqual([[]]);

      const before = { ...copying('b', 'plate-of-b', 'plate-of-a'), since: 1, until: 2 };
      expect(await store.linked(['plate-of-a'], via, { asOf: 1 })).toEqual([[before]]);
      expect(await store.versions('copying-of-b')).toEqual([before]);
      expect((await store.scan(undefined, 9, { asOf: 1 })).map(({ id }) => id)).toHaveLength(3);
      expect(await store.rows(['plate-of-b'], { asOf: 1 })).toEqual([{ ...plate('b'), since: 1, until: 2 }]);
      const asked = { from: ['plate-of-b'], steps: ['Copying'], direction: 'SOURCES', depth: 3, limit: 9 } as const;
      expect((await store.walk(asked)).records).toEqual([]);
      const walk = await store.walk({ ...asked, view: { asOf: 1 } });
      expect(walk.records.map(({ id }) => id)).toEqual(['plate-of-b', 'plate-of-a']);
    },
  },
  {
    says: 'what was removed can be put again, and was not there in between',
    check: async store => {
      await store.write(batchOf([plate('a', { caption: 'one' })]));
      await store.write(removing('plate-of-a'));
      await store.write(batchOf([plate('b')]));
      expect(await store.write(batchOf([plate('a', { caption: 'two' })]))).toEqual({ changeSet: 4 });
      expect(await store.versions('plate-of-a')).toEqual([
        { ...plate('a', { caption: 'one' }), since: 1, until: 2 },
        { ...plate('a', { caption: 'two' }), since: 4 },
      ]);
      expect(await store.rows(['plate-of-a'], { asOf: 3 })).toEqual([undefined]);
      expect(await store.count('Plate')).toBe(2);
      expect((await store.search(textAsked('two'))).hits.map(({ id }) => id)).toEqual(['plate-of-a']);
      expect((await store.search(textAsked('one'))).hits).toEqual([]);
    },
  },
  {
    says: 'what is put again is named by new rows of the same change, and has its window',
    check: async store => {
      await store.write(
        batchOf([plate('a'), plate('b'), work('birds'), edition('a')], { windows: [windowOf('edition-of-a')] }),
      );
      await store.write(removing('plate-of-a', 'edition-of-a'));
      const again = batchOf([copying('c', 'plate-of-b', 'plate-of-a'), plate('a'), edition('a')], {
        windows: [windowOf('edition-of-a')],
      });
      await store.write(again);
      const [found] = await store.linked(['plate-of-a'], [{ kind: 'Copying', name: 'source' }]);
      expect(found!.map(({ id }) => id)).toEqual(['copying-of-c']);
      expect(await store.windowsOf(['edition-of-a'])).toEqual([windowOf('edition-of-a')]);
    },
  },
  {
    says: 'what a row that stays names is STILL_NAMED, and nothing of the batch is written',
    check: async store => {
      await store.write(batchOf([plate('a'), plate('b'), copying('b', 'plate-of-b', 'plate-of-a')]));
      const code = { code: 'STILL_NAMED' };
      await expect(store.write(removing('plate-of-b', 'plate-of-a'))).rejects.toMatchObject(code);
      const withPut = batchOf([copying('c', 'plate-of-b', 'plate-of-a')], {
        remove: [{ id: 'copying-of-b' }, { id: 'plate-of-a' }],
      });
      await expect(store.write(withPut)).rejects.toMatchObject(code);
      expect(await store.lastChangeSet()).toBe(1);
      expect((await store.scan(undefined, 9)).map(({ id }) => id)).toEqual([
        'copying-of-b',
        'plate-of-a',
        'plate-of-b',
      ]);
    },
  },
  {
    says: 'what is not there can be neither removed nor named',
    check: async store => {
      await store.write(batchOf([plate('a'), plate('b')]));
      await store.write(removing('plate-of-b'));
      const code = { code: 'NOT_FOUND' };
      await expect(store.write(removing('plate-of-b'))).rejects.toMatchObject(code);
      const naming = batchOf([copying('b', 'plate-of-a', 'plate-of-b')]);
      await expect(store.write(naming)).rejects.toMatchObject(code);
      expect(await store.lastChangeSet()).toBe(2);
    },
  },
  {
    says: 'a change made from a version that is not the newest is REVISION_MOVED',
    check: async store => {
      await store.write(batchOf([plate('a', { caption: 'one' })]));
      const from = (seen: number, caption: string) => {
        const batch = batchOf([plate('a', { caption })]);
        return { ...batch, put: batch.put.map(put => ({ ...put, seen })) };
      };
      expect(await store.write(from(1, 'two'))).toEqual({ changeSet: 2 });
      const code = { code: 'REVISION_MOVED' };
      await expect(store.write(from(1, 'three'))).rejects.toMatchObject(code);
      await expect(store.write(batchOf([], { remove: [{ id: 'plate-of-a', seen: 1 }] }))).rejects.toMatchObject(code);
      expect(await store.rows(['plate-of-a'])).toEqual([{ ...plate('a', { caption: 'two' }), since: 2 }]);
      expect(await store.write(batchOf([], { remove: [{ id: 'plate-of-a', seen: 2 }] }))).toEqual({ changeSet: 3 });
      await expect(store.write(from(2, 'four'))).rejects.toMatchObject(code);
    },
  },
  {
    says: 'windows and days go with what they are of, and are counted no more',
    check: async store => {
      const rows = [work('birds'), edition('a'), edition('b'), dating('a', 'edition-of-a', '1790')];
      await store.write(batchOf(rows, { windows: [windowOf('edition-of-a'), windowOf('edition-of-b')] }));
      await store.write(removing('dating-of-a', 'edition-of-a'));
      expect(await store.windowsOf(['edition-of-a'])).toEqual([undefined]);
      expect(await store.datedDaysOf(['dating-of-a'])).toEqual([undefined]);
      const counted = windowsOfGroups(await store.windowGroups({}));
      expect(counted.map(([, count]) => count)).toEqual([1]);
      const listed = await store.editionsByTitle({}, undefined, 9);
      expect(listed.map(({ id }) => id)).toEqual(['edition-of-b']);
    },
  },
  {
    says: 'origins of what is removed are as none until it is put again',
    check: async store => {
      const origins = [{ source: 's', key: 'k', id: 'plate-of-a', digest: 'd' }];
      await store.write(batchOf([plate('a')], { origins }));
      await store.write(removing('plate-of-a'));
      expect(await store.byOrigin(origins)).toEqual([undefined]);
      expect(await store.byOriginKey(['k'])).toEqual([[]]);
      expect(await store.originsOf(['plate-of-a'])).toEqual([[]]);
      expect(await store.originsAfter(undefined, 9)).toEqual(origins);
      await store.write(batchOf([plate('a')]));
      expect(await store.byOrigin(origins)).toEqual([{ id: 'plate-of-a', digest: 'd' }]);
    },
  },
  {
    says: 'the whole history tells what each change set removed',
    check: async store => {
      await store.write(batchOf([plate('b'), plate('a')]));
      await store.write(batchOf([plate('c')], { remove: [{ id: 'plate-of-a' }, { id: 'plate-of-b' }] }));
      await store.write(batchOf([plate('a')]));
      const all = await store.changesAfter(0, 99);
      expect(all.map(({ put, removed }) => [put.map(({ id }) => id), removed])).toEqual([
        [['plate-of-b', 'plate-of-a'], []],
        [['plate-of-c'], ['plate-of-b', 'plate-of-a']],
        [['plate-of-a'], []],
      ]);
      expect((await store.changesAfter(1, 2)).map(({ changeSet }) => changeSet.number)).toEqual([2]);
    },
  },
];
