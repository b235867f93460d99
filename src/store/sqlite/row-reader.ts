import { rowFields } from '../../domain/model/row-fields.ts';
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

/** Ids remembered at once. */
const remembered = 20_000;

/** Places of links in what the statement of a kind answers: after the key and the two ends of a version. */
const linkPlaces: readonly (readonly number[])[] = kindNames.map(kind =>
  rowFields(kind).flatMap(({ shape }, i) => (shape === 'link' ? [i + 3] : [])),
);

/** Reads rows many at a time: one statement for each kind among them. */
export class RowReader {
  readonly #prepared: Prepared;
  /** Of what rows link to, by key: an id once given stays. */
  readonly #ids = new Map<number, string>();

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
    const found: (readonly [node: RowNode, row: Cell[]])[] = [];
    const known = new Map<number, string>();
    for (const [kind, of] of Map.groupBy(nodes, node => node.kind)) {
      const byKey = new Map(of.map(node => [node.key, node]));
      for (const { key, id } of of) known.set(key, id);
      const keys = JSON.stringify([...byKey.keys()]);
      const rows = this.#prepared.all<[key: number, ...cells: Cell[]]>(kindSql(kindNames[kind]!).at, keys, asOf, asOf);
      for (const row of rows) found.push([byKey.get(row[0])!, row]);
    }
    this.#nameLinks(found, known);
    return new Map(found.map(([{ key, kind, id }, row]) => [key, readRow(kind, id, row)]));
  }

  /** Puts ids in the place of keys. @param known ids that are at hand */
  #nameLinks(found: readonly (readonly [RowNode, Cell[]])[], known: ReadonlyMap<number, string>): void {
    if (this.#ids.size > remembered) this.#ids.clear();
    const idOf = (key: number) => known.get(key) ?? this.#ids.get(key);
    const asked = new Set<number>();
    for (const [{ kind }, row] of found) {
      for (const at of linkPlaces[kind]!) {
        const key = row[at] as number | null;
        if (key !== null && idOf(key) === undefined) asked.add(key);
      }
    }
    if (asked.size > 0) this.#remember([...asked]);
    for (const [{ kind }, row] of found) {
      for (const at of linkPlaces[kind]!) if (row[at] !== null) row[at] = idOf(row[at] as number)!;
    }
  }

  #remember(keys: readonly number[]): void {
    for (const [key, id] of this.#prepared.all<[number, string]>(sql.idsOfKeys, JSON.stringify(keys))) {
      this.#ids.set(key, id);
    }
  }
}

/** Ids that a row names in its links. */
export function linksIn(row: ReadRow): readonly string[] {
  return linkPlaces[row[0]]!.flatMap(at => (row[at + 1] as string | null | undefined) ?? []);
}

/** Makes a row as it was read one to answer, in its place: kind and id go where the key was. */
function readRow(kind: number, id: string, row: Cell[]): ReadRow {
  // Most rows end in many cells without a value, which need not cross to the other thread.
  while (row.at(-1) === null) row.pop();
  row[0] = id;
  row.unshift(kind);
  return row as unknown as ReadRow;
}
