import type { AnyRow } from './row.ts';
import { rowFields } from './row-fields.ts';

/** A row with its fields in the order in which they are declared, as every store answers it. */
export function rowInOrder<T extends AnyRow>(row: T): T {
  const values = row as unknown as Readonly<Record<string, unknown>>;
  const ordered: Record<string, unknown> = { id: row.id, kind: row.kind };
  for (const { name } of rowFields(row.kind)) if (values[name] !== undefined) ordered[name] = values[name];
  for (const name of ['since', 'until']) if (values[name] !== undefined) ordered[name] = values[name];
  return ordered as unknown as T;
}
