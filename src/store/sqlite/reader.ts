import { statSync } from 'node:fs';
import type { DatabaseSync, StatementSync } from 'node:sqlite';
import { isRecordKind } from '../../domain/model/kinds.ts';
import { compareText } from '../../domain/text/compare.ts';
import { KeyCache } from './key-cache.ts';
import type { ReadRow } from './row-codec.ts';
import { kindNames } from './schema-text.ts';
import { timeout } from './sqlite-error.ts';
import { kindSql, now, type sql } from './statements.ts';
import { prepareAll, registerGoOn } from './writer.ts';

export type OriginPair = readonly [key: string, source: string];
export type CandidateRow = readonly [id: string, kind: number, sort: string, matchClass: number];

export interface SearchTexts {
  readonly whole: string;
  readonly tokens: readonly string[];
  /** Places in the list of kinds; empty: all records. */
  readonly kinds: readonly number[];
  readonly cap: number;
}

/** What a reader thread answers. Each call sees one state of the store; arrays cross between threads cheaply. */
export class Reader {
  readonly #database: DatabaseSync;
  readonly #file: string;
  readonly #keys: KeyCache;
  readonly #sql: Readonly<Record<keyof typeof sql, StatementSync>>;
  readonly #at: readonly StatementSync[];
  readonly #versions: readonly StatementSync[];
  #deadline = Infinity;

