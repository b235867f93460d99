import type { Act } from '../../domain/acts/act.ts';
import { fieldNamed, nearOption, textValue } from '../../domain/acts/act-text.ts';
import type { ActFault } from '../../domain/acts/check-act.ts';
import { unguard } from '../../domain/tables/formula-guard.ts';
import { PlatestemmaError } from '../../errors.ts';
import { type CellRow, cellRows } from '../table/delimited-rows.ts';
import { findHeader } from '../table/found-header.ts';
import { textLines } from '../table/table-text.ts';
import type { ActsFile, ReadAct } from './acts-file.ts';
import { refusedFile } from './refused-file.ts';

/** A table with a column a field of an act, and a row an act. @throws INPUT_INVALID for columns that are no fields */
export async function readActsTable(chunks: readonly Uint8Array[], act: Act, file: string): Promise<ActsFile> {
  const lines = textLines(
    (async function* () {
      yield* chunks;
    })(),
  )[Symbol.asyncIterator]();
  const header = await findHeader(lines, name => fieldNamed(act, name) !== undefined);
  if (header === undefined)
    throw refusedFile(
      file,
      `expected a JSON object, or a table whose first row names options of ${act.command}, came neither`,
    );
  const columns = columnsOf(header.cells, act, file);
  const rest = { [Symbol.asyncIterator]: () => lines };
  const form = { delimiter: header.delimiter, quote: '"' };
  const acts: ReadAct[] = [];
  let record = 1;
  const names = new Map(columns.flatMap(({ name, field }) => (field === undefined ? [] : [[field, name] as const])));
  for await (const row of cellRows(rest, form, columns.length, true)) {
    record++;
    acts.push({ record, columns: names, ...readRow(row, columns, act) });
  }
  return { isSingle: false, acts: acts.filter(({ given, faults }) => Object.keys(given).length + faults.length > 0) };
}

interface Column {
  readonly name: string;
  /** Undefined for a column without a name. */
  readonly field: string | undefined;
}

function columnsOf(names: readonly string[], act: Act, file: string): readonly Column[] {
  const columns = names.map(name => ({ name: name.trim(), field: fieldNamed(act, name) }));
  for (const [i, { name, field }] of columns.entries()) {
    if (name !== '' && field === undefined) {
      const near = nearOption(act, name);
      const hint = near === undefined ? '' : ` (did you mean "${near}"?)`;
      throw refusedFile(file, `row 1: expected names of options of ${act.command}, came "${name}"${hint}`);
    }
    const before = columns.findIndex(other => other.field !== undefined && other.field === field);
    if (before >= 0 && before < i) throw refusedFile(file, `row 1: expected each column once, came "${name}" twice`);
  }
  return columns;
}

function readRow(row: CellRow, columns: readonly Column[], act: Act): Pick<ReadAct, 'given' | 'faults'> {
  if ('fault' in row) return { given: {}, faults: [{ code: 'INPUT_INVALID', message: row.fault }] };
  const given: Record<string, unknown> = {};
  const faults: ActFault[] = [];
  for (const [i, cell] of row.cells.entries()) {
    const { field } = columns[i] ?? {};
    if (field === undefined) {
      if (cell.trim() !== '')
        faults.push({
          code: 'INPUT_INVALID',
          message: `expected no value in column ${i + 1}, which has no name, came "${cell.slice(0, 60)}"`,
        });
      continue;
    }
    try {
      const value = textValue(act.fields[field]!, unguard(cell).trim());
      if (value !== undefined) given[field] = value;
    } catch (error) {
      if (!(error instanceof PlatestemmaError)) throw error;
      faults.push({ code: error.code, field, message: error.message });
    }
  }
  return { given, faults };
}
