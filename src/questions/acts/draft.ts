import { isDeepStrictEqual } from 'node:util';
import type { ClaimKindName, RecordKindName } from '../../domain/model/kinds.ts';
import type { AnyRow, ClaimOf, Evidence, RecordOf } from '../../domain/model/row.ts';
import { graphLine } from '../../output/graph-file/graph-line.ts';
import type { GraphStore } from '../../store/graph-store.ts';
import { newRow } from '../add-row.ts';
import type { World } from '../ports.ts';
import { knownClaims } from './known-claims.ts';
import { refusal } from './refusal.ts';

type Common = 'id' | 'kind' | 'by' | 'on' | 'evidence';
type OrNone<T> = { readonly [N in keyof T]: T[N] | undefined };
export type RecordFields<K extends RecordKindName> = OrNone<Omit<RecordOf<K>, Common>>;
export type ClaimFields<K extends ClaimKindName> = OrNone<Omit<ClaimOf<K>, Common>>;

/** Who says what an act says, and why. */
export interface Said {
  readonly by?: string;
  readonly on?: string;
  readonly evidence?: readonly Evidence[];
}

/** What acts that are recorded together are going to write, before any of it is written. */
export class Draft {
  readonly store: GraphStore;
  readonly #world: World;
  readonly #rows = new Map<string, AnyRow>();
  /** Ids of records by what they are known by, and of claims by what they say. */
  readonly #known = new Map<string, string>();
  readonly #counts = new Map<string, number>();

  constructor(store: GraphStore, world: World) {
    this.store = store;
    this.#world = world;
  }

  /** In the order in which they were drafted. */
  rows(): readonly AnyRow[] {
    return [...this.#rows.values()];
  }

  add<K extends RecordKindName>(kind: K, fields: Partial<RecordFields<K>>): string {
    return this.#put(newRow(this.#world, { kind, fields }));
  }

  /** Whether a record is known by a name or title. */
  knows(kind: RecordKindName, name: string): boolean {
    return this.#known.has(`${kind} ${name}`);
  }

  /**
   * The record that these acts know by a name or title: made when it first comes. What a later act says of it is added to
   * it.
   * @param fieldOf by which field of the act a field of the record is given, where it has another name
   * @throws INPUT_INVALID for what was said otherwise before
   */
  known<K extends RecordKindName>(
    kind: K,
    name: string,
    fields: Partial<RecordFields<K>>,
    fieldOf: Readonly<Record<string, string>> = {},
  ): string {
    const key = `${kind} ${name}`;
    const id = this.#known.get(key);
    if (id === undefined) {
      const made = this.add(kind, fields);
      this.#known.set(key, made);
      return made;
    }
    const { kind: _kind, ...before } = this.#rows.get(id)! as AnyRow & Readonly<Record<string, unknown>>;
    const given = Object.entries(fields).filter(([, value]) => value !== undefined);
    for (const [field, value] of given) {
      const was = before[field];
      if (was === undefined || isDeepStrictEqual(was, value)) continue;
      const came = `came ${JSON.stringify(value)}`;
      throw refusal(fieldOf[field] ?? field, `expected ${JSON.stringify(was)}, as it was given before, ${came}`);
    }
    return this.#put(newRow(this.#world, { kind, id, fields: { ...before, ...Object.fromEntries(given) } }));
  }

  /** Claims: one that is said already, in the store or by these acts, is the one that says so. */
  async claims<K extends ClaimKindName>(
    kind: K,
    all: readonly Partial<ClaimFields<K>>[],
    { by, on, evidence }: Said,
  ): Promise<readonly string[]> {
    const rows = all.map(fields => newRow(this.#world, { kind, fields: { ...fields, by, on, evidence } }));
    const found = await knownClaims(this.store, rows, id => !this.#rows.has(id));
    return rows.map((row, i) => {
      const says = graphLine({ ...row, id: '' });
      const id = found[i] ?? this.#known.get(says) ?? this.#put(row);
      this.#known.set(says, id);
      return id;
    });
  }

  async claim<K extends ClaimKindName>(kind: K, fields: Partial<ClaimFields<K>>, said: Said): Promise<string> {
    const [id] = await this.claims(kind, [fields], said);
    return id!;
  }

  /** How many were counted under a name before; so many more are from now on. */
  count(name: string, more: number): number {
    const before = this.#counts.get(name) ?? 0;
    this.#counts.set(name, before + more);
    return before;
  }

  #put(row: AnyRow): string {
    this.#rows.set(row.id, row);
    return row.id;
  }
}
