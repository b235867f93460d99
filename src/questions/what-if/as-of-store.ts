import { defaultBasis } from '../../domain/model/counted.ts';
import type { GraphStore } from '../../store/graph-store.ts';
import { overStore } from './over-store.ts';
import { recordsCounted, recordsInOrder } from './records-in-order.ts';
import { scannedWindows } from './scanned-windows.ts';

/**
 * A store as it was after a change set. What is kept of the graph as it is now alone (orders, counts, windows of editions) is
 * worked out from all that was there; where a record was taken from is told as it is now.
 * @param onScan called when editions are read one by one
 */
export function asOfStore(base: GraphStore, asOf: number, onScan: () => void): GraphStore {
  const view = { asOf };
  const store: GraphStore = overStore(base, {
    rows: ids => base.rows(ids, view),
    linked: (ids, via) => base.linked(ids, via, view),
    surroundings: (ids, around) => base.surroundings(ids, around, view),
    walk: asked => base.walk({ ...asked, view }),
    scan: (after, limit) => base.scan(after, limit, view),
    list: (kind, after, limit) => recordsInOrder(store, kind, after, limit),
    count: kind => recordsCounted(store, kind),
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
