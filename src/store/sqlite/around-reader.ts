import { isRecordKind } from '../../domain/model/kinds.ts';
import { linkKinds } from '../../domain/model/links.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { Prepared } from './prepared.ts';
import type { ReadRow } from './row-codec.ts';
import { linksIn, type RowNode, type RowReader } from './row-reader.ts';
import { kindNames } from './schema-text.ts';
import { inGroupSql, linkedSql, now } from './statements.ts';

export interface AroundCall {
  /** Codes of the links of each round. */
  readonly rounds: readonly (readonly number[])[];
  /** Most rows that a round after the first looks around. */
  readonly most: number;
}

/** Reads what holds rows, and what stands around them round by round. */
export class AroundReader {
  readonly #prepared: Prepared;
  readonly #rows: RowReader;

  constructor(prepared: Prepared, rows: RowReader) {
    this.#prepared = prepared;
    this.#rows = rows;
  }

  /** For each id the rows that hold it in one of the links, each once, by id. */
  linked(ids: readonly string[], codes: readonly number[], asOf: number): ReadRow[][] {
    const found = ids.map(() => new Map<number, RowNode>());
    if (codes.length === 0) return found.map(() => []);
    const canBeHeld = kindsHeld(codes);
    const targets = JSON.stringify(
      this.#rows.nodes(ids).map(node => (node !== undefined && canBeHeld.has(node.kind) ? node.key : null)),
    );
    const links = this.#prepared.all<[number, number, string, number]>(linkedSql(codes), targets, asOf, asOf);
    for (const [at, key, id, kind] of links) found[at]!.set(key, { key, id, kind });
    const rows = this.#rows.rows(new Map(found.flatMap(nodes => [...nodes])).values(), asOf);
    return found.map(nodes => [...nodes.keys()].flatMap(key => (rows.has(key) ? [rows.get(key)!] : [])).sort(byId));
  }

  /** For each group of alternatives the claims that stand in it now, by id. */
  inGroups(groups: readonly string[]): ReadRow[][] {
    return groups.map(group => {
      const nodes = this.#prepared.all<[number, string, number]>(inGroupSql, group);
      const rows = this.#rows.rows(
        nodes.map(([key, id, kind]) => ({ key, id, kind })),
        now,
      );
      return [...rows.values()].sort(byId);
    });
  }

  /** Rows of ids that are there in the view, each once, by id. */
  own(ids: Iterable<string>, asOf: number): ReadRow[] {
    const nodes = this.#rows.nodes([...new Set(ids)]).filter(node => node !== undefined);
    return [...this.#rows.rows(nodes, asOf).values()].sort(byId);
  }

  /** @param own rows around which the first round looks, each once */
  rounds(own: readonly ReadRow[], { rounds, most }: AroundCall, asOf: number): ReadRow[][] {
    const found: ReadRow[][] = [];
    const there = new Set(own.map(([, id]) => id));
    let layer = own;
    for (const codes of rounds) {
      if (found.length > 0 && layer.length > most) break;
      const ids = layer.map(([, id]) => id);
      const held = this.linked(ids, codes, asOf).flat();
      const fresh = new Map(held.map(row => [row[1], row]));
      for (const id of there) fresh.delete(id);
      const names = [...held, ...layer].flatMap(linksIn).filter(id => !there.has(id) && !fresh.has(id));
      for (const row of this.own(names, asOf)) fresh.set(row[1], row);
      for (const id of fresh.keys()) there.add(id);
      const round = [...fresh.values()].sort(byId);
      found.push(round);
      layer = round;
    }
    return found;
  }
}

/** Kinds of rows that links with these codes may hold: for others the database need not look. */
function kindsHeld(codes: readonly number[]): ReadonlySet<number> {
  const to = new Set(linkKinds.flatMap(link => (codes.includes(link.code) ? link.to : [])));
  const held = kindNames.map(kind => to.has(kind) || to.has(isRecordKind(kind) ? 'any record' : 'any claim'));
  return new Set(held.flatMap((isHeld, kind) => (isHeld ? [kind] : [])));
}

function byId(a: ReadRow, b: ReadRow): number {
  return compareText(a[1], b[1]);
}
