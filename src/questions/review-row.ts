import { isDeepStrictEqual } from 'node:util';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { withoutStamps } from '../domain/model/without-stamps.ts';
import { textIn, type ValueColumn, valueGiven, valueIn, withValue } from '../domain/tables/column-value.ts';
import { isRewritten, isSpreadsheetDate } from '../domain/tables/rewritten-cell.ts';
import { columnName } from '../domain/tables/table-columns.ts';
import { type ErrorCode, PlatestemmaError } from '../errors.ts';
import type { KindTableRow } from '../intake/kind-table/read-kind-table.ts';

/** A cell that says something else than when its table was made, as texts; empty where there is nothing. */
export interface ChangedCell {
  readonly column: string;
  readonly before: string;
  readonly after: string;
}

/** A cell that was changed in the table and, otherwise, in the store since. */
export interface MovedCell extends ChangedCell {
  /** What the store has now. */
  readonly now: string;
}

export interface CellFault {
  readonly code: ErrorCode;
  readonly message: string;
  readonly column: string;
  readonly moved?: MovedCell;
}

export interface RowDifference {
  /** The row as the store has it, with the cells that were changed. */
  readonly row: AnyRow;
  readonly cells: readonly ChangedCell[];
  readonly faults: readonly CellFault[];
}

/**
 * What a row of a table says otherwise than the row as it was when the table was made, put into the row as it is now. A cell
 * that was changed in both to the same is no difference.
 * @param then the row as the table had it; for a new row one without anything
 * @param now the same object if it was not changed since
 */
export function reviewRow(
  { kind, cells, beyond }: KindTableRow,
  then: AnyRow,
  now: Stamped<AnyRow> | AnyRow,
): RowDifference {
  let row = withoutStamps(now);
  const changed: ChangedCell[] = [];
  const faults: CellFault[] = [];
  for (const [column, text] of cells) {
    if (column.holds === 'id' || column.holds === 'seen') continue;
    const cell = { column: columnName(column, kind), before: textIn(then, column), after: text };
    if (unbroken(cell.before) === unbroken(text)) continue;
    try {
      const value = readCell(column, cell);
      if (isDeepStrictEqual(value, valueIn(then, column))) continue;
      if (now !== then) {
        if (isDeepStrictEqual(value, valueIn(now, column))) continue;
        refuseMoved(column, cell, then, now);
      }
      row = withValue(row, column, value);
      changed.push(cell);
    } catch (error) {
      faults.push(faultOf(error, cell));
    }
  }
  for (const column of beyond) {
    if (column.holds === 'id' || column.holds === 'seen') continue;
    const cell = { column: columnName(column, kind), before: textIn(then, column), after: '' };
    if (cell.before.trim() !== '') faults.push({ code: 'INPUT_INVALID', message: cutOff(cell), column: cell.column });
  }
  return { row, cells: changed, faults };
}

class Moved extends PlatestemmaError {
  readonly cell: MovedCell;

  constructor(cell: MovedCell) {
    const { before, after, now } = cell;
    super(
      'REVISION_MOVED',
      `the table changes ${quoted(before)} into ${quoted(after)}, but it was changed into ${quoted(now)} since: decide, and take the table out anew`,
    );
    this.cell = cell;
  }
}

function refuseMoved(column: ValueColumn, cell: ChangedCell, then: AnyRow, now: AnyRow): void {
  if (isDeepStrictEqual(valueIn(now, column), valueIn(then, column))) return;
  throw new Moved({ ...cell, now: textIn(now, column) });
}

/** @throws INPUT_INVALID, DATE_UNREADABLE for what is no value of the column, or what a spreadsheet has made of one */
function readCell(column: ValueColumn, { before, after }: ChangedCell): unknown {
  if (after.includes('\uFFFD') && !before.includes('\uFFFD'))
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected ${quoted(after)} in whole characters, came one that was lost: save the table as UTF-8`,
    );
  const type = column.holds === 'field' ? column.field.type : 'text';
  if (type === 'edtf' && (isSpreadsheetDate(after) || isRewritten(before, after)))
    throw new PlatestemmaError('DATE_UNREADABLE', rewritten('a date such as 1790-06', before, after));
  if (isText(type) && isRewritten(before, after))
    throw new PlatestemmaError('INPUT_INVALID', rewritten('a text', before, after));
  return valueGiven(column, after);
}

function isText(type: string): boolean {
  return type === 'text' || type === 'uri' || type === 'language';
}

function rewritten(expected: string, before: string, after: string): string {
  const of = before === '' ? '' : ` of ${quoted(before)}`;
  return `expected ${expected}, came ${quoted(after)}, which a spreadsheet seems to have made${of}: give the column the format of text, and put back what was there`;
}

function cutOff({ before }: ChangedCell): string {
  return `expected ${quoted(before)} or another value, came the end of the row: is the table whole?`;
}

function faultOf(error: unknown, { column }: ChangedCell): CellFault {
  if (!(error instanceof PlatestemmaError)) throw error;
  const { code, message } = error;
  return { code, message, column, ...(error instanceof Moved ? { moved: error.cell } : {}) };
}

function quoted(text: string): string {
  return text === '' ? 'nothing' : `"${text.length > 80 ? `${text.slice(0, 80)}…` : text}"`;
}

/** Spreadsheets write line ends in their own way, and empty cells where only white space was. */
function unbroken(text: string): string {
  return text.trim() === '' ? '' : text.replace(/\r\n?/g, '\n');
}
