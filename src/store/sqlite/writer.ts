import type { DatabaseSync } from 'node:sqlite';
import { kindOfId } from '../../domain/model/id.ts';
import { isRecordKind } from '../../domain/model/kinds.ts';
import { linksOfKind } from '../../domain/model/links.ts';
import { movedOn, notThere, stillNamed } from '../../domain/model/refused-change.ts';
import { rowFields } from '../../domain/model/row-fields.ts';
import { foldVersion } from '../../domain/text/fold.ts';
import { invariant } from '../../errors.ts';
import type { WrittenDating } from './dated-codec.ts';
import { KeyCache } from './key-cache.ts';
import { NameTable } from './name-table.ts';
import { Prepared } from './prepared.ts';
import { type Cell, kindNumber, type WrittenRow } from './row-codec.ts';
import { kindNames, kindWord } from './schema-text.ts';
import { type KindSql, kindSql, sql } from './statements.ts';
import { WindowWriter } from './window-writer.ts';
import { unpackPart, type WrittenBatch, type WrittenPart } from './written-batch.ts';

/** The log is put back into the file when it passes this size. */
const logBytes = 32 * 1024 * 1024;

interface KindWriter {
  readonly texts: KindSql;
  /** Links of the kind: place among the fields, and code. */
  readonly links: readonly { readonly at: number; readonly code: number }[];
}

const kindWriters: readonly KindWriter[] = kindNames.map(kind => {
  const fields = rowFields(kind).map(({ name }) => name);
  return {
    texts: kindSql(kind),
    links: fields.flatMap((name, at) =>
      linksOfKind(kind).flatMap(link => (link.name === name ? [{ at, code: link.code }] : [])),
    ),
  };
});

/** The one writer: batches whole or not at all. */
export class Writer {
  readonly prepared: Prepared;
  readonly #database: DatabaseSync;
  readonly #pageBytes: number;
  readonly #keys: KeyCache;
  readonly #windows: WindowWriter;
  readonly #dates: NameTable;
  #lastKey = 0;
  /** Words of the batch by key. They come last: a statement that may be undone alone puts all words that came before into the file. */
  #words: (readonly [key: number, words: string])[] = [];
  /** Number of the last change set that was there after this writer wrote. */
  #written = 0;

  constructor(database: DatabaseSync) {
    this.#database = database;
    this.prepared = new Prepared(database);
    [this.#pageBytes] = this.prepared.first<[number]>(sql.pageBytes)!;
    this.#keys = new KeyCache(this.prepared, sql.keyOfIdThere);
    this.#windows = new WindowWriter(this.prepared);
    this.#dates = new NameTable(this.prepared, sql.dateOfText, sql.insertDate);
  }

  /** Number of the change set written, or of the last one where nothing was put. */
  write(batch: WrittenBatch): number {
    this.#database.exec('BEGIN IMMEDIATE');
    try {
      // Another process may have written since, and taken out what had a key.
      if (this.#lastChangeSet() !== this.#written) this.#keys.clear();
      this.#lastKey = this.prepared.first<[number]>(sql.lastKey)![0];
      for (const seen of batch.seen) this.#checkSeen(...seen);
      const isEmpty = batch.packed.length + batch.put.length + batch.remove.length === 0;
      const number = isEmpty ? this.#lastChangeSet() : this.#put(batch);
      this.#writeRest(batch);
      this.#writeWords();
      this.#database.exec('COMMIT');
      this.#written = number;
      return number;
    } catch (error) {
      this.#keys.clear();
      this.#words = [];
      this.#windows.clear();
      this.#dates.clear();
      if (this.#database.isTransaction) this.#database.exec('ROLLBACK');
      throw error;
    }
  }

  /**
   * Puts a long log back into the file, so that the next write begins it anew, for as much as readers let go of it within
   * a tenth of a second: one that reads for long holds it open, and the next write tries again.
   */
  putBackLog(): void {
    const [, pages] = this.prepared.first<[busy: number, pages: number]>(sql.lengthOfLog)!;
    if (pages * this.#pageBytes <= logBytes) return;
    this.#database.exec('PRAGMA busy_timeout = 100');
    try {
      this.#database.exec('PRAGMA wal_checkpoint(RESTART)');
    } finally {
      this.#database.exec('PRAGMA busy_timeout = 5000');
    }
  }

  #put({ changeSet: [given, ...about], keepsMoment, packed, remove, ...own }: WrittenBatch): number {
    const last = keepsMoment ? undefined : this.prepared.first<[string]>(sql.lastMoment)?.[0];
    const moment = last !== undefined && last > given ? last : given;
    const number = Number(this.prepared.of(sql.insertChangeSet).run(moment, ...about).lastInsertRowid);
    const changed = new Changed();
    for (const bytes of packed) {
      const part = unpackPart(bytes);
      this.#putRows(part, number, changed);
      this.#writeDerived(part);
    }
    this.#putRows(own, number, changed);
    for (const id of remove) {
      changed.keys.push(this.#key(id));
      changed.count(kindNumber(kindOfId(id)!), -1);
    }
    this.#remove(remove, number);
    for (const [kind, rows] of changed.rows) this.prepared.of(sql.addToTally).run(kind, rows);
    for (const [first, last] of runsOf(changed.keys)) this.prepared.of(sql.insertWritten).run(number, first, last);
    return number;
  }

  #putRows({ put }: WrittenPart, number: number, changed: Changed): void {
    const fresh = put.map(row => this.#nodeFor(row));
    put.forEach((row, i) => {
      if (fresh[i]!) changed.count(row[0], 1);
      else this.#closeVersion(row[0], row[1], number);
      changed.keys.push(this.#insertVersion(row, number));
    });
  }

  /** Makes the node of a new row, so that rows of the batch can name each other in any order; false if it was there. */
  #nodeFor([kind, id, isNew, sort, tokens]: WrittenRow): boolean {
    const known = isNew ? undefined : this.#keys.get(id);
    const gone = isNew || known !== undefined ? undefined : this.prepared.first<[number]>(sql.goneKeyOfId, id)?.[0];
    const key = known ?? gone ?? ++this.#lastKey;
    if (known === undefined) {
      if (gone === undefined) this.prepared.of(sql.insertNode).run(key, id, kind, sort);
      else this.prepared.of(sql.bringBack).run(sort, key);
      this.#keys.set(id, key);
    } else if (sort !== null) {
      this.prepared.of(sql.updateSort).run(sort, key, sort);
      this.prepared.of(sql.deleteWords).run(key);
    }
    if (sort !== null) this.#words.push([key, `${tokens ?? ''} ${kindWord(kind)}`]);
    return known === undefined;
  }

  /** Rows that name each other can go together. */
  #remove(ids: readonly string[], number: number): void {
    for (const id of ids) this.#closeVersion(kindNumber(kindOfId(id)!), id, number);
    for (const id of ids) {
      const key = this.#key(id);
      const [namedBy] = this.prepared.first<[string]>(sql.namedBy, key) ?? [];
      if (namedBy !== undefined) throw stillNamed(id, namedBy);
      this.prepared.of(sql.takeOut).run(number, key);
      const kind = kindOfId(id)!;
      if (isRecordKind(kind)) this.prepared.of(sql.deleteWords).run(key);
      if (kind === 'Dating') this.prepared.of(sql.deleteDated).run(key);
      if (kind === 'Edition') this.#windows.remove(key);
    }
    for (const id of ids) this.#keys.delete(id);
  }

  #checkSeen(id: string, seen: number): void {
    const key = this.#keys.get(id);
    const found = key === undefined ? undefined : this.prepared.first<[number]>(kindSql(kindOfId(id)!).sinceNow, key);
    const since = found?.[0];
    if (since !== seen) throw movedOn(id, seen, since);
  }

  #closeVersion(kind: number, id: string, number: number): void {
    const { texts, links } = kindWriters[kind]!;
    const key = this.#key(id);
    const held = texts.heldNow === undefined ? [] : this.prepared.first<(number | null)[]>(texts.heldNow, key);
    invariant(held !== undefined, `${id} has a version that is valid now`);
    this.prepared.of(texts.close).run(number, key);
    links.forEach(({ code }, i) => {
      const target = held[i]!;
      if (target !== null) this.prepared.of(sql.closeLink).run(number, target, code, key);
    });
  }

  /** @returns the key of the row */
  #insertVersion([kind, id, , , , ...cells]: WrittenRow, number: number): number {
    const { texts, links } = kindWriters[kind]!;
    const key = this.#key(id);
    for (const { at, code } of links) {
      const target = cells[at] as Cell;
      if (target === null) continue;
      const targetKey = this.#key(target as string);
      cells[at] = targetKey;
      this.prepared.of(sql.insertLink).run(targetKey, code, key, number);
    }
    this.prepared.of(texts.insert).run(key, number, ...cells);
    return key;
  }

