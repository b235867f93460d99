import type { AnyRow, Stamped } from '../../src/domain/model/row.ts';
import { rowFields } from '../../src/domain/model/row-fields.ts';
import type { View } from '../../src/store/graph-store.ts';

/** Whether a version is valid in a view. */
export function isValid(row: Stamped<AnyRow>, view: View | undefined): boolean {
  if (view?.asOf === undefined) return row.until === undefined;
  return row.since <= view.asOf && (row.until === undefined || row.until > view.asOf);
}

/** What a row holds under a name. */
export function value(row: AnyRow, name: string): unknown {
  return (row as unknown as Readonly<Record<string, unknown>>)[name];
}

/** The row with its fields in the order of their declaration. */
export function rowInOrder(row: AnyRow): AnyRow {
  const ordered: Record<string, unknown> = { id: row.id, kind: row.kind };
  for (const { name } of rowFields(row.kind)) if (value(row, name) !== undefined) ordered[name] = value(row, name);
  return ordered as unknown as AnyRow;
}
