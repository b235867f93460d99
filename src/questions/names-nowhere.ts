import type { AnyRow } from '../domain/model/row.ts';
import { namedIds } from '../output/graph-file/canonical-line.ts';
import type { GraphStore } from '../store/graph-store.ts';

const stretch = 500;

/** Ids that rows name and that are neither in the store nor coming, by the id of the row that names them. */
export async function namesNowhere(
  store: GraphStore,
  rows: readonly AnyRow[],
  isComing: (id: string) => boolean,
): Promise<ReadonlyMap<string, readonly string[]>> {
  const missing = new Map<string, readonly string[]>();
  for (let at = 0; at < rows.length; at += stretch) {
    const some = rows.slice(at, at + stretch).map(row => ({ id: row.id, named: namedIds(row) }));
    const ids = [...new Set(some.flatMap(({ named }) => named))].filter(id => !isComing(id));
    const found = await store.rows(ids);
    const nowhere = new Set(ids.filter((_, i) => found[i] === undefined));
    for (const { id, named } of some) {
      const absent = named.filter(name => nowhere.has(name));
      if (absent.length > 0) missing.set(id, absent);
    }
  }
  return missing;
}
