import type { KindName } from '../../domain/model/kinds.ts';
import { nearName } from '../../domain/model/near-name.ts';
import { unguard } from '../../domain/tables/formula-guard.ts';
import { columnName, columnNamed, kindOfIdColumn, type TableColumn } from '../../domain/tables/table-columns.ts';
import { tableFields } from '../../domain/tables/table-fields.ts';
import { PlatestemmaError, type SourcePlace } from '../../errors.ts';
import type { Refusal } from '../intention.ts';
import { type CellRow, cellRows } from '../table/delimited-rows.ts';
import { findHeader } from '../table/found-header.ts';
import { SeenKeys } from '../table/seen-keys.ts';
import { textLines } from '../table/table-text.ts';

/** A table of one kind, as `export --format table` writes it and a spreadsheet may have left it. */
export interface KindTable {
  readonly kind: KindName;
  readonly rows: AsyncIterable<KindTableRow | Refusal>;
}

export interface KindTableRow {
  readonly outcome: 'read';
  readonly kind: KindName;
  /** The record is the number of the row as a spreadsheet shows it: the one with the names of columns is the first. */
  readonly place: SourcePlace;
  /** Texts without their guard against formulas, by column; a column that the table does not have is not among them. */
  readonly cells: ReadonlyMap<TableColumn, string>;
  /** Columns of the table after the last value of the row. */
  readonly beyond: readonly TableColumn[];
  /** Number of the row in which its id stood before, in the same table. */
  readonly twice?: number;
}

/**
 * Opens a table whose columns say that it is one of ours; columns may have been put in another order or left out, and
 * commas may have become semicolons or tabs.
 * @returns undefined for a table that is none of ours
 * @throws INPUT_INVALID for columns that a table of the kind does not have, or has once and came twice
 */
export async function openKindTable(
  input: AsyncIterable<Uint8Array | string>,
  file: string,
): Promise<KindTable | undefined> {
  const lines = textLines(input, undefined, true)[Symbol.asyncIterator]();
  const header = await findHeader(lines, name => kindOfIdColumn(name) !== undefined);
  const kind = header?.cells.map(kindOfIdColumn).find(found => found !== undefined);
  if (header === undefined || kind === undefined) return undefined;
  const columns = columnsOf(header.cells, kind, file);
  const rest = { [Symbol.asyncIterator]: () => lines };
  const form = { delimiter: header.delimiter, quote: '"' };
  return { kind, rows: rowsOf(cellRows(rest, form, columns.length, true), { kind, columns, file }) };
}

type Columns = readonly (TableColumn | undefined)[];

function columnsOf(names: readonly string[], kind: KindName, file: string): Columns {
  const columns = names.map(name => (name.trim() === '' ? undefined : columnNamed(name, kind)));
  const known = columns.map(column => column && columnName(column, kind));
  names.forEach((name, i) => {
    if (name.trim() !== '' && columns[i] === undefined) throw unknown(name, kind, file);
    if (known[i] !== undefined && known.indexOf(known[i]) !== i)
      throw refusal(`expected each column once, came "${name}" twice`, file);
  });
  if (!columns.some(column => column?.holds === 'seen'))
    throw refusal('expected the column "seen in change set", which says what was seen of each row, came none', file);
  return columns;
}

function unknown(name: string, kind: KindName, file: string): PlatestemmaError {
  const near = nearName(name, [...tableFields(kind).keys(), 'label', 'seen in change set']);
  const like = near === undefined ? '' : `, or "${near}" if that is meant`;
  return refusal(
    `the table of ${kind} has no column "${name}": name it "free: ${name}" to keep it as a free column${like}`,
    file,
  );
}

interface Table {
  readonly kind: KindName;
  readonly columns: Columns;
  readonly file: string;
}

async function* rowsOf(rows: AsyncIterable<CellRow>, table: Table): AsyncGenerator<KindTableRow | Refusal> {
  const ids = new SeenKeys();
  let record = 1;
  for await (const row of rows) {
    const place = { file: table.file, record: ++record };
    if ('fault' in row) yield refused(row.fault, place);
    else if (row.cells.some(cell => cell.trim() !== '')) yield readRow(row.cells, table, place, ids);
  }
}

function readRow(
  cells: readonly string[],
  { kind, columns }: Table,
  place: SourcePlace & { readonly record: number },
  ids: SeenKeys,
): KindTableRow | Refusal {
  const stray = cells.findIndex((cell, i) => columns[i] === undefined && cell.trim() !== '');
  if (stray >= 0) {
    const message = `expected no value in column ${stray + 1}, which has no name, came "${cells[stray]!.slice(0, 60)}"`;
    return refused(message, place);
  }
  const named = columns.flatMap((column, i) =>
    column === undefined || i >= cells.length ? [] : [[column, unguard(cells[i]!)] as const],
  );
  const id = named.find(([column]) => column.holds === 'id')?.[1].trim() ?? '';
  const before = id === '' ? undefined : ids.meet(id, '0', place.record);
  return {
    ...{ outcome: 'read', kind, place, cells: new Map(named) },
    beyond: columns.slice(cells.length).filter(column => column !== undefined),
    ...(before === undefined ? {} : { twice: before.number }),
  };
}

function refused(message: string, place: SourcePlace): Refusal {
  return { outcome: 'refused', problem: { code: 'INPUT_INVALID', message, place } };
}

function refusal(message: string, file: string): PlatestemmaError {
  return new PlatestemmaError('INPUT_INVALID', `${file}, row 1: ${message}`, { place: { file, record: 1 } });
}
