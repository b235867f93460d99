import { expect } from 'vitest';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { batchOf, plate, walkFrom } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

/** Every method that asks the engine, but close: asked for something and asked for nothing. */
const calls: Readonly<
  Record<Exclude<keyof GraphStore, 'close' | 'pack'>, readonly ((store: GraphStore) => Promise<unknown>)[]>
> = {
  rows: [store => store.rows(['plate-of-a']), store => store.rows([])],
  inGroups: [s => s.inGroups(['alternatives-of-a']), s => s.inGroups([])],
  linked: [store => store.linked(['plate-of-a'], []), store => store.linked([], [])],
  surroundings: [
    store => store.surroundings(['plate-of-a'], { rounds: [] }),
    store => store.surroundings([], { rounds: [[]] }),
  ],
  walk: [store => store.walk(walkFrom(['plate-of-a'])), store => store.walk(walkFrom([]))],
  list: [store => store.list('Plate', undefined, 1)],
  count: [store => store.count('Plate')],
  search: [store => store.search({ filter: {}, limit: 1, cap: 1 })],
  byOrigin: [store => store.byOrigin([{ source: 's', key: 'k' }]), store => store.byOrigin([])],
  byOriginKey: [store => store.byOriginKey(['k']), store => store.byOriginKey([])],
  arrivals: [s => s.arrivals([{ source: 's', key: 'k' }], []), s => s.arrivals([], [])],
  originsOf: [store => store.originsOf(['plate-of-a']), store => store.originsOf([])],
  windowGroups: [store => store.windowGroups({})],
  editionsInWindows: [store => store.editionsInWindows([], {}, undefined, 1)],
  editionsByTitle: [store => store.editionsByTitle({}, undefined, 1)],
  versions: [store => store.versions('plate-of-a')],
  changeSets: [store => store.changeSets([1]), store => store.changeSets([])],
  lastChangeSet: [store => store.lastChangeSet()],
  changesAfter: [store => store.changesAfter(0, 1)],
  scan: [store => store.scan(undefined, 1)],
  windowsOf: [store => store.windowsOf(['edition-of-a']), store => store.windowsOf([])],
  sortKeysOf: [store => store.sortKeysOf(['plate-of-a']), store => store.sortKeysOf([])],
  datedDaysOf: [store => store.datedDaysOf(['dating-of-a']), store => store.datedDaysOf([])],
  awaited: [store => store.awaited([{ source: 's', key: 'k' }]), store => store.awaited([])],
  checkpoint: [store => store.checkpoint('i')],
  originsAfter: [store => store.originsAfter(undefined, 1)],
  awaitedAfter: [store => store.awaitedAfter(undefined, 1)],
  checkpointsAfter: [store => store.checkpointsAfter(undefined, 1)],
  history: [store => store.history()[Symbol.asyncIterator]().next()],
  write: [store => store.write(batchOf([plate('b')])), store => store.write(batchOf([]))],
  facts: [store => store.facts()],
};

export const closedLaws: readonly Law[] = [
  {
    says: 'after close every method rejects with STORE_UNREACHABLE',
    check: async store => {
      await store.write(batchOf([plate('a')]));
      await store.close();
      for (const [name, asked] of Object.entries(calls)) {
        for (const call of asked) {
          await expect(call(store), name).rejects.toMatchObject({ code: 'STORE_UNREACHABLE' });
        }
      }
    },
  },
  {
    says: 'closing twice is allowed',
    check: async store => {
      await store.close();
      await Promise.all([store.close(), store.close()]);
    },
  },
  {
    says: 'every method that is open answers what it is asked, also for nothing',
    check: async store => {
      await store.write(batchOf([plate('a')]));
      for (const asked of Object.values(calls)) for (const call of asked) await call(store);
    },
  },
  {
    says: 'a write that was asked for before close is made',
    check: async store => {
      const writing = store.write(batchOf([plate('a')]));
      await store.close();
      expect(await writing).toEqual({ changeSet: 1 });
    },
  },
];
