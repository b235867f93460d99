import type { ClaimKindName, KindName, RecordKindName } from '../domain/model/kinds.ts';
import type { ClaimOf, RecordOf, Stamped } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { Breath } from './breath.ts';

/** Rows that are read from a store at once. */
const stretch = 1000;

type RowOf<K extends KindName> = K extends RecordKindName ? RecordOf<K> : K extends ClaimKindName ? ClaimOf<K> : never;

/**
 * All rows of a kind by id, so many at a time. Ids begin with the kind, so that the rows of a kind stand together in the order
 * of ids.
 * @param asOf they are as they were after a change set, whatever is written meanwhile; absent: as the store tells them
 * @param breath others have their turn between one stretch and the next
 */
export async function* rowsOfKind<K extends KindName>(
  store: Pick<GraphStore, 'scan'>,
  kind: K,
  asOf?: number,
  breath?: Breath,
): AsyncGenerator<readonly Stamped<RowOf<K>>[]> {
  const prefix = `${kind.toLowerCase()}-`;
  let after = prefix;
  while (true) {
    const rows = await store.scan(after, stretch, asOf === undefined ? undefined : { asOf });
    const ofKind = rows.filter(row => row.id.startsWith(prefix));
    if (ofKind.length > 0) yield ofKind as unknown as readonly Stamped<RowOf<K>>[];
    if (ofKind.length < stretch) return;
    after = ofKind.at(-1)!.id;
    if (breath?.isDue() === true) await breath.take();
  }
}
