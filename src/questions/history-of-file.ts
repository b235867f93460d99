import type { HistoryEnd, HistoryPart, HistorySums } from '../domain/model/history.ts';
import { PlatestemmaError } from '../errors.ts';
import { differingSorts } from './history-sums.ts';
import { sumsOf } from './transfer.ts';

/** What there is of each sort in a graph file: as its end says, and as it was found. */
export interface FileSums {
  readonly said: HistorySums;
  readonly found: HistorySums;
}

/** Reads a graph file with history to its end. @throws what the reading throws */
export async function sumsInFile(parts: AsyncIterable<HistoryPart | HistoryEnd>): Promise<FileSums> {
  let said: HistorySums = {};
  const found = await sumsOf(
    beforeEnd(parts, end => {
      said = end.sums;
    }),
  );
  return { said, found };
}

/**
 * What there is of each sort in a graph file.
 * @throws INPUT_INVALID if that is not what its end says, and what the reading throws
 */
export async function sumsOfFile(parts: AsyncIterable<HistoryPart | HistoryEnd>, file: string): Promise<HistorySums> {
  const { said, found } = await sumsInFile(parts);
  for (const sort of differingSorts(said, found)) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `${file}, lines of ${sort}: expected ${said[sort] ?? 'none'}, as its end says, came ${found[sort] ?? 'none'}`,
      { place: { file } },
    );
  }
  return found;
}

/** The history that a graph file carries, without the end that only files have. */
export async function* beforeEnd(
  parts: AsyncIterable<HistoryPart | HistoryEnd>,
  atEnd: (end: HistoryEnd) => void = () => undefined,
): AsyncGenerator<HistoryPart> {
  for await (const part of parts) {
    if (part.part === 'end') atEnd(part);
    else yield part;
  }
}
