import { parseJson } from '../../domain/text/parse-json.ts';
import type { BrokenRow, TableRow } from './table-row.ts';
import type { TextLine } from './table-text.ts';

/** Objects within objects deeper than this are kept as JSON. */
const deepest = 20;

/**
 * Rows of JSON lines, one object a line. What stands within objects and lists becomes cells by path (`maker.name`,
 * `makers.0.name`); `null` and empty texts are no value. Empty lines are passed over.
 */
export async function* jsonRows(lines: AsyncIterable<TextLine>): AsyncGenerator<TableRow | BrokenRow> {
  let number = 0;
  for await (const line of lines) {
    if (line.fault === undefined && line.text.trim() === '') continue;
    number++;
    const read = line.fault === undefined ? parse(line.text) : { fault: line.fault };
    yield 'fault' in read ? { number, fault: `line ${line.number}: ${read.fault}` } : { number, ...flat(read.object) };
  }
}

function parse(text: string): { readonly object: object } | { readonly fault: string } {
  try {
    const value: unknown = parseJson(text);
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return { object: value };
    return { fault: `expected one JSON object, came ${shown(text)}` };
  } catch (error) {
    return { fault: `expected one JSON object, came ${shown(text)}: ${(error as Error).message}` };
  }
}

function shown(text: string): string {
  return `"${text.slice(0, 60)}${text.length > 60 ? '…' : ''}"`;
}

function flat(object: object): Pick<TableRow, 'cells' | 'lists'> {
  const cells = new Map<string, string>();
  const lists = new Map<string, number>();
  const add = (name: string, value: unknown, depth: number): void => {
    if (value === null || value === undefined) return;
    if (typeof value !== 'object' || depth > deepest) {
      const text = typeof value === 'string' ? value : JSON.stringify(value);
      if (text.trim() !== '') cells.set(name, text);
      return;
    }
    if (Array.isArray(value)) lists.set(name, value.length);
    for (const [part, inner] of Object.entries(value)) add(name === '' ? part : `${name}.${part}`, inner, depth + 1);
  };
  add('', object, 0);
  return { cells, lists };
}
