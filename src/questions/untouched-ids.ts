import type { AnyRow, Stamped } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';

/** Ids of those rows whose last version an intake wrote: nobody has touched them since. */
export async function untouchedIds(
  store: GraphStore,
  rows: readonly (Stamped<AnyRow> | undefined)[],
): Promise<ReadonlySet<string>> {
  const there = rows.filter(row => row !== undefined);
  const sets = await store.changeSets(there.map(row => row.since));
  return new Set(there.filter((_, i) => sets[i]?.batch !== undefined).map(row => row.id));
}
