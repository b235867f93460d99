import type { KindName } from '../domain/model/kinds.ts';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';

/** Rows that are read from a store at once. */
const stretch = 1000;

/**
 * All rows of a kind as they were after a change set, by id, so many at a time: whatever is written meanwhile. Ids begin with
 * the kind, so that the rows of a kind stand together in the order of ids.
 */
export async function* rowsOfKind(
  store: GraphStore,
  kind: KindName,
  asOf: number,
): AsyncGenerator<readonly Stamped<AnyRow>[]> {
  const prefix = `${kind.toLowerCase()}-`;
  let after = prefix;
  while (true) {
    const rows = await store.scan(after, stretch, { asOf });
    const ofKind = rows.filter(row => row.id.startsWith(prefix));
    if (ofKind.length > 0) yield ofKind;
    if (ofKind.length < stretch) return;
    after = ofKind.at(-1)!.id;
  }
}
