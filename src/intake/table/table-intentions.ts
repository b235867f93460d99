import { PlatestemmaError, type SourcePlace } from '../../errors.ts';
import type { IntakeProblem, Intention } from '../intention.ts';
import { cellRows, delimitedRows } from './delimited-rows.ts';
import { groupRows, type RefusedRow } from './group-rows.ts';
import { jsonRows } from './json-rows.ts';
import { type KeyedRows, rowsToBundle } from './rows-to-bundle.ts';
import { readHeader, type TableHeader } from './table-header.ts';
import type { TableMapping } from './table-mapping.ts';
import type { BrokenRow, TableRow } from './table-row.ts';
import { textLines } from './table-text.ts';

export interface TableOptions {
  /** Name of the file, for messages. */
  readonly file?: string;
  /** Source of the rows where the mapping names none. */
  readonly source?: string;
  /** Intentions already dealt with in an earlier run: so many are read over and not yielded. */
  readonly skip?: number;
  readonly mapping: TableMapping;
}

/**
 * Rows of a table as intentions, in the order of the table: one for each row, so that every row is accounted for. Rows
 * of one record are one intention where the mapping says that several rows make a record.
 * @throws INPUT_INVALID if an expected column is missing, or nobody says who gives the keys
 */
export async function* tableIntentions(
  input: AsyncIterable<Uint8Array | string>,
  options: TableOptions,
): AsyncGenerator<Intention> {
  const { mapping, source, skip = 0 } = options;
  if (mapping.source === undefined && source === undefined) throw sourceless(placeOf(options));
  const { rows, unexpected } = await openTable(input, options);
  // Said with the first row that is taken; a run that was broken off has said it.
  let unsaid = skip > 0 ? [] : unexpected;
  let toSkip = skip;
  for await (const group of groupRows(rows, mapping, source)) {
    if (toSkip > 0) {
      toSkip--;
      continue;
    }
    const intention = 'rows' in group ? taken(group, options) : refused(group, options);
    if (intention.outcome === 'taken' && unsaid.length > 0) {
      yield { ...intention, remarks: [...unsaid.map(column => unknownColumn(column, options)), ...intention.remarks] };
      unsaid = [];
    } else yield intention;
  }
}

interface OpenTable {
  readonly rows: AsyncIterable<TableRow | BrokenRow>;
  readonly unexpected: TableHeader['unexpected'];
}

async function openTable(input: AsyncIterable<Uint8Array | string>, options: TableOptions): Promise<OpenTable> {
  const { table, columns } = options.mapping;
  const lines = textLines(input, table.encoding);
  if (table.form === 'json lines') return { rows: jsonRows(lines), unexpected: [] };
  const { delimiter = ',', quote = '"', header = true } = table;
  const form = { delimiter, quote: quote === 'none' ? undefined : quote };
  if (!header) return { rows: delimitedRows(cellRows(lines, form, columns.length), columns), unexpected: [] };
  const rows = cellRows(lines, form);
  const { value: first } = await rows.next();
  const found = readHeader(first === undefined || 'fault' in first ? [] : first.cells, columns, placeOf(options));
  return { rows: delimitedRows(rows, found.columns), unexpected: found.unexpected };
}

function taken(group: KeyedRows, options: TableOptions): Intention {
  return rowsToBundle(options.mapping, group, { ...placeOf(options), record: group.rows[0].number, key: group.key });
}

function refused({ number, key, column, reason }: RefusedRow, options: TableOptions): Intention {
  const place = {
    ...placeOf(options),
    record: number,
    ...(key === undefined ? {} : { key }),
    ...(column === undefined ? {} : { field: column }),
  };
  return { outcome: 'refused', problem: { code: 'INPUT_INVALID', message: reason, place } };
}

function unknownColumn({ name, near }: TableHeader['unexpected'][number], options: TableOptions): IntakeProblem {
  const like = near === undefined ? '' : ` (it resembles "${near}")`;
  const message = `the mapping does not know the column "${name}"${like}: it is kept as a free column`;
  return { code: 'INPUT_INVALID', message, place: { ...placeOf(options), field: name } };
}

function placeOf({ file }: TableOptions): SourcePlace {
  return file === undefined ? {} : { file };
}

function sourceless(place: SourcePlace): PlatestemmaError {
  return new PlatestemmaError(
    'INPUT_INVALID',
    'expected the source of the rows in the mapping or given with the table, came none',
    { place },
  );
}
