import { expect } from 'vitest';
import type { Origin } from '../../../src/domain/model/row.ts';
import type { AwaitedLink, GraphStore } from '../../../src/store/graph-store.ts';
import { partsOf } from '../../support/parts-of.ts';
import { batchOf, copying, edition, plate, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const changeSet = { moment: '2026-02-06T07:08:09.123Z', who: 'Anna', why: 'a better reading', batch: 'run-7' };
const claim = copying('a', 'plate-of-b', 'plate-of-a');
const withdrawn = copying('a', 'plate-of-b', 'plate-of-a', { standing: 'WITHDRAWN' });

/** Three change sets: three rows come, two of them change and one comes, one changes again. */
async function threeChanges(store: GraphStore): Promise<void> {
  await store.write(batchOf([plate('b'), claim, plate('a')], { changeSet }));
  await store.write(batchOf([plate('a', { caption: 'two' }), plate('0'), withdrawn]));
  await store.write(batchOf([plate('a', { caption: 'three' })]));
}

const first = [
  { ...plate('b'), since: 1 },
  { ...claim, since: 1, until: 2 },
  { ...plate('a'), since: 1, until: 2 },
];
const second = [
  { ...withdrawn, since: 2 },
  { ...plate('a', { caption: 'two' }), since: 2, until: 3 },
  { ...plate('0'), since: 2 },
];
const third = [{ ...plate('a', { caption: 'three' }), since: 3 }];

const origin = (source: string, key: string): Origin => ({ source, key });
const waits = (name: string, of: Origin): AwaitedLink => ({
  origin: of,
  claim: copying(name, 'plate-of-a', ''),
  role: 'source',
});

export const wholeHistoryLaws: readonly Law[] = [
  {
    says: 'change sets come in order, each with the versions it put, by when their rows came into the store',
    check: async store => {
      expect(await store.changesAfter(0, 9)).toEqual([]);
      await threeChanges(store);
      const { moment, who, why } = batchOf([]).changeSet;
      expect(await store.changesAfter(0, 99)).toEqual([
        { changeSet: { number: 1, ...changeSet }, put: first, removed: [] },
        { changeSet: { number: 2, moment, who, why }, put: second, removed: [] },
        { changeSet: { number: 3, moment, who, why }, put: third, removed: [] },
      ]);
      expect((await store.changesAfter(2, 99)).map(({ put }) => put)).toEqual([third]);
      expect(await store.changesAfter(3, 99)).toEqual([]);
    },
  },
  {
    says: 'change sets come whole: as many as put so many versions, but one at least',
    check: async store => {
      await threeChanges(store);
      const numbers = async (after: number, limit: number) =>
        (await store.changesAfter(after, limit)).map(change => change.changeSet.number);
      expect(await numbers(0, 1)).toEqual([1]);
      expect(await numbers(0, 5)).toEqual([1]);
      expect(await numbers(0, 6)).toEqual([1, 2]);
      expect(await numbers(1, 3)).toEqual([2]);
      expect(await numbers(1, 4)).toEqual([2, 3]);
      expect((await store.changesAfter(0, 1))[0]?.put).toEqual(first);
    },
  },
  {
    says: 'what a batch without rows, or one that fails, wrote is no change set',
    check: async store => {
      await store.write(batchOf([plate('a')], { changeSet }));
      await store.write(batchOf([], { checkpoint: { intake: 'i', records: 1, report: {} } }));
      await expect(store.write(batchOf([plate('b'), copying('x', 'plate-of-b', 'plate-of-none')]))).rejects.toThrow();
      await store.write(batchOf([plate('c')], { changeSet }));
      expect(await store.changesAfter(0, 99)).toEqual([
        { changeSet: { number: 1, ...changeSet }, put: [{ ...plate('a'), since: 1 }], removed: [] },
        { changeSet: { number: 2, ...changeSet }, put: [{ ...plate('c'), since: 2 }], removed: [] },
      ]);
    },
  },
  {
    says: 'all origins come by key and source, in stretches of any size',
    check: async store => {
      const origins = [origin('b', '2'), origin('a', '2'), origin('z', '1'), origin('a', '10')].map(each => ({
        ...each,
        id: 'plate-of-a',
        digest: `d-${each.key}`,
      }));
      const [b2, a2, z1, a10] = origins;
      await store.write(batchOf([plate('a')], { origins }));
      expect(await store.originsAfter(undefined, 9)).toEqual([z1, a10, a2, b2]);
      expect(await store.originsAfter(undefined, 1)).toEqual([z1]);
      expect(await store.originsAfter(origin('z', '1'), 2)).toEqual([a10, a2]);
      expect(await store.originsAfter(origin('aa', '2'), 2)).toEqual([b2]);
      expect(await store.originsAfter(origin('b', '2'), 2)).toEqual([]);
    },
  },
  {
    says: 'all links that wait come by key and source of what they wait for, those for one record together as they were put',
    check: async store => {
      const [one, two, three] = [origin('b', '1'), origin('a', '2'), origin('b', '2')];
      const links = [waits('d', three), waits('c', two), waits('a', one), waits('b', two), waits('e', two)];
      const [d, c, a, b, e] = links;
      await store.write(batchOf([work('birds'), edition('a')], { await: links }));
      expect(await store.awaitedAfter(undefined, 9)).toEqual([a, c, b, e, d]);
      expect(await store.awaitedAfter(undefined, 2)).toEqual([a, c, b, e]);
      expect(await store.awaitedAfter(origin('a', '10'), 1)).toEqual([c, b, e]);
      expect(await store.awaitedAfter(three, 1)).toEqual([]);
      await store.write(batchOf([], { arrived: [two] }));
      expect(await store.awaitedAfter(undefined, 9)).toEqual([a, d]);
    },
  },
  {
    says: 'all checkpoints come by the name of their intake',
    check: async store => {
      const report = { taken: 2, none: null };
      for (const intake of ['b', '', 'a']) {
        await store.write(batchOf([], { checkpoint: { intake, records: 1, report: {} } }));
      }
      await store.write(batchOf([], { checkpoint: { intake: 'b', records: 2, report } }));
      const [none, a, b] = [
        { intake: '', records: 1, report: {} },
        { intake: 'a', records: 1, report: {} },
        { intake: 'b', records: 2, report },
      ];
      expect(await store.checkpointsAfter(undefined, 9)).toEqual([none, a, b]);
      expect(await store.checkpointsAfter(undefined, 2)).toEqual([none, a]);
      expect(await store.checkpointsAfter('', 1)).toEqual([a]);
      expect(await store.checkpointsAfter('aa', 9)).toEqual([b]);
      expect(await store.checkpointsAfter('b', 9)).toEqual([]);
    },
  },
  {
    says: 'the whole history stays as it was when its first part was asked for, whatever is written while it is read',
    check: async store => {
      const kept = { ...origin('s', 'k'), id: 'plate-of-a', digest: 'd' };
      const [link, checkpoint] = [
        waits('w', origin('s', 'later')),
        { intake: 'i', records: 1, report: { n: [1, null] } },
      ];
      await threeChanges(store);
      await store.write(batchOf([], { origins: [kept], await: [link], checkpoint }));
      const expected = [
        ...(await store.changesAfter(0, 99)).map(change => ({ part: 'changeSet', ...change })),
        { part: 'origin', origin: kept },
        { part: 'awaited', link },
        { part: 'checkpoint', checkpoint },
      ];
      expect(await partsOf(store)).toEqual(expected);

      const parts = store.history()[Symbol.asyncIterator]();
      const found = [(await parts.next()).value];
      await store.write(batchOf([plate('b', { caption: 'after' }), plate('new')], { arrived: [link.origin] }));
      await store.write(batchOf([], { remove: [{ id: 'copying-of-a' }], checkpoint: { ...checkpoint, records: 2 } }));
      await store.write(
        batchOf([], {
          origins: [
            { ...kept, digest: 'e' },
            { ...kept, key: 'l', id: 'plate-of-new' },
          ],
        }),
      );
      for (let next = await parts.next(); next.done !== true; next = await parts.next()) found.push(next.value);
      expect(found).toEqual(expected);
      expect((await partsOf(store)).length).toBe(expected.length + 2);
    },
  },
  {
    says: 'a history that is not read to its end hinders nobody',
    check: async store => {
      await threeChanges(store);
      for await (const part of store.history()) {
        expect(part.part).toBe('changeSet');
        break;
      }
      await store.write(batchOf([plate('b', { caption: 'after' })]));
      expect(await store.lastChangeSet()).toBe(4);
    },
  },
];
