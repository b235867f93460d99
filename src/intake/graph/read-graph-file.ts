import { checkRow } from '../../domain/model/check-row.ts';
import type { AnyRow, Origin } from '../../domain/model/row.ts';
import { parseJson } from '../../domain/text/parse-json.ts';
import { PlatestemmaError } from '../../errors.ts';
import type { Refusal } from '../intention.ts';
import { type Line, lines } from './lines.ts';
import { saysHistory } from './read-history.ts';

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
 * @throws SOURCE_REFUSED for one that carries a history, of which this would take the rows without their order
 * @param skip lines already dealt with, counted from the beginning of the file
 */
export async function* readGraphFile(
  input: AsyncIterable<Uint8Array>,
  options: { readonly file?: string; readonly skip?: number },
): AsyncGenerator<GraphFileRow | Refusal> {
  for await (const line of lines(input)) {
    if (line.number === 1 && saysHistory(line.text)) throw withHistory(options.file);
    if (line.number <= (options.skip ?? 0) || isNothing(line)) continue;
    yield readLine(line, options.file);
  }
}

function withHistory(file = 'the file'): PlatestemmaError {
  return new PlatestemmaError(
    'SOURCE_REFUSED',
    `expected a graph file with rows as they are now, came one with history: platestemma transfer --from "${file}" takes it`,
    { place: { file } },
  );
}

function isNothing({ text, fault }: Line): boolean {
  return fault === undefined && (text === '' || text.startsWith('#'));
}

function readLine(line: Line, file: string | undefined): GraphFileRow | Refusal {
  const place = { ...(file === undefined ? {} : { file }), record: line.number };
  try {
    if (line.fault !== undefined) throw new PlatestemmaError('INPUT_INVALID', line.fault, { place });
    const { row, origins } = checkRow(parse(line.text), place);
    return { outcome: 'taken', row, origins, record: line.number };
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    return {
      outcome: 'refused',
      problem: { code: error.code, message: error.message, place: { ...place, ...error.place } },
    };
  }
}

function parse(text: string): unknown {
  try {
    return parseJson(text);
  } catch (cause) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected one JSON object, came "${text.slice(0, 60)}": ${(cause as Error).message}`,
      { cause },
    );
  }
}
