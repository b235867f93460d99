import { checkRow } from '../../domain/model/check-row.ts';
import type { AnyRow, Origin } from '../../domain/model/row.ts';
import { PlatestemmaError } from '../../errors.ts';
import type { Refusal } from '../intention.ts';
import { type Line, lines } from './lines.ts';

/** A line of a graph file, checked by itself: whether what it names exists is for the graph to say. */
export interface GraphFileRow {
  readonly outcome: 'taken';
  readonly row: AnyRow;
  readonly origins: readonly Origin[];
  readonly record: number;
}

/**
 * Reads a graph file: JSON Lines in UTF-8, one record or claim a line, empty lines and lines that begin with `#` passed
 * over. A line that is refused does not end the reading.
 * @param skip lines already dealt with, counted from the beginning of the file
 */
export async function* readGraphFile(
  input: AsyncIterable<Uint8Array>,
  options: { readonly file?: string; readonly skip?: number },
): AsyncGenerator<GraphFileRow | Refusal> {
  for await (const line of lines(input)) {
    if (line.number <= (options.skip ?? 0) || line.text === '' || line.text.startsWith('#')) continue;
    yield readLine(line, options.file);
  }
}

function readLine(line: Line, file: string | undefined): GraphFileRow | Refusal {
  const place = { ...(file === undefined ? {} : { file }), record: line.number };
  try {
    if (line.fault !== undefined) throw new PlatestemmaError('INPUT_INVALID', line.fault, { place });
    const { origins, ...row } = parse(line.text) as { origins?: readonly Origin[] };
    return {
      outcome: 'taken',
      row: checkRow({ ...row, ...(origins === undefined ? {} : { origins }) }, place).row,
      origins: origins ?? [],
      record: line.number,
    };
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    return {
      outcome: 'refused',
      problem: { code: error.code, message: error.message, place: { ...place, ...error.place } },
    };
  }
}

function parse(text: string): Record<string, unknown> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (cause) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected one JSON object, came "${text.slice(0, 60)}": ${(cause as Error).message}`,
      { cause },
    );
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected one JSON object with "id" and "kind", came ${text.slice(0, 60)}`,
    );
  }
  return value as Record<string, unknown>;
}
