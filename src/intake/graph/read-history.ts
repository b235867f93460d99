import { type HistoryEnd, type HistoryPart, historyFormat, historyVersion } from '../../domain/model/history.ts';
import type { AnyRow, Stamped } from '../../domain/model/row.ts';
import { parseJson } from '../../domain/text/parse-json.ts';
import { PlatestemmaError } from '../../errors.ts';
import { type HistoryLine, historyLine } from './history-line.ts';
import { type Line, lines } from './lines.ts';

/** Longest line of a history, in bytes: reports of intakes name thousands of problems. */
const longestLine = 64 * 1024 * 1024;

/** Most characters of the versions of one change set, which are held at once: that of an intake has about a million. */
const largestChange = 64 * 1024 * 1024;

/**
 * Reads a graph file with history: JSON Lines in UTF-8. A change set is held until its last version has come; nothing else
 * is. The last part is the end. What names exist, and whether the sums of the end are right, is not looked at.
 * @param file named where a line is refused
 * @throws INPUT_INVALID, ID_MISTYPED, KIND_MISMATCH, DATE_UNREADABLE at the first line that is not as it must be, with the
 *   number of the line; INPUT_INVALID for a file that is cut off, and for a change set that is too large to be held
 */
export async function* readHistory(
  input: AsyncIterable<Uint8Array>,
  file: string,
): AsyncGenerator<HistoryPart | HistoryEnd> {
  const reading = new HistoryReading();
  let last = 0;
  for await (const line of lines(input, longestLine)) {
    last = line.number;
    const part = atLine(file, line.number, () => reading.take(parsed(line, file), line.text.length));
    if (part !== undefined) yield part;
  }
  atLine(file, last + 1, () => reading.close());
}

/** Whether a first line says that a graph file has a history. */
export function saysHistory(text: string): boolean {
  return /^\{\s*"graphFile"/.test(text);
}

function parsed({ text, fault, number }: Line, file: string): HistoryLine {
  const place = { file, record: number };
  if (fault !== undefined) throw invalid(fault);
  if (number === 1 && !saysHistory(text))
    throw invalid(
      `expected a first line with "graphFile": "${historyFormat}", came "${text.slice(0, 60)}" (a graph file without history is taken by platestemma intake graph)`,
    );
  let value: unknown;
  try {
    value = parseJson(text);
  } catch (cause) {
    throw invalid(`expected one JSON object, came "${text.slice(0, 60)}": ${(cause as Error).message}`);
  }
  return historyLine(value, place);
}

/** Puts the file and the line before the message of what is refused. */
function atLine<T>(file: string, record: number, act: () => T): T {
  try {
    return act();
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    throw new PlatestemmaError(error.code, `${file}, line ${record}: ${error.message}`, {
      place: { ...error.place, file, record },
    });
  }
}

/** A change set whose rows are coming. */
interface Coming {
  readonly part: HistoryPart & { readonly part: 'changeSet' };
  readonly put: Stamped<AnyRow>[];
  readonly removed: string[];
  readonly ids: Set<string>;
  readonly rows: number;
  /** Characters of the lines that have come. */
  characters: number;
}

/** What may come next, and what has come of the change set that is open. */
class HistoryReading {
  #stage: 'nothing' | 'changes' | 'rest' | 'end' = 'nothing';
  #changeSet = 0;
  #coming: Coming | undefined;

  /** @returns the part that is whole with this line */
  take(line: HistoryLine, characters: number): HistoryPart | HistoryEnd | undefined {
    if (this.#stage === 'nothing') return this.#begin(line);
    if (this.#stage === 'end') throw expected('no line after the end', line);
    if (this.#coming !== undefined) return this.#takeRow(this.#coming, line, characters);
    switch (line.sort) {
      case 'changeSet':
        return this.#open(line);
      case 'origin':
        this.#stage = 'rest';
        return { part: 'origin', origin: line.origin };
      case 'awaited':
        this.#stage = 'rest';
        return { part: 'awaited', link: line.link };
      case 'checkpoint':
        this.#stage = 'rest';
        return { part: 'checkpoint', checkpoint: line.checkpoint };
      case 'end':
        this.#stage = 'end';
        return { part: 'end', sums: line.sums };
      default:
        throw expected('a change set, an origin, a link that waits, a checkpoint or the end', line);
    }
  }

  /** @throws INPUT_INVALID if the end has not come */
  close(): void {
    if (this.#stage !== 'end') throw invalid('expected a line with the end, came the end of the file: it is cut off');
  }

  #begin(line: HistoryLine): undefined {
    if (line.sort !== 'graphFile') throw expected(`a first line with "graphFile": "${historyFormat}"`, line);
    if (line.version !== historyVersion)
      throw invalid(
        `expected version ${historyVersion} of graph files with history, came ${line.version}: use the program that wrote it`,
      );
    this.#stage = 'changes';
  }

  #open(line: HistoryLine & { readonly sort: 'changeSet' }): undefined {
    if (this.#stage === 'rest') throw expected('no change set after what has no history', line);
    const { changeSet, rows } = line;
    if (changeSet.number !== this.#changeSet + 1)
      throw invalid(`expected change set ${this.#changeSet + 1}, came ${changeSet.number}`);
    this.#changeSet = changeSet.number;
    const [put, removed]: [Stamped<AnyRow>[], string[]] = [[], []];
    const part = { part: 'changeSet' as const, changeSet, put, removed };
    this.#coming = { part, put, removed, ids: new Set(), rows, characters: 0 };
  }

  #takeRow(coming: Coming, line: HistoryLine, characters: number): HistoryPart | undefined {
    const { part, put, removed, ids, rows } = coming;
    const { number } = part.changeSet;
    if (line.sort !== 'version' && line.sort !== 'removed')
      throw expected(`${rows - ids.size} more of the ${rows} rows that change set ${number} put or removed`, line);
    const id = line.sort === 'removed' ? line.id : line.row.id;
    if (ids.has(id)) throw invalid(`expected each row once in a change set, came "${id}" twice`);
    coming.characters += characters;
    if (coming.characters > largestChange)
      throw invalid(`expected a change set of at most ${largestChange} characters, came more`);
    ids.add(id);
    if (line.sort === 'removed') removed.push(id);
    else put.push(inChange(line.row, number));
    if (ids.size < rows) return undefined;
    this.#coming = undefined;
    return part;
  }
}

function inChange(row: Stamped<AnyRow>, number: number): Stamped<AnyRow> {
  if (row.since !== number) throw invalid(`${row.id}, field since: expected ${number}, came ${row.since}`);
  if (row.until !== undefined && row.until <= number)
    throw invalid(`${row.id}, field until: expected more than ${number}, came ${row.until}`);
  return row;
}

const names: Readonly<Record<HistoryLine['sort'], string>> = {
  graphFile: 'a first line',
  changeSet: 'a change set',
  version: 'a version of a record or claim',
  removed: 'a row that was taken out',
  origin: 'an origin',
  awaited: 'a link that waits',
  checkpoint: 'a checkpoint',
  end: 'the end',
};

function expected(what: string, line: HistoryLine): PlatestemmaError {
  return invalid(`expected ${what}, came ${names[line.sort]}`);
}

function invalid(message: string): PlatestemmaError {
  return new PlatestemmaError('INPUT_INVALID', message);
}
