import type { ClaimKindName, KindName, RecordKindName } from '../../domain/model/kinds.ts';
import type { ClaimOf, RecordOf } from '../../domain/model/row.ts';
import type { GraphStore } from '../../store/graph-store.ts';
import type { Breath } from '../breath.ts';

/** Rows read from a store at once. */
const stretch = 1000;

type RowOf<K extends KindName> = K extends RecordKindName ? RecordOf<K> : K extends ClaimKindName ? ClaimOf<K> : never;

/**
 * All rows of a kind by id, a stretch at a time: ids begin with their kind, so that those of a kind stand together. Linear in
 * their number.
 */
export async function* rowsOfKind<K extends KindName>(
  store: Pick<GraphStore, 'scan'>,
  kind: K,
  breath: Breath,
): AsyncGenerator<readonly RowOf<K>[]> {
  const prefix = `${kind.toLowerCase()}-`;
  for (let after = prefix; ; ) {
    const rows = await store.scan(after, stretch);
    const ofKind = rows.filter(row => row.kind === kind) as unknown as readonly RowOf<K>[];
    if (ofKind.length > 0) yield ofKind;
    if (rows.length < stretch || !rows.at(-1)!.id.startsWith(prefix)) return;
    after = rows.at(-1)!.id;
    if (breath.isDue()) await breath.take();
  }
}
