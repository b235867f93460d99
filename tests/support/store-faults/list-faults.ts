import { changed, type Fault } from './fault.ts';

export const listFaults: readonly Fault[] = [
  {
    fault: 'a list is ordered by id',
    spoil: s => ({
      list: async (kind, after, limit) =>
        [...(await s.list(kind, after, limit))].sort((a, b) => (a.id < b.id ? -1 : 1)),
    }),
  },
  {
    fault: 'a list is ordered by UTF-16 units',
    spoil: s => ({
      list: async (kind, after, limit) =>
        [...(await s.list(kind, after, limit))].sort((a, b) => (a.sort + a.id < b.sort + b.id ? -1 : 1)),
    }),
  },
  {
    fault: 'a page begins with its position',
    spoil: s => ({
      list: async (kind, after, limit) =>
        after === undefined
          ? s.list(kind, after, limit)
          : [after, ...(await s.list(kind, after, limit - 1))].slice(0, Math.min(limit, 2)),
    }),
  },
  {
    fault: 'sort keys are those of the first version',
    spoil: s =>
      changed(s, batch => ({
        ...batch,
        put: batch.put.map(put =>
          put.sort === undefined ? put : { ...put, sort: put.row.id.slice(-3), tokens: put.tokens ?? [] },
        ),
      })),
  },
  {
    fault: 'versions are counted',
    spoil: s => ({
      count: async kind => {
        const all = await s.scan(undefined, 99);
        return all.filter(r => r.kind === kind).reduce((n, r) => n + r.since, 0);
      },
    }),
  },
];
