import { statSync } from 'node:fs';
import type { DatabaseSync } from 'node:sqlite';
import type { Origin } from '../../domain/model/row.ts';
import type { EditionFilter } from '../graph-store.ts';
import type { GroupsFound, KnownGroups } from '../groups-known.ts';
import type { NamedWindow, NamedWindowRow } from '../window-codec.ts';
import { type AroundCall, AroundReader } from './around-reader.ts';
import type { ReadDays } from './dated-codec.ts';
import type { Deadline } from './deadline.ts';
import { HistoryReader, type WrittenChangeRow } from './history-reader.ts';
import { KeyCache } from './key-cache.ts';
import { Prepared } from './prepared.ts';
import { ReachReader } from './reach-reader.ts';
import type { ReadRow } from './row-codec.ts';
import { RowReader } from './row-reader.ts';
import { kindNames } from './schema-text.ts';
import { type SearchAnswer, type SearchCall, SearchReader } from './search-reader.ts';
import { kindSql, now, sql } from './statements.ts';
import { type WalkCall, type WalkFound, WalkReader } from './walk-reader.ts';

export type OriginPair = readonly [key: string, source: string];

/** What was found for each of some origins and keys. */
export type OriginsFound = ([id: string, digest: string] | null)[];
export type KeysFound = [source: string, key: string, id: string, digest: string][][];
export type AwaitedFound = [claim: string, role: string][][];
export type ArrivalsFound = readonly [alike: KeysFound, waiting: AwaitedFound, named: OriginsFound];
export type ChangeSetRow = readonly [number: number, moment: string, who: string, why: string, batch: string | null];
export interface FactNumbers {
  readonly foldVersion: number;
  readonly rowsOfKind: readonly (readonly [kind: number, rows: number])[];
  readonly bytes: number;
  readonly logBytes: number;
}

/** Rows that are looked through at once for those that were there. */
const leastStretch = 1000;

interface Stretch {
  readonly found: ReadRow[];
  /** Id of the last row looked at; undefined if there is none after it. */
  readonly last: string | undefined;
}

/** What a reader thread answers: a method a call. Each call sees one state of the store; arrays cross between threads cheaply. */
export class Reader {
  readonly prepared: Prepared;
  readonly #database: DatabaseSync;
  readonly #file: string;
  readonly #deadline: Deadline;
  readonly #keys: KeyCache;
  readonly #reach: ReachReader;
  readonly #search: SearchReader;
  readonly #rows: RowReader;
  readonly #around: AroundReader;
  readonly #walk: WalkReader;
  readonly #history: HistoryReader;

  /** @param gathered see SearchReader */
  constructor(database: DatabaseSync, file: string, deadline: Deadline, gathered?: number) {
    this.#database = database;
    this.#file = file;
    this.#deadline = deadline;
    deadline.register(database);
    this.prepared = new Prepared(database);
    this.#keys = new KeyCache(this.prepared);
    this.#reach = new ReachReader(this.prepared, this.#keys);
    this.#search = new SearchReader(this.prepared, this.#keys, gathered);
    this.#rows = new RowReader(this.prepared);
    this.#around = new AroundReader(this.prepared, this.#rows);
    this.#walk = new WalkReader(this.prepared, this.#rows, deadline);
    this.#history = new HistoryReader(this.prepared, this.#rows, deadline);
  }

  /** From now on every call sees the store as it is now. */
  hold(): void {
    this.#database.exec('BEGIN');
    // SQLite takes its view with the first read: https://www.sqlite.org/lang_transaction.html
    this.lastChangeSet();
  }

  /** Runs a call in one snapshot, ended at the limit (milliseconds from now), or by its number. */
  within<T>(limit: number | undefined, call: () => T, number?: number): T {
    this.#deadline.begin(limit, number);
    this.#deadline.check();
    if (this.#database.isTransaction) return call();
    this.#database.exec('BEGIN');
    try {
      return call();
    } finally {
      this.#database.exec('COMMIT');
    }
  }

  rows(ids: readonly string[], asOf = now): (ReadRow | null)[] {
    const nodes = this.#rows.nodes(ids);
    const rows = this.#rows.rows(
      nodes.filter(node => node !== undefined),
      asOf,
    );
    return nodes.map(node => (node === undefined ? null : (rows.get(node.key) ?? null)));
  }

  linked(ids: readonly string[], codes: readonly number[], asOf = now): ReadRow[][] {
    return this.#around.linked(ids, codes, asOf);
  }

  inGroups(groups: readonly string[]): ReadRow[][] {
    return this.#around.inGroups(groups);
  }

