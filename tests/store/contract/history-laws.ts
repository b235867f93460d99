import { expect } from 'vitest';
import { batchOf, plate } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const changeSet = { moment: '2026-05-06T07:08:09.123Z', who: 'Anna', why: 'a better reading' };

export const historyLaws: readonly Law[] = [
  {
    says: 'an empty store has no change set',
    check: async store => {
      expect(await store.lastChangeSet()).toBe(0);
      expect(await store.changeSets([0, 1])).toEqual([undefined, undefined]);
      expect(await store.changeSets([])).toEqual([]);
    },
  },
  {
    says: 'change sets are numbered from 1 without gaps, and tell who, when, why and of which run',
    check: async store => {
      expect(await store.write(batchOf([plate('a')], { changeSet }))).toEqual({ changeSet: 1 });
      const ofRun = { ...changeSet, batch: 'run-7' };
      expect(await store.write(batchOf([plate('b')], { changeSet: ofRun }))).toEqual({ changeSet: 2 });
      expect(await store.lastChangeSet()).toBe(2);
      expect(await store.changeSets([2, 3, 1])).toEqual([
        { number: 2, ...ofRun },
        undefined,
        { number: 1, ...changeSet },
      ]);
    },
  },
  {
    says: 'moments do not go back, whatever the clock of who writes; one that was written elsewhere stays as it is',
    check: async store => {
      const at = (moment: string, more = {}) => batchOf([plate('a')], { changeSet: { ...changeSet, moment }, ...more });
      const [early, late] = ['2026-01-02T03:04:05.678Z', '2026-05-06T07:08:09.123Z'];
      await store.write(at(late));
      await store.write(at(early));
      await store.write(at(early, { keepsMoment: true }));
      await store.write(at('2026-01-02T03:04:05.679Z'));
      const written = await store.changeSets([1, 2, 3, 4]);
      expect(written.map(set => set?.moment)).toEqual([late, late, early, '2026-01-02T03:04:05.679Z']);
      expect((await store.changesAfter(1, 1))[0]?.changeSet).toEqual({ number: 2, ...changeSet });
    },
  },
  {
    says: 'a batch that puts nothing makes no change set and answers the last number, but keeps the rest',
    check: async store => {
      const checkpoint = { intake: 'shelf.xml', records: 3, report: {} };
      expect(await store.write(batchOf([], { checkpoint }))).toEqual({ changeSet: 0 });
      await store.write(batchOf([plate('a')]));
      const origins = [{ source: 's', key: 'k', id: 'plate-of-a', digest: 'd' }];
      expect(await store.write(batchOf([], { origins }))).toEqual({ changeSet: 1 });
      expect(await store.lastChangeSet()).toBe(1);
      expect(await store.checkpoint('shelf.xml')).toEqual({ records: 3, report: {} });
      expect(await store.byOrigin(origins)).toEqual([{ id: 'plate-of-a', digest: 'd' }]);
    },
  },
];
