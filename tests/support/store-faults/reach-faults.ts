import type { GraphStore } from '../../../src/store/graph-store.ts';
import { changed, type Fault, sortedFields } from './fault.ts';

export const reachFaults: readonly Fault[] = [
  {
    fault: 'an origin is known by its key alone',
    spoil: s => ({
      byOrigin: async origins =>
        (await s.byOriginKey(origins.map(o => o.key))).map(
          found => found[0] && { id: found[0].id, digest: found[0].digest },
        ),
    }),
  },
  {
    fault: 'origins of a key come in reverse',
    spoil: s => ({ byOriginKey: async keys => (await s.byOriginKey(keys)).map(found => [...found].reverse()) }),
  },
  {
    fault: 'arrivals are not told of links that wait',
    spoil: s => ({
      arrivals: async (own, named) => ({ ...(await s.arrivals(own, named)), waiting: own.map(() => []) }),
    }),
  },
  {
    fault: 'origins of a record come in reverse',
    spoil: s => ({ originsOf: async ids => (await s.originsOf(ids)).map(found => [...found].reverse()) }),
  },
  {
    fault: 'an origin is written once',
    spoil: s => ({
      write: async batch => {
        const known = await s.byOrigin(batch.origins ?? []);
        return s.write({ ...batch, origins: (batch.origins ?? []).filter((_, i) => known[i] === undefined) });
      },
    }),
  },
  {
    fault: 'details of windows are lost',
    spoil: s => changed(s, batch => ({ ...batch, windows: (batch.windows ?? []).map(({ detail: _, ...w }) => w) })),
  },
  {
    fault: 'open ends are equal to any',
    spoil: s => changed(s, batch => ({ ...batch, windows: (batch.windows ?? []).map(({ last: _, ...w }) => w) })),
  },
  {
    fault: 'pages of windows begin anew',
    spoil: s => ({
      editionsInWindows: (windows, filter, _after, limit) => s.editionsInWindows(windows, filter, undefined, limit),
    }),
  },
  {
    fault: 'windows come as they were first',
    spoil: s => ({
      write: async batch => {
        const known = await s.windowsOf((batch.windows ?? []).map(w => w.edition));
        return s.write({ ...batch, windows: (batch.windows ?? []).filter((_, i) => known[i] === undefined) });
      },
    }),
  },
  {
    fault: 'fields of a window come in reverse',
    spoil: s => ({
      windowsOf: async ids => (await s.windowsOf(ids)).map(w => (w === undefined ? w : sortedFields(w))),
    }),
  },
  {
    fault: 'titles come by id',
    spoil: s => ({
      editionsByTitle: async (filter, after, limit) =>
        [...(await s.editionsByTitle(filter, after, limit))].sort((a, b) => (a.id < b.id ? -1 : 1)),
    }),
  },
  ...(['form', 'language', 'illustrated', 'work', 'place', 'subject'] as const).map(name => ({
    fault: `the condition ${name} does not limit`,
    spoil: (s: GraphStore): Partial<GraphStore> => {
      const without = <F extends object>(filter: F): F =>
        Object.fromEntries(Object.entries(filter).filter(([key]) => key !== name)) as F;
      return {
        windowGroups: filter => s.windowGroups(without(filter)),
        editionsInWindows: (windows, filter, after, limit) =>
          s.editionsInWindows(windows, without(filter), after, limit),
        editionsByTitle: (filter, after, limit) => s.editionsByTitle(without(filter), after, limit),
      };
    },
  })),
  {
    fault: 'one who has gone is answered',
    spoil: s => ({
      windowGroups: filter => s.windowGroups(filter),
      editionsInWindows: (windows, filter, after, limit) => s.editionsInWindows(windows, filter, after, limit),
      editionsByTitle: (filter, after, limit) => s.editionsByTitle(filter, after, limit),
    }),
  },
  {
    fault: 'an empty filter passes the illustrated only',
    spoil: s => ({
      editionsByTitle: (filter, after, limit) => s.editionsByTitle({ illustrated: true, ...filter }, after, limit),
    }),
  },
];
