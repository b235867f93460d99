import type { AnyRow } from '../../src/domain/model/row.ts';
import { graphLine } from '../../src/output/graph-file/graph-line.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';

/**
 * The rows that a change set put, each without its id, under a name that tells no more than its kind and its place among
 * those of it: `plate 1`. Where rows name each other, they do by these names.
 */
export async function rowsPut(store: GraphStore, changeSet: number): Promise<Readonly<Record<string, unknown>>> {
  const [change] = await store.changesAfter(changeSet - 1, 1);
  if (change?.changeSet.number !== changeSet) throw new Error(`there is no change set ${changeSet}`);
  return readable(change.put);
}

function readable(rows: readonly AnyRow[]): Readonly<Record<string, unknown>> {
  const names = new Map<string, string>();
  const counts = new Map<string, number>();
  for (const { id, kind } of rows) {
    const count = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, count);
    names.set(id, `${kind.toLowerCase()} ${count}`);
  }
  return Object.fromEntries(
    rows.map(row => {
      const named = graphLine(row).replace(/"([a-z]+-[a-z0-9-]+)"/g, (all, id: string) =>
        names.has(id) ? JSON.stringify(names.get(id)) : all,
      );
      const { id, kind: _, ...fields } = JSON.parse(named) as { id: string; kind: string };
      return [id, fields];
    }),
  );
}
