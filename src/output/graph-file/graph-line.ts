import type { AnyRow, Origin, Stamped } from '../../domain/model/row.ts';
import { rowFields } from '../../domain/model/row-fields.ts';

/**
 * A record or claim as one line of a graph file, without the line end: JSON, keys in the order of the kind's
 * declaration, absent values left out, so that equal rows give equal bytes.
 */
export function graphLine(row: AnyRow | Stamped<AnyRow>, origins: readonly Origin[] = []): string {
  return JSON.stringify({
    id: row.id,
    kind: row.kind,
    ...(origins.length > 0 ? { origins: origins.map(({ source, key }) => ({ source, key })) } : {}),
    ...fieldsInOrder(row),
  });
}

/** What a row has beside its id and kind, in the order in which it is written. */
export function fieldsInOrder(row: AnyRow): Readonly<Record<string, unknown>> {
  const values = row as unknown as Readonly<Record<string, unknown>>;
  const fields: Record<string, unknown> = {};
  for (const name of keysOf(row)) {
    const value = values[name];
    if (value !== undefined) fields[name] = name === 'columns' ? inOrder(value as Record<string, string>) : value;
  }
  return fields;
}

/** Names of the roles, fields and common parts of a row's kind, in the order in which they are written. */
export function keysOf(row: AnyRow): readonly string[] {
  return rowFields(row.kind).map(({ name }) => name);
}

function inOrder(columns: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(columns).sort(([a], [b]) => (a < b ? -1 : 1)));
}
