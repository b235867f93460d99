import { nearName } from '../../domain/model/near-name.ts';
import { PlatestemmaError, type SourcePlace } from '../../errors.ts';
import { tidy } from '../marcxml/text.ts';

export interface TableHeader {
  /** Columns in the order of the table. */
  readonly columns: readonly string[];
  /** Columns that the mapping does not know, each with the known name that it resembles. */
  readonly unexpected: readonly { readonly name: string; readonly near?: string }[];
}

/**
 * The columns that the first row of a table names, held against those that the mapping expects.
 * @throws INPUT_INVALID if an expected column is missing, or a name stands twice or is empty
 */
export function readHeader(cells: readonly string[], expected: readonly string[], place: SourcePlace): TableHeader {
  const columns = cells.map(tidy);
  const nameless = columns.indexOf('');
  if (nameless >= 0) throw refusal(`expected a name for each column, came none for column ${nameless + 1}`, place);
  const twice = columns.find((name, i) => columns.indexOf(name) !== i);
  if (twice !== undefined) throw refusal(`expected each column once, came "${twice}" twice`, place);
  if (columns.length === 1 && expected.length > 1 && !expected.includes(columns[0]!)) {
    const came = `came one, "${columns[0]!.slice(0, 60)}": is the delimiter right?`;
    throw refusal(`expected ${expected.length} columns, ${came}`, place);
  }
  const others = columns.filter(name => !expected.includes(name));
  const missing = expected.filter(name => !columns.includes(name));
  if (missing.length > 0) {
    const named = missing.map(name => `"${name}"${hint(name, others)}`).join(', ');
    throw refusal(`expected the columns of the mapping, came none named ${named}`, place);
  }
  return { columns, unexpected: others.map(name => ({ name, ...near(name, expected) })) };
}

function refusal(message: string, place: SourcePlace): PlatestemmaError {
  const of = place.file === undefined ? '' : ` of ${place.file}`;
  return new PlatestemmaError('INPUT_INVALID', `the row${of} that names the columns: ${message}`, { place });
}

function hint(name: string, others: readonly string[]): string {
  const like = nearName(name, others);
  return like === undefined ? '' : ` (is it "${like}"?)`;
}

function near(name: string, expected: readonly string[]): { near?: string } {
  const like = nearName(name, expected);
  return like === undefined ? {} : { near: like };
}
