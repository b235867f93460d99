import { defaultBasis } from '../../domain/model/counted.ts';
import type { AnyClaim, Stamped } from '../../domain/model/row.ts';
import type { GraphStore, View } from '../../store/graph-store.ts';
import { overStore } from './over-store.ts';
import { allCounted, recordsCounted, recordsInOrder } from './records-in-order.ts';
import { scannedSearch } from './scanned-search.ts';
import { scannedWindows } from './scanned-windows.ts';

/**
 * A store as it was after a change set. What is kept of the graph as it is now alone (orders, counts, windows of editions) is
 * worked out from all that was there; where a record was taken from is told as it is now.
 * @param onScan called when editions are read one by one @param signal of an asker who may stop waiting
 */
export function asOfStore(base: GraphStore, asOf: number, onScan: () => void, signal?: AbortSignal): GraphStore {
  /** What was before then can be asked for. */
  const upTo = (view?: View): View => ({ asOf: Math.min(asOf, view?.asOf ?? asOf) });
  const store: GraphStore = overStore(base, {
    rows: (ids, view) => base.rows(ids, upTo(view)),
    linked: (ids, via, view) => base.linked(ids, via, upTo(view)),
    // Those that have left a group since are not found by it.
    inGroups: async groups => {
      const found = await base.inGroups(groups);
      const then = await base.rows(
        found.flat().map(({ id }) => id),
        upTo(),
      );
      const claims = then.filter(row => row !== undefined) as readonly Stamped<AnyClaim>[];
      return groups.map(group => claims.filter(claim => claim.alternativeTo === group));
    },
    surroundings: (ids, around, view) => base.surroundings(ids, around, upTo(view)),
    walk: asked => base.walk({ ...asked, view: upTo(asked.view) }),
    scan: (after, limit, view) => base.scan(after, limit, upTo(view)),
    list: (kind, after, limit) => recordsInOrder(store, kind, after, limit, signal),
    count: kind => recordsCounted(store, kind, signal),
    search: (asked, asker) => scannedSearch(store, asked, asker),
    facts: async () => ({ ...(await base.facts()), records: await allCounted(store, signal) }),
    versions: async id =>
      (await base.versions(id))
        .filter(({ since }) => since <= asOf)
        .map(({ until, ...row }) => (until === undefined || until > asOf ? row : { ...row, until })),
    changeSets: async numbers =>
      (await base.changeSets(numbers)).map(set => (set === undefined || set.number > asOf ? undefined : set)),
    lastChangeSet: async () => asOf,
    windowGroups: (...asked) => windows.windowGroups(...asked),
    editionsInWindows: (...asked) => windows.editionsInWindows(...asked),
    editionsByTitle: (...asked) => windows.editionsByTitle(...asked),
  });
  const windows = scannedWindows(store, defaultBasis, onScan);
  return store;
}
