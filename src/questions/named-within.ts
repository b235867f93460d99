import { kindOfId } from '../domain/model/id.ts';
import type { KindName } from '../domain/model/kinds.ts';
import { stillNamed } from '../domain/model/refused-change.ts';
import { namedIds } from '../output/graph-file/canonical-line.ts';
import type { GraphStore } from '../store/graph-store.ts';

const stretch = 2000;

/**
 * Refuses to take out what evidence, groups of alternatives or items within rows name. Stores find no row by those: all are
 * looked at, but only where something goes that hardly anything names otherwise, such as a source that is cited.
 * @throws STILL_NAMED
 */
export async function checkNamedWithin(store: GraphStore, removed: ReadonlySet<string>): Promise<void> {
  const sought = new Set([...removed].filter(id => namedWithin.has(kindOfId(id)!)));
  if (sought.size === 0) return;
  for (let after: string | undefined; ; ) {
    const rows = await store.scan(after, stretch);
    for (const row of rows) {
      if (removed.has(row.id)) continue;
      const named = namedIds(row).find(id => sought.has(id));
      if (named !== undefined) throw stillNamed(named, row.id);
    }
    if (rows.length < stretch) return;
    after = rows.at(-1)!.id;
  }
}

const namedWithin: ReadonlySet<KindName> = new Set<KindName>(['Reference', 'Photograph', 'Alternatives', 'Feature']);
