import { stillNamed } from '../domain/model/refused-change.ts';
import { namedIds } from '../output/graph-file/canonical-line.ts';
import type { GraphStore } from '../store/graph-store.ts';

const stretch = 2000;

/**
 * Refuses to take out what evidence, groups of alternatives or items within rows name. Stores find no row by those, and so
 * all rows are looked at.
 * @throws STILL_NAMED
 */
export async function checkNamedWithin(store: GraphStore, removed: ReadonlySet<string>): Promise<void> {
  if (removed.size === 0) return;
  for (let after: string | undefined; ; ) {
    const rows = await store.scan(after, stretch);
    for (const row of rows) {
      if (removed.has(row.id)) continue;
      const named = namedIds(row).find(id => removed.has(id));
      if (named !== undefined) throw stillNamed(named, row.id);
    }
    if (rows.length < stretch) return;
    after = rows.at(-1)!.id;
  }
}
