import { linksOfKind } from '../../domain/model/links.ts';
import type { AnyRow } from '../../domain/model/row.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { Around, Surroundings, Via } from '../../store/graph-store.ts';

/** Rows that a request has been told, and by which links it has been told all that holds them. */
export class KnownRows {
  readonly #rows = new Map<string, AnyRow>();
  /** By id: the links of each round that looked around the row. */
  readonly #looked = new Map<string, ReadonlySet<string>[]>();
  /** By link and id. */
  readonly #holding = new Map<string, AnyRow[]>();

  row(id: string): AnyRow | undefined {
    return this.#rows.get(id);
  }

  /** The rows that hold an id in one of some links, by id; undefined where they are not known. */
  linked(id: string, via: readonly Via[]): readonly AnyRow[] | undefined {
    const names = via.map(nameOf);
    const isLooked = this.#looked.get(id)?.some(links => names.every(name => links.has(name))) ?? false;
    if (!isLooked) return undefined;
    const found = new Set(names.flatMap(name => this.#holding.get(`${name} ${id}`) ?? []));
    return [...found].sort((a, b) => compareText(a.id, b.id));
  }

  take(rows: readonly AnyRow[]): void {
    for (const row of rows) {
      if (this.#rows.has(row.id)) continue;
      this.#rows.set(row.id, row);
      for (const { kind, name } of linksOfKind(row.kind)) {
        const id = (row as unknown as Readonly<Record<string, string | undefined>>)[name];
        if (id !== undefined) add(this.#holding, `${nameOf({ kind, name })} ${id}`, row);
      }
    }
  }

  takeAround({ own, rounds }: Surroundings, around: Around): void {
    for (const [i, layer] of [own, ...rounds].entries()) {
      this.take(layer);
      if (i >= rounds.length) continue;
      const links = new Set(around.rounds[i]!.map(nameOf));
      for (const { id } of layer) add(this.#looked, id, links);
    }
  }
}

function nameOf({ kind, name }: Via): string {
  return `${kind}.${name}`;
}

function add<T>(lists: Map<string, T[]>, key: string, item: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [item]);
  else list.push(item);
}
