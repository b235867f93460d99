import type { Basis } from '../../domain/model/counted.ts';
import type { RecordOf } from '../../domain/model/row.ts';
import type { EditionFilter, GraphStore } from '../../store/graph-store.ts';
import { type Breath, breathing } from '../breath.ts';
import { rowsOfKind } from '../rows-of-kind.ts';
import { editionsThatPass } from './edition-filter.ts';
import { editionsSeen } from './editions-seen.ts';
import {
  bySortAndId,
  byTitle,
  firstOfBuckets,
  groupsOfWindows,
  idsInWindows,
  type WindowSeen,
} from './windows-of-editions.ts';

/** Editions whose claims are asked for at once: few enough for a store to answer at once. */
const atOnce = 250;

/** What a store tells of the windows of editions. */
export type WindowReads = Pick<GraphStore, 'windowGroups' | 'editionsInWindows' | 'editionsByTitle'>;

/**
 * Windows of editions where none are kept: for the graph as it was, or where other claims count. All editions that a filter
 * may pass are read once, however often their windows are asked for. Linear in their number.
 * @param onScan called when editions are read for it
 */
export function scannedWindows(store: GraphStore, basis: Basis, onScan: () => void): WindowReads {
  const known = new Map<string, Promise<readonly WindowSeen[]>>();
  const seen = (filter: EditionFilter, signal?: AbortSignal): Promise<readonly WindowSeen[]> => {
    const name = JSON.stringify(filter);
    const found = known.get(name) ?? scan(store, filter, basis, breathing(signal));
    known.set(name, found);
    // Whoever stopped waiting does not stop others.
    found.catch(() => known.delete(name));
    onScan();
    return found;
  };
  return {
    windowGroups: async (filter, signal) => {
      const windows = (await seen(filter, signal)).map(({ window }) => window);
      return groupsOfWindows([{ windows, times: 1 }], await store.lastChangeSet());
    },
    editionsInWindows: async (buckets, filter, after, limit, signal) =>
      firstOfBuckets(idsInWindows(await seen(filter, signal), buckets, after), limit),
    editionsByTitle: async (filter, after, limit, signal) =>
      byTitle(await seen(filter, signal))
        .filter(edition => after === undefined || bySortAndId(edition, after) > 0)
        .slice(0, limit),
  };
}

async function scan(
  store: GraphStore,
  filter: EditionFilter,
  basis: Basis,
  breath: Breath,
): Promise<readonly WindowSeen[]> {
  const all: WindowSeen[] = [];
  for await (const editions of editionsToSee(store, filter, breath)) {
    for (let from = 0; from < editions.length; from += atOnce) {
      const seen = await editionsSeen(store, editions.slice(from, from + atOnce), basis);
      for (const { edition, window } of await editionsThatPass(store, seen, filter, basis))
        all.push({ edition, window });
      if (breath.isDue()) await breath.take();
    }
  }
  return all;
}

/** Every edition that the filter may pass. */
async function* editionsToSee(
  store: GraphStore,
  { work }: EditionFilter,
  breath: Breath,
): AsyncGenerator<readonly RecordOf<'Edition'>[]> {
  if (work === undefined) yield* rowsOfKind(store, 'Edition', undefined, breath);
  else {
    const [rows = []] = await store.linked([work], [{ kind: 'Edition', name: 'work' }]);
    yield rows.filter(row => row.kind === 'Edition');
  }
}