  constructor(database: DatabaseSync, file: string) {
    this.#database = database;
    this.#file = file;
    registerGoOn(database, () => {
      if (Date.now() > this.#deadline) throw new Error('STORE_TIMEOUT');
      return true;
    });
    this.#keys = new KeyCache(database);
    this.#sql = prepareAll(database);
    this.#at = kindNames.map(kind => database.prepare(kindSql(kind).at));
    this.#versions = kindNames.map(kind => database.prepare(kindSql(kind).versions));
  }

  /** Runs a call in one snapshot, ended at the deadline (milliseconds since 1970). */
  within<T>(deadline: number, call: () => T): T {
    if (Date.now() > deadline) throw timeout();
    this.#deadline = deadline;
    this.#database.exec('BEGIN');
    try {
      return call();
    } finally {
      this.#database.exec('COMMIT');
    }
  }

  rows(ids: readonly string[], asOf = now): (ReadRow | null)[] {
    return ids.map(id => {
      const node = this.#sql.nodeOfId.get(id) as { key: number; kind: number } | undefined;
      return node === undefined ? null : this.#row(node.key, node.kind, id, asOf);
    });
  }

  linked(ids: readonly string[], codes: readonly number[], asOf = now): ReadRow[][] {
    return ids.map(id => {
      const target = this.#keys.get(id);
      if (target === undefined) return [];
      const nodes = new Set<number>();
      for (const code of codes) {
        for (const link of this.#sql.linkedNodes.iterate(target, code, asOf, asOf)) nodes.add(link['node'] as number);
      }
      return [...nodes]
        .map(key => this.#rowOfKey(key, asOf))
        .filter(row => row !== null)
        .sort((a, b) => compareText(a[1], b[1]));
    });
  }

  list(kind: number, sort: string, id: string, limit: number): [sort: string, id: string][] {
    return this.#sql.listKind.all(kind, sort, id, limit).map(row => [row['sort'] as string, row['id'] as string]);
  }

  count(kind: number): number {
    return Number(this.#sql.countOfKind.get(kind)!['n']);
  }

  search(asked: SearchTexts): { candidates: CandidateRow[]; cut: boolean } {
    const kinds =
      asked.kinds.length > 0 ? asked.kinds : kindNames.flatMap((kind, i) => (isRecordKind(kind) ? [i] : []));
    const room = asked.cap + 1;
    const end = `${asked.whole}\u{10ffff}`;
    const found = new Map<string, CandidateRow>();
    let cut = false;
    const take = (matchClass: number, rows: readonly Record<string, unknown>[]): void => {
      const fresh = rows.filter(row => !found.has(row['id'] as string));
      if (fresh.length > asked.cap) cut = true;
      const sorted = fresh.sort(
        (a, b) =>
          compareText(a['sort'] as string, b['sort'] as string) || compareText(a['id'] as string, b['id'] as string),
      );
      for (const { id, kind, sort } of sorted.slice(0, asked.cap)) {
        found.set(id as string, [id as string, kind as number, sort as string, matchClass]);
      }
    };
    take(
      0,
      kinds.flatMap(kind => this.#sql.wholeName.all(kind, asked.whole, room)),
    );
    take(
      1,
      kinds.flatMap(kind => this.#sql.nameBeginning.all(kind, asked.whole, end, room)),
    );
    const quoted = asked.tokens.map(token => `"${token}"`);
    const words = [
      quoted.join(' AND '),
      `${quoted.join(' AND ')}*`,
      quoted.length > 1 ? quoted.join(' OR ') : undefined,
    ];
    words.forEach((match, i) => {
      // What stands in a better class is found again and passed over: there must be room for it.
      if (match !== undefined) take(2 + i, this.#byWords(match, asked.kinds, room + found.size));
    });
    return { candidates: [...found.values()], cut };
  }

  byOrigin(origins: readonly OriginPair[]): ([id: string, digest: string] | null)[] {
    return origins.map(([key, source]) => {
      const found = this.#sql.originOf.get(key, source);
      return found === undefined ? null : [found['id'] as string, found['digest'] as string];
    });
  }

  byOriginKey(keys: readonly string[]): unknown[][] {
    return keys.map(key => this.#sql.originsOfKey.all(key));
  }

  originsOf(ids: readonly string[]): unknown[][] {
    return ids.map(id => {
      const key = this.#keys.get(id);
      return key === undefined ? [] : this.#sql.originsOfNode.all(key);
    });
  }

  versions(id: string): ReadRow[] {
    const node = this.#sql.nodeOfId.get(id) as { key: number; kind: number } | undefined;
    if (node === undefined) return [];
    return this.#versions[node.kind]!.all(node.key).map(row => read(node.kind, id, row));
  }

  changeSets(numbers: readonly number[]): unknown[] {
    return numbers.map(number => this.#sql.changeSet.get(number) ?? null);
  }

  lastChangeSet(): number {
    return Number(this.#sql.lastChangeSet.get()!['number']);
  }

  scan(after: string, limit: number): ReadRow[] {
    return this.#sql.nodesAfter
      .all(after, limit)
      .map(node => this.#row(node['key'] as number, node['kind'] as number, node['id'] as string, now))
      .filter(row => row !== null);
  }

  windowsOf(ids: readonly string[]): unknown[] {
    return ids.map(id => {
      const key = this.#keys.get(id);
      return key === undefined ? null : (this.#sql.windowOf.get(key) ?? null);
    });
  }

  sortKeysOf(ids: readonly string[]): (string | null)[] {
    return ids.map(id => {
      const key = this.#keys.get(id);
      return key === undefined ? null : ((this.#sql.nodeOfKey.get(key)?.['sort'] ?? null) as string | null);
    });
  }

  awaited(origins: readonly OriginPair[]): unknown[][] {
    return origins.map(([key, source]) => this.#sql.awaited.all(key, source));
  }

  checkpoint(intake: string): unknown {
    return this.#sql.checkpoint.get(intake) ?? null;
  }

  facts(): { foldVersion: number; nodes: number; records: number; bytes: number; logBytes: number } {
    const log = statSync(`${this.#file}-wal`, { throwIfNoEntry: false });
    return {
      foldVersion: Number(this.#sql.foldVersion.get()?.['version'] ?? 0),
      nodes: Number(this.#sql.countNodes.get()!['n']),
      records: Number(this.#sql.countRecords.get()!['n']),
      bytes: Number(this.#sql.pages.get()!['bytes']),
      logBytes: log?.size ?? 0,
    };
  }

  #byWords(match: string, kinds: readonly number[], limit: number): Record<string, unknown>[] {
    return kinds.length === 0
      ? this.#sql.byWords.all(match, limit)
      : this.#sql.byWordsOfKinds.all(match, JSON.stringify(kinds), limit);
  }

  #rowOfKey(key: number, asOf: number): ReadRow | null {
    const node = this.#sql.nodeOfKey.get(key) as { id: string; kind: number } | undefined;
    return node === undefined ? null : this.#row(key, node.kind, node.id, asOf);
  }

  #row(key: number, kind: number, id: string, asOf: number): ReadRow | null {
    const found = this.#at[kind]!.get(key, asOf, asOf);
    return found === undefined ? null : read(kind, id, found);
  }
}

function read(kind: number, id: string, row: Readonly<Record<string, unknown>>): ReadRow {
  return [kind, id, ...Object.values(row)] as unknown as ReadRow;
}
