import { isRecordKind } from '../domain/model/kinds.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyRecord, AnyRow } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';

/** Rows by id, and what they are called. */
export interface NamedRows {
  row(id: string): AnyRow | undefined;
  /** Its name; its id if it has none or is not there. */
  called(id: string): string;
  /** The same in quotation marks, to stand in a sentence. */
  quoted(id: string): string;
}

/** Rows that an answer brought along, and those of more ids from the store. */
export async function namedRows(
  store: GraphStore,
  known: readonly AnyRow[],
  ids: readonly string[],
): Promise<NamedRows> {
  const rows = new Map(known.map(row => [row.id, row]));
  const missing = [...new Set(ids)].filter(id => !rows.has(id));
  for (const row of await store.rows(missing)) if (row !== undefined) rows.set(row.id, row);
  const nameOf = (id: string) => {
    const row = rows.get(id);
    return row !== undefined && isRecordKind(row.kind) ? labelOf(row as AnyRecord) : undefined;
  };
  const quoted = (id: string) => {
    const name = nameOf(id);
    return name === undefined ? id : `“${name}”`;
  };
  return { row: id => rows.get(id), called: id => nameOf(id) ?? id, quoted };
}
