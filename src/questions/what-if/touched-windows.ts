import { defaultBasis } from '../../domain/model/counted.ts';
import type { AnyRow } from '../../domain/model/row.ts';
import type { EditionFilter, EditionWithWindow, GraphStore, Via } from '../../store/graph-store.ts';
import { windowLinks } from '../edition-window.ts';
import { editionsThatPass } from './edition-filter.ts';
import { type EditionSeen, editionsSeen } from './editions-seen.ts';
import type { WindowReads } from './scanned-windows.ts';
import { held } from './supposed-rows.ts';
import {
  bySortAndId,
  byTitle,
  firstOfBuckets,
  groupsOfWindows,
  idsInWindows,
  type WindowSeen,
} from './windows-of-editions.ts';

/** Editions whose windows may be others than are kept: those that pass a filter as kept, and as the question sees them. */
interface Touched {
  readonly ids: ReadonlySet<string>;
  readonly before: readonly WindowSeen[];
  readonly after: readonly WindowSeen[];
}

/**
 * Windows of editions as a store keeps them, but for those that what is supposed or left out says something of: these are
 * taken away, and put back as the question sees them. Few are worked out anew, however many editions there are.
 * @param base the store, as it is now @param over the same as the question sees it
 * @param otherwise rows that are supposed or left out @param hasConventions other conventions are in force
 */
export function touchedWindows(
  base: GraphStore,
  over: GraphStore,
  otherwise: readonly AnyRow[],
  hasConventions: boolean,
): WindowReads {
  const known = new Map<string, Promise<Touched>>();
  const touched = (filter: EditionFilter): Promise<Touched> => {
    const name = JSON.stringify(filter);
    const found = known.get(name) ?? findTouched(base, over, otherwise, filter);
    known.set(name, found);
    found.catch(() => known.delete(name));
    return found;
  };
  return {
    windowGroups: async (filter, signal) => {
      const [groups, { before, after }] = await Promise.all([base.windowGroups(filter, signal), touched(filter)]);
      const windowsOf = (seen: readonly WindowSeen[]) => seen.map(({ window }) => window);
      const beside = groupsOfWindows(
        [
          { windows: windowsOf(before), times: -1 },
          { windows: windowsOf(after), times: 1 },
        ],
        groups.changeSet,
      );
      // What is worked from windows is remembered by their names, and by no conventions.
      const profiles = hasConventions ? [...groups.profiles] : groups.profiles;
      return { ...groups, profiles, beside };
    },
    editionsInWindows: async (buckets, filter, after, limit, signal) => {
      const { ids, after: seen } = await touched(filter);
      const kept = await base.editionsInWindows(buckets, filter, after, limit + ids.size, signal);
      const put = idsInWindows(seen, buckets, after);
      return firstOfBuckets(
        kept.map((list, i) => [...list.filter(id => !ids.has(id)), ...put[i]!]),
        limit,
      );
    },
    editionsByTitle: async (filter, after, limit, signal) => {
      const { ids, after: seen } = await touched(filter);
      const kept = await base.editionsByTitle(filter, after, limit + ids.size, signal);
      const put = byTitle(seen).filter(edition => after === undefined || bySortAndId(edition, after) > 0);
      const all: readonly EditionWithWindow[] = [...kept.filter(({ id }) => !ids.has(id)), ...put];
      return all.toSorted(bySortAndId).slice(0, limit);
    },
  };
}

async function findTouched(
  base: GraphStore,
  over: GraphStore,
  otherwise: readonly AnyRow[],
  filter: EditionFilter,
): Promise<Touched> {
  const ids = [...(await touchedEditions([base, over], otherwise, filter))];
  const kept = await base.windowsOf(ids);
  const windows = new Map(ids.map((id, i) => [id, kept[i]]));
  const asKept = (seen: EditionSeen): readonly EditionSeen[] => {
    const window = windows.get(seen.edition.id);
    return window === undefined ? [] : [{ ...seen, window }];
  };
  const pass = (store: GraphStore, seen: readonly EditionSeen[]) => editionsThatPass(store, seen, filter, defaultBasis);
  const [before, after] = await Promise.all([
    seenIn(base, ids).then(seen => pass(base, seen.flatMap(asKept))),
    seenIn(over, ids).then(seen => pass(over, seen)),
  ]);
  return { ids: new Set(ids), before, after };
}

async function seenIn(store: GraphStore, ids: readonly string[]): Promise<readonly EditionSeen[]> {
  const editions = (await store.rows(ids)).filter(row => row?.kind === 'Edition');
  return editionsSeen(store, editions, defaultBasis);
}

/** What joins an edition with subjects, which filters ask for: its work, and plates. */
const subjectLinks: readonly Via[] = [
  { kind: 'Appearance', name: 'edition' },
  { kind: 'Depiction', name: 'picture' },
];

/** Editions of which a row says something that their window, or a filter, rests on. */
async function touchedEditions(
  stores: readonly GraphStore[],
  rows: readonly AnyRow[],
  { subject }: EditionFilter,
): Promise<ReadonlySet<string>> {
  const links = subject === undefined ? windowLinks : [...windowLinks, ...subjectLinks];
  const named = rows.flatMap(row =>
    links.flatMap(({ kind, name }) => (kind === row.kind ? (held(row, name) ?? []) : [])),
  );
  const editions = new Set([
    ...named.filter(id => id.startsWith('edition-')),
    ...rows.flatMap(({ kind, id }) => (kind === 'Edition' ? [id] : [])),
  ]);
  if (subject === undefined) return editions;
  const pictures = [...new Set(named)];
  for (const store of stores) {
    const found = await store.linked(pictures, [
      { kind: 'Edition', name: 'work' },
      { kind: 'Appearance', name: 'plate' },
    ]);
    for (const row of found.flat()) {
      if (row.kind === 'Edition') editions.add(row.id);
      if (row.kind === 'Appearance') editions.add(row.edition);
    }
  }
  return editions;
}
