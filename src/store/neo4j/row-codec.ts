import neo4j, { type Integer } from 'neo4j-driver';
import { isRecordKind, type KindName } from '../../domain/model/kinds.ts';
import type { AnyRow, Stamped } from '../../domain/model/row.ts';
import { type FieldShape, rowFields } from '../../domain/model/row-fields.ts';

/** What a property holds. A number of JavaScript would become a decimal one: integers are said to be such. */
export type Value = string | number | boolean | Integer | null;

export type Properties = Readonly<Record<string, Value>>;

/** Properties of a node as the driver gives them. */
export type ReadProperties = Readonly<Record<string, string | number | boolean>>;

/** Fields of a row that have a value. */
export function encodeFields(row: AnyRow): Record<string, Value> {
  const values = row as unknown as Readonly<Record<string, unknown>>;
  const encoded: Record<string, Value> = {};
  for (const { name, shape } of rowFields(row.kind)) {
    const value = values[name];
    if (value !== undefined) encoded[name] = encode(value, shape);
  }
  return encoded;
}

/** Fields that the kind has and the row has not, as null: they are taken off a node that had them. */
export function withoutOthers(kind: KindName, encoded: Record<string, Value>): Record<string, Value> {
  for (const { name } of rowFields(kind)) encoded[name] ??= null;
  return encoded;
}

/** Properties that a row of a kind may have, derived ones too, but for those that every row has. */
export function propertyNames(kind: KindName): readonly string[] {
  const derived = isRecordKind(kind) ? ['_sort', '_words'] : [];
  if (kind === 'Edition') derived.push('_window', '_traits');
  if (kind === 'Dating') derived.push('_spread', '_firstDay', '_lastDay', '_date');
  return [...rowFields(kind).map(({ name }) => name), ...derived];
}

export function decodeRow(properties: ReadProperties): Stamped<AnyRow> {
  const kind = properties['kind'] as KindName;
  const row: Record<string, unknown> = { id: properties['id'], kind };
  for (const { name, shape } of rowFields(kind)) {
    const value = properties[name];
    if (value !== undefined) row[name] = shape === 'json' ? JSON.parse(value as string) : value;
  }
  row['since'] = properties['_since'];
  if (properties['_until'] !== undefined) row['until'] = properties['_until'];
  return row as unknown as Stamped<AnyRow>;
}

function encode(value: unknown, shape: FieldShape): Value {
  if (shape === 'json') return JSON.stringify(value);
  return shape === 'integer' ? neo4j.int(value as number) : (value as Value);
}