  surroundings(ids: readonly string[], around: AroundCall, asOf = now): [own: ReadRow[], rounds: ReadRow[][]] {
    const own = this.#around.own(ids, asOf);
    return [own, this.#around.rounds(own, around, asOf)];
  }

  walk(call: WalkCall): WalkFound {
    const found = this.#walk.walk(call);
    if (call.around === undefined) return found;
    return { ...found, around: this.#around.rounds([...found.records, ...found.claims], call.around, call.asOf) };
  }

  list(kind: number, sort: string, id: string, limit: number): [sort: string, id: string][] {
    return this.prepared.all(sql.listKind, kind, sort, id, limit);
  }

  count(kind: number): number {
    return this.prepared.first<[number]>(sql.rowsOfKind, kind)?.[0] ?? 0;
  }

  search(call: SearchCall): SearchAnswer {
    return this.#search.search(call);
  }

  byOrigin(origins: readonly OriginPair[]): OriginsFound {
    return origins.map(([key, source]) => {
      this.#deadline.check();
      return this.prepared.first<[string, string]>(sql.originOf, key, source) ?? null;
    });
  }

  byOriginKey(keys: readonly string[]): KeysFound {
    return keys.map(key => {
      this.#deadline.check();
      return this.prepared.all(sql.originsOfKey, key);
    });
  }

  arrivals(own: readonly OriginPair[], named: readonly OriginPair[]): ArrivalsFound {
    return [this.byOriginKey(own.map(([key]) => key)), this.awaited(own), this.byOrigin(named)];
  }

  originsOf(ids: readonly string[]): [source: string, key: string][][] {
    return ids.map(id => {
      const key = this.#keys.get(id);
      return key === undefined ? [] : this.prepared.all(sql.originsOfNode, key);
    });
  }

  windowGroups(filter: EditionFilter, known: KnownGroups): GroupsFound {
    return this.#reach.groups(filter, known);
  }

  editionsInWindows(
    buckets: readonly (readonly NamedWindow[])[],
    filter: EditionFilter,
    after: string,
    limit: number,
  ): string[][] {
    return this.#reach.inWindows(buckets, filter, after, limit);
  }

  editionsByTitle(filter: EditionFilter, sort: string, id: string, limit: number): ReturnType<ReachReader['byTitle']> {
    return this.#reach.byTitle(filter, sort, id, limit);
  }

  versions(id: string): ReadRow[] {
    const [node] = this.#rows.nodes([id]);
    if (node === undefined) return [];
    const { key, kind } = node;
    return this.prepared
      .all(kindSql(kindNames[kind]!).versions, key)
      .map(row => [kind, id, ...row] as unknown as ReadRow);
  }

  changeSets(numbers: readonly number[]): (ChangeSetRow | null)[] {
    return numbers.map(number => this.prepared.first<ChangeSetRow>(sql.changeSet, number) ?? null);
  }

  lastChangeSet(): number {
    return this.prepared.first<[number]>(sql.lastChangeSet)![0];
  }

  changesAfter(number: number, limit: number): WrittenChangeRow[] {
    return this.#history.changesAfter(number, limit);
  }

  scan(after: string, limit: number, asOf?: number): ReadRow[] {
    if (asOf === undefined) return this.#rowsOf(sql.nodesAfter, after, limit, now).found;
    // What came later has no version then, and gives room for more.
    const all: ReadRow[] = [];
    for (let from: string | undefined = after; from !== undefined && all.length < limit; ) {
      const { found, last }: Stretch = this.#rowsOf(sql.nodesEverAfter, from, Math.max(limit, leastStretch), asOf);
      all.push(...found);
      from = last;
    }
    return all.slice(0, limit);
  }

  #rowsOf(text: string, after: string, limit: number, asOf: number): Stretch {
    const nodes = this.prepared
      .all<[number, string, number]>(text, after, limit)
      .map(([key, id, kind]) => ({ key, id, kind }));
    const rows = this.#rows.rows(nodes, asOf);
    return {
      found: nodes.map(({ key }) => rows.get(key)).filter(row => row !== undefined),
      last: nodes.length < limit ? undefined : nodes.at(-1)?.id,
    };
  }

  windowsOf(ids: readonly string[]): (NamedWindowRow | null)[] {
    return ids.map(id => {
      const key = this.#keys.get(id);
      return key === undefined ? null : (this.prepared.first<NamedWindowRow>(sql.windowOf, key) ?? null);
    });
  }

  sortKeysOf(ids: readonly string[]): (string | null)[] {
    return ids.map(id => this.prepared.first<[string | null]>(sql.sortOfId, id)?.[0] ?? null);
  }

  datedDaysOf(ids: readonly string[]): (ReadDays | null)[] {
    return ids.map(id => {
      const key = this.#keys.get(id);
      return key === undefined ? null : (this.prepared.first<ReadDays>(sql.daysOfDating, key) ?? null);
    });
  }

  awaited(origins: readonly OriginPair[]): AwaitedFound {
    return origins.map(([key, source]) => this.prepared.all(sql.awaited, key, source));
  }

  checkpoint(intake: string): [records: number, report: string] | null {
    return this.prepared.first(sql.checkpoint, intake) ?? null;
  }

  originsAfter(after: Origin | undefined, limit: number): ReturnType<HistoryReader['originsAfter']> {
    return this.#history.originsAfter(after, limit);
  }

  awaitedAfter(after: Origin | undefined, limit: number): ReturnType<HistoryReader['awaitedAfter']> {
    return this.#history.awaitedAfter(after, limit);
  }

  checkpointsAfter(after: string | undefined, limit: number): ReturnType<HistoryReader['checkpointsAfter']> {
    return this.#history.checkpointsAfter(after, limit);
  }

  facts(): FactNumbers {
    return {
      foldVersion: this.prepared.first<[number]>(sql.foldVersion)?.[0] ?? 0,
      rowsOfKind: this.prepared.all(sql.tallies),
      bytes: this.prepared.first<[number]>(sql.bytes)![0],
      logBytes: statSync(`${this.#file}-wal`, { throwIfNoEntry: false })?.size ?? 0,
    };
  }
}
