import type { Prepared } from './prepared.ts';
import { sql } from './statements.ts';

/** Ids remembered at once. */
const remembered = 50_000;

/** Keys of ids: asks the database once, and remembers the last ones. */
export class KeyCache {
  readonly #prepared: Prepared;
  readonly #statement: string;
  readonly #keys = new Map<string, number>();

  /** @param statement gives the key of an id: of all that ever were, if it is not said */
  constructor(prepared: Prepared, statement: string = sql.keyOfId) {
    this.#prepared = prepared;
    this.#statement = statement;
  }

  get(id: string): number | undefined {
    const known = this.#keys.get(id);
    if (known !== undefined) return known;
    const found = this.#prepared.first<[number]>(this.#statement, id);
    if (found !== undefined) this.set(id, found[0]);
    return found?.[0];
  }

  set(id: string, key: number): void {
    if (this.#keys.size >= remembered) this.#keys.clear();
    this.#keys.set(id, key);
  }

  delete(id: string): void {
    this.#keys.delete(id);
  }

  /** After a write that was taken back, keys given in it mean nothing. */
  clear(): void {
    this.#keys.clear();
  }
}
