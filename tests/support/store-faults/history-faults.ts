import type { AnyRow, Stamped } from '../../../src/domain/model/row.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { historyParts } from '../../../src/store/history-parts.ts';
import type { Fault } from './fault.ts';

export const historyFaults: readonly Fault[] = [
  {
    fault: 'what a change set put comes by id',
    spoil: s => put(s, rows => [...rows].sort((a, b) => (a.id < b.id ? -1 : 1))),
  },
  {
    fault: 'old versions do not say until when they were valid',
    spoil: s => put(s, rows => rows.map(({ until: _, ...row }) => row as Stamped<AnyRow>)),
  },
  {
    fault: 'history tells rows as they are now',
    spoil: s => ({
      changesAfter: async (number, limit) =>
        Promise.all(
          (await s.changesAfter(number, limit)).map(async change => ({
            ...change,
            put: (await s.rows(change.put.map(({ id }) => id))).map(row => row!),
          })),
        ),
    }),
  },
  {
    fault: 'a change set is cut at the limit',
    spoil: s => ({
      changesAfter: async (number, limit) => {
        let left = limit;
        return (await s.changesAfter(number, limit)).map(change => {
          const rows = change.put.slice(0, left);
          left -= rows.length;
          return { ...change, put: rows };
        });
      },
    }),
  },
  {
    fault: 'a change set larger than the limit is passed over',
    spoil: s => ({
      changesAfter: async (number, limit) =>
        (await s.changesAfter(number, limit)).filter(change => change.put.length <= limit),
    }),
  },
  { fault: 'only one change set is told', spoil: s => ({ changesAfter: number => s.changesAfter(number, 1) }) },
  {
    fault: 'a batch without rows is a change set',
    spoil: s => ({
      changesAfter: async (number, limit) => {
        const found = await s.changesAfter(number, limit);
        return found.length > 1 && (await s.checkpointsAfter(undefined, 1)).length > 0 ? [found[0]!, ...found] : found;
      },
    }),
  },
  {
    fault: 'origins come by source',
    spoil: s => ({
      originsAfter: async (after, limit) =>
        [...(await s.originsAfter(after, limit))].sort((a, b) => (a.source < b.source ? -1 : 1)),
    }),
  },
  {
    fault: 'origins begin after a key',
    spoil: s => ({
      originsAfter: (after, limit) => s.originsAfter(after && { ...after, source: '\u{10ffff}' }, limit),
    }),
  },
  {
    fault: 'links that wait for one record are cut at the limit',
    spoil: s => ({ awaitedAfter: async (after, limit) => (await s.awaitedAfter(after, limit)).slice(0, limit) }),
  },
  {
    fault: 'checkpoints of an intake without a name are left out',
    spoil: s => ({ checkpointsAfter: (after, limit) => s.checkpointsAfter(after ?? '', limit) }),
  },
  {
    fault: 'a history goes on with what is written while it is read',
    spoil: s => ({ history: () => historyParts(s) }),
  },
  {
    fault: 'a history hinders those who write until it has been read to its end',
    spoil: s => {
      let isRead = true;
      return {
        history: async function* () {
          isRead = false;
          yield* s.history();
          isRead = true;
        },
        write: async batch => {
          if (!isRead) throw new Error('a history is being read');
          return s.write(batch);
        },
      };
    },
  },
];

function put(
  store: GraphStore,
  change: (rows: readonly Stamped<AnyRow>[]) => readonly Stamped<AnyRow>[],
): Partial<GraphStore> {
  return {
    changesAfter: async (number, limit) =>
      (await store.changesAfter(number, limit)).map(({ put: rows, ...rest }) => ({ ...rest, put: change(rows) })),
  };
}