  #writeDays(dated: WrittenDating): void {
    if (dated.length === 1) {
      this.prepared.of(sql.deleteDated).run(this.#key(dated[0]));
      return;
    }
    const [dating, record, kind, spread, first, last, date] = dated;
    const number = date === '' ? 0 : this.#dates.number(date);
    this.prepared.of(sql.putDated).run(this.#key(dating), this.#key(record), kind, spread, first, last, number);
  }

  #writeRest({ await: awaited, arrived, recount, checkpoint, ...own }: WrittenBatch): void {
    this.#writeDerived(own);
    this.#windows.tally();
    if (recount) {
      this.#windows.remake();
      this.prepared.of(sql.putFoldVersion).run(foldVersion);
    }
    for (const [key, source] of arrived) this.prepared.of(sql.deleteAwaited).run(key, source);
    for (const link of awaited) this.prepared.of(sql.insertAwaited).run(...link);
    if (checkpoint !== null) this.prepared.of(sql.putCheckpoint).run(...checkpoint);
  }

  #writeWords(): void {
    const insert = this.prepared.of(sql.insertWords);
    for (const words of this.#words) insert.run(...words);
    this.#words = [];
  }

  #writeDerived({ dated, windows, origins }: WrittenPart): void {
    for (const each of dated) this.#writeDays(each);
    for (const [id, ...window] of windows) this.#windows.put(this.#key(id), id, window);
    for (const [key, source, id, digest] of origins) {
      const node = this.#keys.get(id) ?? this.prepared.first<[number]>(sql.goneKeyOfId, id)?.[0];
      this.prepared.of(sql.putOrigin).run(key, source, node ?? this.#key(id), digest);
    }
  }

  #key(id: string): number {
    const key = this.#keys.get(id);
    if (key !== undefined) return key;
    throw notThere(id);
  }

  #lastChangeSet(): number {
    return this.prepared.first<[number]>(sql.lastChangeSet)![0];
  }
}

/** What a change has changed so far. */
class Changed {
  readonly keys: number[] = [];
  /** How many rows more there are, by kind. */
  readonly rows = new Map<number, number>();

  count(kind: number, rows: number): void {
    this.rows.set(kind, (this.rows.get(kind) ?? 0) + rows);
  }
}

/** The first and last of numbers that follow each other without a gap. */
function runsOf(numbers: readonly number[]): readonly (readonly [first: number, last: number])[] {
  const runs: [number, number][] = [];
  for (const number of numbers.toSorted((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run !== undefined && run[1] === number - 1) run[1] = number;
    else runs.push([number, number]);
  }
  return runs;
}
