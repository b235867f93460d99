import type { KindName } from '../../domain/model/kinds.ts';
import type { AnyRow, Stamped } from '../../domain/model/row.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { Via } from '../../store/graph-store.ts';

/** Rows that a question takes to be there beside those of the store. */
export class SupposedRows {
  /** By id. */
  readonly all: readonly Stamped<AnyRow>[];
  readonly #byId: ReadonlyMap<string, Stamped<AnyRow>>;

  constructor(rows: readonly AnyRow[]) {
    // They are there in whatever view the question has.
    this.all = rows.map(row => ({ ...row, since: 0 })).sort((a, b) => compareText(a.id, b.id));
    this.#byId = new Map(this.all.map(row => [row.id, row]));
  }

  get(id: string): Stamped<AnyRow> | undefined {
    return this.#byId.get(id);
  }

  /** Those that hold an id in one of some links; by id. */
  linked(id: string, via: readonly Via[]): readonly Stamped<AnyRow>[] {
    return this.all.filter(row => via.some(({ kind, name }) => kind === row.kind && held(row, name) === id));
  }

  /** Claims that name a group of alternatives; by id. */
  inGroup(group: string): readonly Stamped<AnyRow>[] {
    return this.all.filter(row => 'alternativeTo' in row && row.alternativeTo === group);
  }

  ofKinds(kinds: readonly KindName[]): readonly Stamped<AnyRow>[] {
    return this.all.filter(({ kind }) => kinds.includes(kind));
  }
}

/** What a row holds under the name of a link. */
export function held(row: AnyRow, name: string): string | undefined {
  return (row as unknown as Readonly<Record<string, string | undefined>>)[name];
}
