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
  {
    fault: 'the best class is not the first',
    spoil: s => ({
      search: async asked => {
        const found = await s.search(asked);
        return { ...found, candidates: [...found.candidates].reverse() };
      },
    }),
  },
  {
    fault: 'beginnings are not found',
    spoil: s => ({
      search: async asked => {
        const found = await s.search(asked);
        return { ...found, candidates: found.candidates.filter(c => c.match !== 'PREFIX') };
      },
    }),
  },
  { fault: 'kinds do not limit a search', spoil: s => ({ search: asked => s.search({ ...asked, kinds: [] }) }) },
  {
    fault: 'a cut search does not say so',
    spoil: s => ({ search: async asked => ({ ...(await s.search(asked)), cut: false }) }),
  },
  {
    fault: 'what is cut falls into the worst class',
    spoil: s => ({
      search: async asked => {
        const found = await s.search(asked);
        const { candidates } = await s.search({ ...asked, cap: 1000 });
        const known = new Set(found.candidates.map(c => c.id));
        return {
          ...found,
          candidates: [
            ...found.candidates,
            ...candidates.filter(c => !known.has(c.id)).map(c => ({ ...c, match: 'SOME' as const })),
          ],
        };
      },
    }),
  },
  {
    fault: 'words are folded to ASCII',
    spoil: s => ({ search: asked => s.search({ ...asked, tokens: asked.tokens.map(t => t.replace(/[^a-z]/g, 'x')) }) }),
  },
  {
    fault: 'old words stay',
    spoil: s => {
      const old = new Map<string, string[]>();
      return changed(s, batch => ({
        ...batch,
        put: batch.put.map(put => {
          const tokens = [...(old.get(put.row.id) ?? []), ...(put.tokens ?? [])];
          old.set(put.row.id, tokens);
          return put.tokens === undefined ? put : { ...put, tokens };
        }),
      }));
    },
  },
  {
    fault: 'claims are found as the records they name',
    spoil: s => ({
      search: async asked => {
        const claims = (await s.scan(undefined, 99)).filter(row => row.kind === 'Copying');
        const found = await s.search(asked);
        return {
          ...found,
          candidates: [
            ...found.candidates,
            ...claims.map(c => ({ id: c.id, sort: '', kind: 'Plate' as const, match: 'SOME' as const })),
          ],
        };
      },
    }),
  },
];
