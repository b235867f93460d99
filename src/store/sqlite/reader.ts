import { statSync } from 'node:fs';
import type { DatabaseSync } from 'node:sqlite';
import { compareText } from '../../domain/text/compare.ts';
import type { EditionFilter } from '../graph-store.ts';
import type { Deadline } from './deadline.ts';
import { KeyCache } from './key-cache.ts';
import { Prepared } from './prepared.ts';
import { type GroupsFound, type KnownGroups, ReachReader } from './reach-reader.ts';
import type { ReadRow } from './row-codec.ts';
import { kindNames } from './schema-text.ts';
import { type FoundWords, SearchReader, type SearchTexts } from './search-reader.ts';
import { kindSql, now, sql } from './statements.ts';
import { type WalkCall, type WalkFound, WalkReader } from './walk-reader.ts';
import type { WrittenWindow } from './window-writer.ts';

export type OriginPair = readonly [key: string, source: string];
export type NamedWindowRow = readonly [
  profile: string,
  dateClass: number,
  detail: string | null,
  first: number,
  last: number,
];
export type ChangeSetRow = readonly [number: number, moment: string, who: string, why: string, batch: string | null];
export interface FactNumbers {
  readonly foldVersion: number;
  readonly rowsOfKind: readonly (readonly [kind: number, rows: number])[];
  readonly bytes: number;
  readonly logBytes: number;
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
  readonly #walk: WalkReader;

  constructor(database: DatabaseSync, file: string, deadline: Deadline) {
    this.#database = database;
    this.#file = file;
    this.#deadline = deadline;
    deadline.register(database);
    this.prepared = new Prepared(database);
    this.#keys = new KeyCache(this.prepared);
    this.#reach = new ReachReader(this.prepared, this.#keys);
    this.#search = new SearchReader(this.prepared);
    this.#walk = new WalkReader(this.prepared, this.#keys, deadline, (key, asOf) => this.#rowOfKey(key, asOf));
  }

  /** Runs a call in one snapshot, ended at the limit (milliseconds from now), or by its number. */
  within<T>(limit: number | undefined, call: () => T, number?: number): T {
    this.#deadline.begin(limit, number);
    this.#deadline.check();
    this.#database.exec('BEGIN');
    try {
      return call();
    } finally {
      this.#database.exec('COMMIT');
    }
  }

  rows(ids: readonly string[], asOf = now): (ReadRow | null)[] {
    return ids.map(id => {
      this.#deadline.check();
      const node = this.#nodeOf(id);
      return node === undefined ? null : this.#row(node, id, asOf);
    });
  }

  linked(ids: readonly string[], codes: readonly number[], asOf = now): ReadRow[][] {
    return ids.map(id => {
      const target = this.#keys.get(id);
      if (target === undefined) return [];
      const nodes = new Set<number>();
      for (const code of codes) {
        this.#deadline.check();
        for (const [node] of this.prepared.all<[number]>(sql.linkedNodes, target, code, asOf, asOf)) nodes.add(node);
      }
      const rows: ReadRow[] = [];
      for (const key of nodes) {
        this.#deadline.check();
        const row = this.#rowOfKey(key, asOf);
        if (row !== null) rows.push(row);
      }
      return rows.sort((a, b) => compareText(a[1], b[1]));
    });
  }

  walk(call: WalkCall): WalkFound {
    return this.#walk.walk(call);
  }

  list(kind: number, sort: string, id: string, limit: number): [sort: string, id: string][] {
    return this.prepared.all(sql.listKind, kind, sort, id, limit);
  }

  count(kind: number): number {
    return this.prepared.first<[number]>(sql.rowsOfKind, kind)?.[0] ?? 0;
  }

  search(asked: SearchTexts): FoundWords {
    return this.#search.search(asked);
  }

  byOrigin(origins: readonly OriginPair[]): ([id: string, digest: string] | null)[] {
    return origins.map(([key, source]) => {
      this.#deadline.check();
      return this.prepared.first<[string, string]>(sql.originOf, key, source) ?? null;
    });
  }

  byOriginKey(keys: readonly string[]): [source: string, key: string, id: string, digest: string][][] {
    return keys.map(key => {
      this.#deadline.check();
      return this.prepared.all(sql.originsOfKey, key);
    });
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
    buckets: readonly (readonly WrittenWindow[])[],
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
    const node = this.#nodeOf(id);
    if (node === undefined) return [];
    const [key, kind] = node;
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

  scan(after: string, limit: number): ReadRow[] {
    const nodes = this.prepared.all<[number, string, number]>(sql.nodesAfter, after, limit);
    return nodes.map(([key, id, kind]) => {
      this.#deadline.check();
      return this.#row([key, kind], id, now)!;
    });
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

  awaited(origins: readonly OriginPair[]): [claim: string, role: string][][] {
    return origins.map(([key, source]) => this.prepared.all(sql.awaited, key, source));
  }

  checkpoint(intake: string): [records: number, report: string] | null {
    return this.prepared.first(sql.checkpoint, intake) ?? null;
  }

  facts(): FactNumbers {
    return {
      foldVersion: this.prepared.first<[number]>(sql.foldVersion)?.[0] ?? 0,
      rowsOfKind: this.prepared.all(sql.tallies),
      bytes: this.prepared.first<[number]>(sql.bytes)![0],
      logBytes: statSync(`${this.#file}-wal`, { throwIfNoEntry: false })?.size ?? 0,
    };
  }

  #nodeOf(id: string): [key: number, kind: number] | undefined {
    return this.prepared.first(sql.nodeOfId, id);
  }

  #rowOfKey(key: number, asOf: number): ReadRow | null {
    const [id, kind] = this.prepared.first<[string, number]>(sql.nodeOfKey, key)!;
    return this.#row([key, kind], id, asOf);
  }

  #row([key, kind]: readonly [key: number, kind: number], id: string, asOf: number): ReadRow | null {
    const found = this.prepared.first(kindSql(kindNames[kind]!).at, key, asOf, asOf);
    return found === undefined ? null : ([kind, id, ...found] as unknown as ReadRow);
  }
}
