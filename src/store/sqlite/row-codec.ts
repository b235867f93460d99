import { isRecordKind, type KindName } from '../../domain/model/kinds.ts';
import type { AnyRow, Stamped } from '../../domain/model/row.ts';
import { type FieldShape, rowFields } from '../../domain/model/row-fields.ts';
import type { PutRow } from '../graph-store.ts';
import { kindNames } from './schema-text.ts';

/** What SQLite keeps of a value. Links cross between threads as ids. */
export type Cell = string | number | null;

/** A row on its way to the writer: kind (place in the list), id, whether it is known to be new, sort key, tokens, values in the order of rowFields. */
export type WrittenRow = readonly [
  kind: number,
  id: string,
  isNew: boolean,
  sort: string | null,
  tokens: string | null,
  ...values: Cell[],
];

/** A row on its way from a reader: kind, id, since, until, values in the order of rowFields; those without a value at the end may be left out. */
export type ReadRow = readonly [kind: number, id: string, since: number, until: number | null, ...values: Cell[]];

const numbers = new Map<KindName, number>(kindNames.map((kind, i) => [kind, i]));

export function kindNumber(kind: KindName): number {
  return numbers.get(kind)!;
}

export function encodeRow({ row, isNew, sort, tokens }: PutRow): WrittenRow {
  const values = row as unknown as Readonly<Record<string, unknown>>;
  const record = isRecordKind(row.kind);
  const written: [number, string, boolean, string | null, string | null, ...Cell[]] = [
    kindNumber(row.kind),
    row.id,
    isNew === true,
    record ? (sort ?? '') : null,
    record ? (tokens ?? []).join(' ') : null,
  ];
  for (const { name, shape } of rowFields(row.kind)) written.push(encode(values[name], shape));
  return written;
}

export function decodeRow(read: ReadRow): Stamped<AnyRow> {
  const kind = kindNames[read[0]]!;
  const row: Record<string, unknown> = { id: read[1], kind };
  const fields = rowFields(kind);
  for (let i = 4; i < read.length; i++) {
    const cell = read[i] as Cell;
    const { name, shape } = fields[i - 4]!;
    if (cell !== null) row[name] = decode(cell, shape);
  }
  row['since'] = read[2];
  if (typeof read[3] === 'number') row['until'] = read[3];
  return row as unknown as Stamped<AnyRow>;
}

function encode(value: unknown, shape: FieldShape): Cell {
  if (value === undefined) return null;
  if (shape === 'json') return JSON.stringify(value);
  return shape === 'flag' ? (value === true ? 1 : 0) : (value as Cell);
}

function decode(cell: string | number, shape: FieldShape): unknown {
  if (shape === 'json') return JSON.parse(cell as string);
  return shape === 'flag' ? cell === 1 : cell;
}
