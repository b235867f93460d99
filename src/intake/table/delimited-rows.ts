import { type CellForm, splitCells } from './split-cells.ts';
import type { BrokenRow, TableRow } from './table-row.ts';
import type { TextLine } from './table-text.ts';

/** A row that quoted values carry over more lines, or more characters, than these is taken to have lost a mark. */
const mostLines = 1000;
const mostCharacters = 1_000_000;

/** A row with the line that it begins in. */
export type CellRow = { readonly line: number } & ({ readonly cells: readonly string[] } | { readonly fault: string });

/**
 * Rows of delimited text. A quotation mark that is never closed, or that closes where it cannot, spoils the one line it
 * stands in: reading goes on with the next. Lines without any value are passed over.
 * @param width number of values that a row should have; undefined: that of the first row
 * @param asInSpreadsheet lines without any value come too, and a row may end where only empty values follow
 */
export async function* cellRows(
  lines: AsyncIterable<TextLine>,
  form: CellForm,
  width?: number,
  asInSpreadsheet = false,
): AsyncGenerator<CellRow> {
  const source = lines[Symbol.asyncIterator]();
  /** Lines read ahead in search of a closing mark that have to be read again, the next one last. */
  const again: TextLine[] = [];
  const next = async (): Promise<TextLine | undefined> => again.pop() ?? (await source.next()).value ?? undefined;
  let expected = width;
  for (let line = await next(); line !== undefined; line = await next()) {
    const held: TextLine[] = [];
    let read = readLine(line, form);
    let text = line.text;
    while (read === 'open' && held.length < mostLines && text.length < mostCharacters) {
      const more = await next();
      if (more === undefined) break;
      held.push(more);
      text += `\n${more.text}`;
      if (more.fault !== undefined) read = 'stray';
      else if (more.text.includes(form.quote!)) read = splitCells(text, form);
    }
    const least = asInSpreadsheet ? 0 : expected;
    const row = rowOf(line, read, held.length > 0 ? [least, expected] : []);
    if ('fault' in row) again.push(...held.reverse());
    else if (!asInSpreadsheet && row.cells.every(cell => cell.trim() === '')) continue;
    else expected ??= row.cells.length;
    yield row;
  }
}

type Width = readonly [least?: number | undefined, most?: number | undefined];
type Read = ReturnType<typeof splitCells> | { readonly fault: string };

function readLine({ text, fault }: TextLine, form: CellForm): Read {
  return fault === undefined ? splitCells(text, form) : { fault };
}

/** @param width given where the row runs over several lines: another number of values shows that a mark went astray */
function rowOf({ number: line }: TextLine, read: Read, [least = 0, most = Infinity]: Width): CellRow {
  if (read === 'open') return { line, fault: `line ${line}: a quoted value begins here and does not end` };
  if (read === 'stray' || (Array.isArray(read) && (read.length < least || read.length > most))) {
    return { line, fault: `line ${line}: expected a delimiter after a quoted value, came other characters` };
  }
  return 'fault' in read ? { line, fault: `line ${line}: ${read.fault}` } : { line, cells: read as readonly string[] };
}

/** Rows under the names of their columns. A row with more or fewer values than columns is broken. */
export async function* delimitedRows(
  rows: AsyncIterable<CellRow>,
  columns: readonly string[],
): AsyncGenerator<TableRow | BrokenRow> {
  let number = 0;
  for await (const row of rows) {
    number++;
    if ('fault' in row) yield { number, fault: row.fault };
    else if (row.cells.length !== columns.length) {
      const fault = `line ${row.line}: expected ${columns.length} values, came ${row.cells.length}`;
      yield { number, fault };
    } else yield { number, cells: cellsOf(row.cells, columns), lists: noLists };
  }
}

const noLists: ReadonlyMap<string, number> = new Map();

function cellsOf(cells: readonly string[], columns: readonly string[]): ReadonlyMap<string, string> {
  const named = new Map<string, string>();
  cells.forEach((cell, i) => {
    if (cell.trim() !== '') named.set(columns[i]!, cell);
  });
  return named;
}
