import { tidy } from '../marcxml/text.ts';
import type { TableMapping, Value } from './table-mapping.ts';
import type { TableRow } from './table-row.ts';
import type { Got } from './value.ts';

/** What `each` stands for: a text, or an element of a list of JSON by its path. */
export type Each = { readonly piece: Piece } | { readonly path: string };

/** A text, and the words in the source that it was made from. */
export interface Piece {
  readonly text: string;
  readonly source: string;
}

/** A row as values see it: its cells, the values that the mapping names, and what `each` stands for. */
export interface RowScope {
  readonly row: TableRow;
  readonly values: Readonly<Record<string, Value>>;
  /** Values by name that were made of the row before. */
  readonly made: Map<string, Got>;
  readonly each?: Each;
}

export function rowScope(row: TableRow, { values = {} }: TableMapping): RowScope {
  return { row, values, made: new Map() };
}

/** The cell that a name means, under the name it has in the row; undefined if it has no value. */
export function cellOf(
  { row, each }: RowScope,
  name: string,
): { readonly column: string; readonly text: string } | undefined {
  const column = each !== undefined && 'path' in each ? pathOf(name, each.path) : name;
  const cell = row.cells.get(column);
  return cell === undefined ? undefined : { column, text: tidy(cell) };
}

/** How many elements a list of JSON has under this name; undefined if it is none. */
export function listLength(scope: RowScope, name: string): number | undefined {
  return scope.row.lists.get(name);
}

function pathOf(name: string, path: string): string {
  if (name === 'each') return path;
  return name.startsWith('each.') ? `${path}${name.slice('each'.length)}` : name;
}
