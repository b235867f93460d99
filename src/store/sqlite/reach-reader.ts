import { threadId } from 'node:worker_threads';
import type { EditionFilter, WindowKey } from '../graph-store.ts';
import { type GroupColumns, type GroupRow, groupColumns } from './group-columns.ts';
import type { KeyCache } from './key-cache.ts';
import type { Prepared } from './prepared.ts';
import { type Condition, reachSql, setConditions } from './reach-statements.ts';
import type { WindowRow } from './reader.ts';
import { kindNumber } from './row-codec.ts';
import { sql } from './statements.ts';

type Bound = Readonly<Record<string, string | number | null>>;

type NamedWindow = readonly [
  profile: string,
  dateClass: WindowKey['dateClass'],
  first: number | null,
  last: number | null,
];

/** All groups at a state of the store, or word that it is still the one that was known. */
export interface GroupsFound {
  readonly version: string;
  readonly columns?: GroupColumns;
}

/** Windows of editions under a filter: what questions about reach count and page. */
export class ReachReader {
  readonly #prepared: Prepared;
  readonly #keys: KeyCache;
  readonly #profiles = new Map<number, string>();

  constructor(prepared: Prepared, keys: KeyCache) {
    this.#prepared = prepared;
    this.#keys = keys;
  }

  /** @param known version of the groups without a filter that the asker has */
  groups(filter: EditionFilter, known: string | undefined): GroupsFound {
    const version = this.#version();
    if (version === known) return { version };
    const { conditions, values } = this.#filter(filter);
    const groups = this.#all<GroupRow>(reachSql.groups(conditions), values);
    const [[irregular]] = this.#all<[number]>(reachSql.irregularCount(conditions), values) as [[number]];
    return { version, columns: groupColumns(groups, irregular, number => this.#nameOfProfile(number)) };
  }

  irregular(filter: EditionFilter): string[] {
    const { conditions, values } = this.#filter(filter);
    return this.#all<[string]>(reachSql.irregular(conditions), values).map(([id]) => id);
  }

  /** Ids, in no order, among them the first `limit` after `after` over all the windows. */
  inWindows(windows: readonly WindowKey[], filter: EditionFilter, after: string, limit: number): string[] {
    const { conditions, values } = this.#filter(filter);
    if (conditions.some(condition => setConditions.has(condition))) {
      const wanted = new Set(windows.map(w => windowName(w.profile, w.dateClass, w.first ?? null, w.last ?? null)));
      return this.#all<[string, ...NamedWindow]>(reachSql.regular(conditions), { ...values, after })
        .filter(([, profile, dateClass, first, last]) => wanted.has(windowName(profile, dateClass, first, last)))
        .map(([id]) => id);
    }
    const text = reachSql.inWindow(conditions);
    return windows.flatMap(({ profile, dateClass, first, last }) => {
      const number = this.#prepared.first<[number]>(sql.profileOfName, profile)?.[0];
      if (number === undefined) return [];
      const window = { profile: number, class: dateClass, first: first ?? null, last: last ?? null };
      return this.#all<[string]>(text, { ...values, ...window, after, limit }).map(([id]) => id);
    });
  }

  byTitle(filter: EditionFilter, sort: string, id: string, limit: number): [id: string, sort: string, ...WindowRow][] {
    const { conditions, values } = this.#filter(filter);
    return this.#all(reachSql.byTitle(conditions), { ...values, kind: kindNumber('Edition'), sort, after: id, limit });
  }

  /** The conditions of a filter with the values they bind; an id that is not there passes nothing. */
  #filter(filter: EditionFilter): { readonly conditions: readonly Condition[]; readonly values: Bound } {
    const values: Record<string, string | number> = {};
    if (filter.form !== undefined) values['form'] = filter.form;
    if (filter.language !== undefined) values['language'] = filter.language;
    if (filter.illustrated !== undefined) values['illustrated'] = filter.illustrated ? 1 : 0;
    if (filter.work !== undefined) values['work'] = this.#keys.get(filter.work) ?? -1;
    if (filter.place !== undefined) values['place'] = this.#keys.get(filter.place) ?? -1;
    if (filter.subject !== undefined) values['subject'] = filter.subject;
    const conditions = Object.keys(values) as Condition[];
    return {
      conditions,
      values: filter.subject === undefined ? values : { ...values, subjectEnd: `${filter.subject}\u{10ffff}` },
    };
  }

  /** Another after every commit. SQLite counts them for each connection, so the thread is part of it. */
  #version(): string {
    return `${threadId}.${this.#prepared.first<[number]>('PRAGMA data_version')![0]}`;
  }

  #nameOfProfile(number: number): string {
    const known = this.#profiles.get(number) ?? this.#prepared.first<[string]>(sql.nameOfProfile, number)![0];
    this.#profiles.set(number, known);
    return known;
  }

  #all<Row extends readonly unknown[]>(text: string, values: Bound): Row[] {
    return this.#prepared.of(text).all(values) as unknown as Row[];
  }
}

function windowName(profile: string, dateClass: string, first: number | null, last: number | null): string {
  return `${dateClass} ${first} ${last} ${profile}`;
}
