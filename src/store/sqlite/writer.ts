import { statSync } from 'node:fs';
import type { DatabaseSync, StatementSync } from 'node:sqlite';
import { linksOfKind } from '../../domain/model/links.ts';
import { invariant } from '../../errors.ts';
import { rowFields } from '../row-fields.ts';
import { KeyCache } from './key-cache.ts';
import type { Cell, WrittenRow } from './row-codec.ts';
import { kindNames } from './schema-text.ts';
import { kindSql, sql } from './statements.ts';

/** A batch as it crosses to the writer: arrays, links as ids. */
export interface WrittenBatch {
  readonly changeSet: readonly [moment: string, who: string, why: string, batch: string | null];
  readonly put: readonly WrittenRow[];
  readonly windows: readonly (readonly [
    edition: string,
    regular: number,
    profile: string,
    dateClass: string,
    first: number | null,
    last: number | null,
  ])[];
  readonly origins: readonly (readonly [key: string, source: string, id: string, digest: string])[];
  readonly await: readonly (readonly [key: string, source: string, claim: string, role: string])[];
  readonly arrived: readonly (readonly [key: string, source: string])[];
  readonly checkpoint: readonly [intake: string, records: number, report: string] | null;
}

/** The log is put back into the file when it passes this size: readers hold it open only for moments. */
const logBytes = 32 * 1024 * 1024;

interface KindWriter {
  readonly insert: StatementSync;
  readonly close: StatementSync;
  readonly current: StatementSync;
  /** Links of the kind: place among the fields, and code. */
  readonly links: readonly { readonly at: number; readonly code: number }[];
}

/** The one writer: batches whole or not at all. */
export class Writer {
  readonly #database: DatabaseSync;
  readonly #file: string;
  readonly #keys: KeyCache;
  readonly #kinds: readonly KindWriter[];
  readonly #statements: Readonly<Record<keyof typeof sql, StatementSync>>;
  readonly #profiles = new Map<string, number>();
  #lastKey: number;

  constructor(database: DatabaseSync, file: string) {
    this.#database = database;
    this.#file = file;
    registerGoOn(database);
    this.#keys = new KeyCache(database);
    this.#statements = prepareAll(database);
    this.#kinds = kindNames.map(kind => {
      const texts = kindSql(kind);
      const fields = rowFields(kind).map(({ name }) => name);
      return {
        insert: database.prepare(texts.insert),
        close: database.prepare(texts.close),
        current: database.prepare(texts.current),
        links: linksOfKind(kind).map(({ name, code }) => ({ at: fields.indexOf(name), code })),
      };
    });
    this.#lastKey = this.#readLastKey();
  }

  /** Number of the change set written, or of the last one where nothing was put. */
  write(batch: WrittenBatch): number {
    this.#database.exec('BEGIN IMMEDIATE');
    try {
      // Another process may have written since.
      this.#lastKey = this.#readLastKey();
      const number = batch.put.length === 0 ? this.#lastChangeSet() : this.#put(batch);
      this.#writeRest(batch);
      this.#database.exec('COMMIT');
      this.#truncateLog();
      return number;
    } catch (error) {
      this.#keys.clear();
      this.#profiles.clear();
      if (this.#database.isTransaction) this.#database.exec('ROLLBACK');
      throw error;
    }
  }

  #put({ changeSet, put }: WrittenBatch): number {
    const number = Number(this.#statements.insertChangeSet.run(...changeSet).lastInsertRowid);
    const fresh = put.map(row => this.#nodeFor(row));
    put.forEach((row, i) => {
      if (!fresh[i]!) this.#closeVersion(row, number);
      this.#insertVersion(row, number);
    });
    return number;
  }

  /** Makes the node of a new row, so that rows of the batch can name each other in any order; false if it was there. */
  #nodeFor([kind, id, isNew, sort, tokens]: WrittenRow): boolean {
    const known = isNew ? undefined : this.#keys.get(id);
    if (known !== undefined) {
      if (sort !== null) {
        this.#statements.updateSort.run(sort, known, sort);
        this.#statements.deleteWords.run(known);
        this.#statements.insertWords.run(known, tokens);
      }
      return false;
    }
    const key = ++this.#lastKey;
    this.#statements.insertNode.run(key, id, kind, sort);
    this.#keys.set(id, key);
    if (sort !== null) this.#statements.insertWords.run(key, tokens);
    return true;
  }

  #closeVersion([kind, id]: WrittenRow, number: number): void {
    const { current, close, links } = this.#kinds[kind]!;
    const key = this.#key(id);
    const before = current.get(key);
    invariant(before !== undefined, `${id} has a version that is valid now`);
    const values = Object.values(before) as Cell[];
    close.run(number, key);
    for (const { at, code } of links) {
      const target = values[at + 1]!;
      if (target !== null) this.#statements.closeLink.run(number, target, code, key);
    }
  }

  #insertVersion([kind, id, , , , ...cells]: WrittenRow, number: number): void {
    const { insert, links } = this.#kinds[kind]!;
    const key = this.#key(id);
    for (const { at, code } of links) {
      const target = cells[at];
      if (target === null || target === undefined) continue;
      const targetKey = this.#key(target as string);
      cells[at] = targetKey;
      this.#statements.insertLink.run(targetKey, code, key, number);
    }
    insert.run(key, number, ...cells);
  }

  #writeRest({ windows, origins, await: awaited, arrived, checkpoint }: WrittenBatch): void {
    for (const [edition, regular, profile, dateClass, first, last] of windows) {
      this.#statements.putWindow.run(this.#key(edition), regular, this.#profile(profile), dateClass, first, last);
    }
    for (const [key, source, id, digest] of origins) this.#statements.putOrigin.run(key, source, this.#key(id), digest);
    for (const [key, source] of arrived) this.#statements.deleteAwaited.run(key, source);
    for (const link of awaited) this.#statements.insertAwaited.run(...link);
    if (checkpoint !== null) this.#statements.putCheckpoint.run(...checkpoint);
  }

  #key(id: string): number {
    const key = this.#keys.get(id);
    invariant(key !== undefined, `${id}, which is named by a row, is there`);
    return key;
  }

  #profile(name: string): number {
    const known =
      this.#profiles.get(name) ?? (this.#statements.profileOfName.get(name)?.['number'] as number | undefined);
    const number = known ?? Number(this.#statements.insertProfile.run(name).lastInsertRowid);
    this.#profiles.set(name, number);
    return number;
  }

  #readLastKey(): number {
    return Number(this.#statements.lastKey.get()!['key']);
  }

  #lastChangeSet(): number {
    return Number(this.#statements.lastChangeSet.get()!['number']);
  }

  #truncateLog(): void {
    const log = statSync(`${this.#file}-wal`, { throwIfNoEntry: false });
    if (log !== undefined && log.size > logBytes) this.#database.exec('PRAGMA wal_checkpoint(TRUNCATE)');
  }
}

/** The writer's statements that name it never run long; readers replace this. */
export function registerGoOn(database: DatabaseSync, goOn: () => boolean = () => true): void {
  database.function('go_on', { deterministic: false }, () => (goOn() ? 1 : 0));
}

export function prepareAll(database: DatabaseSync): Readonly<Record<keyof typeof sql, StatementSync>> {
  return Object.fromEntries(Object.entries(sql).map(([name, text]) => [name, database.prepare(text)])) as Record<
    keyof typeof sql,
    StatementSync
  >;
}
