import type { DatabaseSync, StatementSync } from 'node:sqlite';
import { sql } from './statements.ts';

/** Ids remembered at once. */
const remembered = 50_000;

/** Keys of ids: asks the database once, and remembers the last ones. */
export class KeyCache {
  readonly #find: StatementSync;
  readonly #keys = new Map<string, number>();

  constructor(database: DatabaseSync) {
    this.#find = database.prepare(sql.keyOfId);
  }

  get(id: string): number | undefined {
    const known = this.#keys.get(id);
    if (known !== undefined) return known;
    const found = this.#find.get(id) as { key: number } | undefined;
    if (found !== undefined) this.set(id, found.key);
    return found?.key;
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
