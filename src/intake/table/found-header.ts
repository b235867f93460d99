import { splitCells } from './split-cells.ts';
import type { TextLine } from './table-text.ts';

export interface HeaderRow {
  readonly delimiter: string;
  readonly cells: readonly string[];
}

/** Names of columns may have line ends, but no more than these. */
const mostLines = 100;

/** What separates values, by the habit of the language in which a spreadsheet runs. */
const delimiters = [',', ';', '\t'];

/** Reads the row that names columns from the beginning of a table; undefined if none of them is one that is looked for. */
export async function findHeader(
  lines: AsyncIterator<TextLine>,
  isColumn: (name: string) => boolean,
): Promise<HeaderRow | undefined> {
  const texts: string[] = [];
  while (texts.length < mostLines) {
    const { value: line } = await lines.next();
    if (line === undefined || line.fault !== undefined) return undefined;
    texts.push(line.text);
    const found = split(texts.join('\n'), isColumn);
    if (found !== 'open') return found;
  }
  return undefined;
}

function split(text: string, isColumn: (name: string) => boolean): HeaderRow | 'open' | undefined {
  const read = delimiters.map(delimiter => ({ delimiter, cells: splitCells(text, { delimiter, quote: '"' }) }));
  const found = read.find(({ cells }) => Array.isArray(cells) && cells.some(isColumn));
  if (found !== undefined) return found as HeaderRow;
  return read.some(({ cells }) => cells === 'open') ? 'open' : undefined;
}
