import { hash } from 'node:crypto';
import { rowKey } from './row-key.ts';
import type { KeyedRows } from './rows-to-bundle.ts';
import { SeenKeys } from './seen-keys.ts';
import type { TableMapping } from './table-mapping.ts';
import type { BrokenRow, TableRow } from './table-row.ts';

/** A row that is no record, and why. */
export interface RefusedRow {
  readonly number: number;
  readonly key?: string;
  readonly column?: string;
  readonly reason: string;
}

/**
 * Rows as records: each by itself, or those that follow one another with one key together. A key that came before is
 * refused, unless the row is the same in everything: what it says would undo what the row before said.
 */
export async function* groupRows(
  rows: AsyncIterable<TableRow | BrokenRow>,
  mapping: TableMapping,
  fallback: string | undefined,
): AsyncGenerator<KeyedRows | RefusedRow> {
  const { about: _about, $schema: _schema, ...meant } = mapping;
  const begin = hash('sha256', JSON.stringify(meant), 'hex');
  const several = mapping.table.rowsPerRecord === 'several';
  const seen = new SeenKeys();
  let held: Held | undefined;
  for await (const row of rows) {
    const read = keyed(row, mapping, fallback);
    if (held !== undefined && several && 'row' in read && held.name === read.name) held.rows.push(read.row);
    else {
      if (held !== undefined) yield met(held, begin, seen);
      held = undefined;
      if ('row' in read) held = { ...read, rows: [read.row] };
      else yield read;
    }
  }
  if (held !== undefined) yield met(held, begin, seen);
}

interface Keyed {
  readonly source: string;
  readonly key: string;
  /** Source and key as one text. */
  readonly name: string;
  readonly row: TableRow;
}

interface Held extends Keyed {
  readonly rows: [TableRow, ...TableRow[]];
}

function keyed(row: TableRow | BrokenRow, mapping: TableMapping, fallback: string | undefined): Keyed | RefusedRow {
  const { number } = row;
  if ('fault' in row) return { number, reason: row.fault };
  const read = rowKey(mapping, row, fallback);
  if ('key' in read) return { ...read, name: `${read.source}\n${read.key}`, row };
  const column = read.columns.join(', ');
  return { number, ...(column === '' ? {} : { column }), reason: `expected the ${read.lacks} of the row, came none` };
}

function met({ source, key, name, rows }: Held, begin: string, seen: SeenKeys): KeyedRows | RefusedRow {
  const digest = digestOf(begin, name, rows);
  const { number } = rows[0];
  const before = seen.meet(name, digest, number);
  if (before === undefined || before.same) return { source, key, rows, digest };
  return { number, key, reason: `expected each key once, came "${key}" as in row ${before.number}, with other values` };
}

/** SHA-256 over what the mapping says and the values of the rows, the first 32 hexadecimal digits. */
function digestOf(begin: string, name: string, rows: readonly TableRow[]): string {
  let text = `${begin}\x1d${name}`;
  for (const { cells } of rows) {
    text += '\x1d';
    for (const [column, cell] of cells) text += `\x1e${column}\x1f${cell}`;
  }
  return hash('sha256', text, 'hex').slice(0, 32);
}
