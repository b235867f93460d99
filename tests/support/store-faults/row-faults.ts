import { changed, type Fault, sortedFields } from './fault.ts';

export const rowFaults: readonly Fault[] = [
  { fault: 'rows lose their stamps', spoil: s => ({ rows: async ids => (await s.rows(ids)).map(withoutSince) }) },
  { fault: 'rows ignore the view', spoil: s => ({ rows: ids => s.rows(ids) }) },
  {
    fault: 'rows leave out what is not there',
    spoil: s => ({ rows: async (ids, v) => (await s.rows(ids, v)).filter(Boolean) }),
  },
  {
    fault: 'ids are compared without case',
    spoil: s => ({
      rows: (ids, v) =>
        s.rows(
          ids.map(id => id.toLowerCase().trim()),
          v,
        ),
    }),
  },
  {
    fault: 'fields come in order of their names',
    spoil: s => ({ rows: async (ids, v) => (await s.rows(ids, v)).map(sortedFields) }),
  },
  {
    fault: 'flags that are false are lost',
    spoil: s =>
      changed(s, batch => ({ ...batch, put: batch.put.map(put => ({ ...put, row: withoutFalse(put.row) })) })),
  },
  {
    fault: 'only the first row of a batch is written',
    spoil: s => changed(s, batch => ({ ...batch, put: batch.put.slice(0, 1) })),
  },
  {
    fault: 'a second version is not written',
    spoil: s => ({
      write: async batch => {
        const there = await s.rows(batch.put.map(put => put.row.id));
        return s.write({ ...batch, put: batch.put.filter((_, i) => there[i] === undefined) });
      },
    }),
  },
  {
    fault: 'versions come newest first',
    spoil: s => ({ versions: async id => [...(await s.versions(id))].reverse() }),
  },
  {
    fault: 'versions of any id are there',
    spoil: s => ({ versions: async id => (await s.versions(id)).concat(await s.scan(undefined, 1)) }),
  },
  {
    fault: 'a row that names a later one is refused',
    spoil: s => ({
      write: async batch => {
        for (const put of batch.put) await s.write({ ...batch, put: [put] });
        return { changeSet: await s.lastChangeSet() };
      },
    }),
  },
  { fault: 'links are found by any role', spoil: s => ({ linked: (ids, _via, v) => s.linked(ids, everyLink, v) }) },
  { fault: 'links ignore the view', spoil: s => ({ linked: (ids, via) => s.linked(ids, via) }) },
  {
    fault: 'links of an id are given for each role',
    spoil: s => ({
      linked: async (ids, via, v) => {
        const found = await Promise.all(via.map(one => s.linked(ids, [one], v)));
        return ids.map((_, i) => found.flatMap(rows => rows[i]!));
      },
    }),
  },
  {
    fault: 'withdrawn claims are not linked',
    spoil: s => ({
      linked: async (ids, via, v) =>
        (await s.linked(ids, via, v)).map(rows => rows.filter(row => !('standing' in row))),
    }),
  },
  { fault: 'no claim stands in a group', spoil: _store => ({ inGroups: async groups => groups.map(() => []) }) },
  {
    fault: 'withdrawn claims stand in no group',
    spoil: s => ({
      inGroups: async groups => (await s.inGroups(groups)).map(rows => rows.filter(row => row.standing === undefined)),
    }),
  },
  {
    fault: 'claims of a group come in reverse',
    spoil: s => ({ inGroups: async groups => (await s.inGroups(groups)).map(rows => [...rows].reverse()) }),
  },
  {
    fault: 'linked rows come in reverse',
    spoil: s => ({ linked: async (ids, via, v) => (await s.linked(ids, via, v)).map(rows => [...rows].reverse()) }),
  },
];

const everyLink = [
  { kind: 'Copying', name: 'copy' },
  { kind: 'Copying', name: 'source' },
] as const;

function withoutSince<T>(row: T): T {
  if (row === undefined) return row;
  const { since: _, ...rest } = row as { since?: number };
  return rest as T;
}

function withoutFalse<T extends object>(row: T): T {
  return Object.fromEntries(Object.entries(row).filter(([, value]) => value !== false)) as T;
}
