import type { Prepared } from './prepared.ts';
import type { Cell, ReadRow } from './row-codec.ts';
import { kindNames } from './schema-text.ts';
import { kindSql, sql } from './statements.ts';

/** A record or claim that is there, by which its rows can be read. */
export interface RowNode {
  readonly key: number;
  readonly id: string;
  /** Place in the list of kinds. */
  readonly kind: number;
}

/** Reads rows many at a time: one statement for each kind among them. */
export class RowReader {
  readonly #prepared: Prepared;

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
  }

  /** In the order of the ids; undefined for what is not there. */
  nodes(ids: readonly string[]): readonly (RowNode | undefined)[] {
    const found: (RowNode | undefined)[] = ids.map(() => undefined);
    if (ids.length === 0) return found;
    const rows = this.#prepared.all<[at: number, key: number, kind: number]>(sql.nodesOfIds, JSON.stringify(ids));
    for (const [at, key, kind] of rows) found[at] = { key, id: ids[at]!, kind };
    return found;
  }

  /** Versions valid in a view by key, for those that have one. */
  rows(nodes: Iterable<RowNode>, asOf: number): ReadonlyMap<number, ReadRow> {
    const rows = new Map<number, ReadRow>();
    for (const [kind, of] of Map.groupBy(nodes, node => node.kind)) {
      const ids = new Map(of.map(({ key, id }) => [key, id]));
      const keys = JSON.stringify([...ids.keys()]);
      const found = this.#prepared.all<[key: number, ...cells: Cell[]]>(kindSql(kindNames[kind]!).at, keys, asOf, asOf);
      for (const row of found) rows.set(row[0], readRow(kind, ids.get(row[0])!, row));
    }
    return rows;
  }
}

/** Makes a row as it was read one to answer, in its place: kind and id go where the key was. */
function readRow(kind: number, id: string, row: Cell[]): ReadRow {
  // Most rows end in many cells without a value, which need not cross to the other thread.
  while (row.at(-1) === null) row.pop();
  row[0] = id;
  row.unshift(kind);
  return row as unknown as ReadRow;
}
