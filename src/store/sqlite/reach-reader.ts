import type { DatabaseSync, StatementSync } from 'node:sqlite';
import type { EditionFilter, WindowKey } from '../graph-store.ts';
import { kindNumber } from './row-codec.ts';
import { type Condition, reachSql } from './statements.ts';

type Bound = Record<string, string | number | null>;

/** Windows of editions under a filter: what questions about reach count and page. */
export class ReachReader {
  readonly #database: DatabaseSync;
  readonly #prepared = new Map<string, StatementSync>();
  readonly #keyOf: (id: string) => number | undefined;

  constructor(database: DatabaseSync, keyOf: (id: string) => number | undefined) {
    this.#database = database;
    this.#keyOf = keyOf;
  }

  groups(filter: EditionFilter): { groups: unknown[][]; irregular: number } {
    const { conditions, values } = this.#filter(filter);
    const groups = this.#prepare(reachSql.groups(conditions))
      .all(values)
      .map(row => Object.values(row));
    return { groups, irregular: Number(this.#prepare(reachSql.irregularCount(conditions)).get(values)!['n']) };
  }

  irregular(filter: EditionFilter): string[] {
    const { conditions, values } = this.#filter(filter);
    return this.#prepare(reachSql.irregular(conditions))
      .all(values)
      .map(row => row['id'] as string);
  }

  /** By id over all the windows: each gives its first ones, and the first of those together are the first of all. */
  inWindows(
    windows: readonly WindowKey[],
    filter: EditionFilter,
    after: string,
    limit: number,
    profileNumber: (name: string) => number | undefined,
  ): string[] {
    const { conditions, values } = this.#filter(filter);
    const statement = this.#prepare(reachSql.inWindow(conditions));
    return windows.flatMap(({ profile, dateClass, first, last }) => {
      const number = profileNumber(profile);
      if (number === undefined) return [];
      return statement
        .all({ ...values, profile: number, class: dateClass, first: first ?? null, last: last ?? null, after, limit })
        .map(row => row['id'] as string);
    });
  }

  byTitle(filter: EditionFilter, sort: string, after: string, limit: number): unknown[] {
    const { conditions, values } = this.#filter(filter);
    return this.#prepare(reachSql.byTitle(conditions)).all({
      ...values,
      kind: kindNumber('Edition'),
      sort,
      after,
      limit,
    });
  }

  /** The conditions of a filter with the values they bind; an id that is not there passes nothing. */
  #filter(filter: EditionFilter): { conditions: Condition[]; values: Bound } {
    const values: Bound = {};
    if (filter.form !== undefined) values['form'] = filter.form;
    if (filter.language !== undefined) values['language'] = filter.language;
    if (filter.illustrated !== undefined) values['illustrated'] = filter.illustrated ? 1 : 0;
    if (filter.work !== undefined) values['work'] = this.#keyOf(filter.work) ?? -1;
    if (filter.place !== undefined) values['place'] = this.#keyOf(filter.place) ?? -1;
    if (filter.subject !== undefined) values['subject'] = filter.subject;
    return { conditions: Object.keys(values) as Condition[], values };
  }

  #prepare(text: string): StatementSync {
    const known = this.#prepared.get(text);
    if (known !== undefined) return known;
    const statement = this.#database.prepare(text);
    this.#prepared.set(text, statement);
    return statement;
  }
}
