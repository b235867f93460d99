import type { AnyRow } from '../domain/model/row.ts';
import { compareText } from '../domain/text/compare.ts';
import type { Via } from '../store/graph-store.ts';

/** Those of some rows that hold an id in one of some links, by that id: each row once, by its own id. */
export function linkedIn<R extends AnyRow>(rows: Iterable<R>, via: readonly Via[]): (id: string) => readonly R[] {
  const names = Map.groupBy(via, ({ kind }) => kind);
  const found = new Map<string, Set<R>>();
  for (const row of rows) {
    for (const { name } of names.get(row.kind) ?? []) {
      const id = (row as unknown as Readonly<Record<string, string | undefined>>)[name];
      if (id === undefined) continue;
      const before = found.get(id);
      if (before === undefined) found.set(id, new Set([row]));
      else before.add(row);
    }
  }
  return id => [...(found.get(id) ?? [])].sort((a, b) => compareText(a.id, b.id));
}
