import type { Prepared } from './prepared.ts';
import { sql } from './statements.ts';

/** Ids remembered at once. */
const remembered = 50_000;

/** Keys of ids: asks the database once, and remembers the last ones. */
export class KeyCache {
  readonly #prepared: Prepared;
  readonly #keys = new Map<string, number>();

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
  }

  get(id: string): number | undefined {
    const known = this.#keys.get(id);
    if (known !== undefined) return known;
    const found = this.#prepared.first<[number]>(sql.keyOfId, id);
    if (found !== undefined) this.set(id, found[0]);
    return found?.[0];
  }

  set(id: string, key: number): void {
    if (this.#keys.size >= remembered) this.#keys.clear();
    this.#keys.set(id, key);
  }

  /** After a write that was taken back, keys given in it mean nothing. */
  clear(): void {
    this.#keys.clear();
  }
}
