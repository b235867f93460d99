import type { Prepared } from './prepared.ts';

/** Numbers that stand for texts, each text stored once. */
export class NameTable {
  readonly #prepared: Prepared;
  readonly #find: string;
  readonly #insert: string;
  readonly #known = new Map<string, number>();

  /** @param find the number of a text @param insert a text, for a new number */
  constructor(prepared: Prepared, find: string, insert: string) {
    this.#prepared = prepared;
    this.#find = find;
    this.#insert = insert;
  }

  /** The number of a text, which is given one if it has none. */
  number(text: string): number {
    const known = this.#known.get(text) ?? this.#prepared.first<[number]>(this.#find, text)?.[0];
    const number = known ?? Number(this.#prepared.of(this.#insert).run(text).lastInsertRowid);
    if (this.#known.size >= remembered) this.#known.clear();
    this.#known.set(text, number);
    return number;
  }

  /** After a write that was taken back, numbers given in it mean nothing. */
  clear(): void {
    this.#known.clear();
  }
}

/** Texts remembered at once. */
const remembered = 50_000;
