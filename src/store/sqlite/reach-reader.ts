import { compareText } from '../../domain/text/compare.ts';
import type { EditionFilter } from '../graph-store.ts';
import type { GroupsFound, KnownGroups, NumberedName } from '../groups-known.ts';
import type { NamedWindow, NamedWindowRow } from '../window-codec.ts';
import {
  numbersOfBytes,
  type TallyNumbers,
  type WindowNumbers,
  type WindowRow,
  windowNumbers,
  windowsOfTally,
} from '../window-numbers.ts';
import type { KeyCache } from './key-cache.ts';
import type { Prepared } from './prepared.ts';
import { type Condition, reachSql, setConditions } from './reach-statements.ts';
import { kindNumber } from './row-codec.ts';
import { sql } from './statements.ts';
import { TraitsFilter } from './traits-filter.ts';

type Bound = Readonly<Record<string, string | number | null>>;
/** Ids of editions in some windows after one, in no order, among them the first `limit`. */
type FindEditions = (windows: readonly Readonly<Record<string, number>>[], after: string, limit: number) => string[];

/** Windows of editions under a filter: what questions about reach count and page. */
export class ReachReader {
  readonly #prepared: Prepared;
  readonly #keys: KeyCache;
  readonly #traits: TraitsFilter;

  constructor(prepared: Prepared, keys: KeyCache) {
    this.#prepared = prepared;
    this.#keys = keys;
    this.#traits = new TraitsFilter(prepared);
  }

  groups(filter: EditionFilter, known: KnownGroups): GroupsFound {
    const { conditions, values, passes } = this.#filter(filter);
    const isTallied = !conditions.some(condition => setConditions.has(condition));
    return {
      changeSet: this.#prepared.first<[number]>(sql.lastChangeSet)![0],
      profiles: this.#prepared.all<NumberedName>(sql.profilesAfter, known.profile),
      details: this.#prepared.all<NumberedName>(sql.detailsAfter, known.detail),
      tallies: isTallied ? this.#tallies(known.tallies, passes) : [[0, this.#counted(conditions, values)]],
      isTallied,
    };
  }

  inWindows(
    buckets: readonly (readonly NamedWindow[])[],
    filter: EditionFilter,
    after: string,
    limit: number,
  ): string[][] {
    const { conditions, values } = this.#filter(filter);
    const hasSets = conditions.some(condition => setConditions.has(condition));
    const find = hasSets ? this.#findAmongAll(conditions, values) : this.#findByIndex(conditions, values);
    let left = limit;
    return buckets.map((windows, i) => {
      if (left <= 0) return [];
      const distinct = new Map(windows.map(window => [window.join('\n'), window]));
      const numbered = [...distinct.values()].map(window => this.#numbered(window)).filter(each => each !== undefined);
      const ids = find(numbered, i === 0 ? after : '', left)
        .sort(compareText)
        .slice(0, left);
      left -= ids.length;
      return ids;
    });
  }

  byTitle(
    filter: EditionFilter,
    sort: string,
    id: string,
    limit: number,
  ): [id: string, sort: string, ...NamedWindowRow][] {
    const { conditions, values } = this.#filter(filter);
    return this.#all(reachSql.byTitle(conditions), { ...values, kind: kindNumber('Edition'), sort, after: id, limit });
  }

  #findByIndex(conditions: readonly Condition[], values: Bound): FindEditions {
    const text = reachSql.inWindow(conditions);
    return (windows, after, limit) =>
      windows.flatMap(window => this.#all<[string]>(text, { ...values, ...window, after, limit }).map(([id]) => id));
  }

  /** What a condition on claims leaves is few, and is looked through. */
  #findAmongAll(conditions: readonly Condition[], values: Bound): FindEditions {
    const found = this.#all<[string, ...number[]]>(reachSql.windows(conditions), values);
    const byWindow = Map.groupBy(found, ([, ...window]) => window.join());
    return (windows, after) =>
      windows
        .flatMap(window => byWindow.get(Object.values(window).join()) ?? [])
        .map(([id]) => id)
        .filter(id => compareText(id, after) > 0);
  }

  #tallies(known: readonly number[], passes: Uint8Array | undefined): GroupsFound['tallies'] {
    const isKnown = new Set(known);
    return this.#prepared
      .all<[number]>(sql.talliesInOrder)
      .map(([number]) => [number, isKnown.has(number) ? undefined : windowsOfTally(this.#tally(number), passes)]);
  }

  #tally(number: number): TallyNumbers {
    return numbersOfBytes(this.#prepared.first<[Uint8Array]>(sql.tallyOfNumber, number)![0]);
  }

  #counted(conditions: readonly Condition[], values: Bound): WindowNumbers {
    return windowNumbers(this.#all<WindowRow>(reachSql.groups(conditions), values));
  }

  /** The numbers of a window, in the order of its columns; undefined if no edition ever had its profile or detail. */
  #numbered([profile, dateClass, detail, first, last]: NamedWindow): Readonly<Record<string, number>> | undefined {
    const profileNumber = this.#prepared.first<[number]>(sql.profileOfName, profile)?.[0];
    const detailNumber = detail === '' ? 0 : this.#prepared.first<[number]>(sql.detailOfText, detail)?.[0];
    if (profileNumber === undefined || detailNumber === undefined) return undefined;
    return { profile: profileNumber, class: dateClass, detail: detailNumber, first, last };
  }

  /** The conditions of a filter with the values they bind; an id that is not there passes nothing. */
  #filter(filter: EditionFilter): {
    readonly conditions: readonly Condition[];
    readonly values: Bound;
    /** By number of traits; undefined: all pass. */
    readonly passes: Uint8Array | undefined;
  } {
    const passes = this.#traits.passing(filter);
    const values: Record<string, string | number> = {};
    if (passes !== undefined) {
      values['traits'] = JSON.stringify([...passes.keys()].filter(number => passes[number] === 1));
    }
    if (filter.work !== undefined) values['work'] = this.#keys.get(filter.work) ?? -1;
    if (filter.place !== undefined) values['place'] = this.#keys.get(filter.place) ?? -1;
    if (filter.subject !== undefined) values['subject'] = filter.subject;
    const conditions = Object.keys(values) as Condition[];
    if (filter.subject !== undefined) values['subjectEnd'] = `${filter.subject}\u{10ffff}`;
    return { conditions, values, passes };
  }

  #all<Row extends readonly unknown[]>(text: string, values: Bound): Row[] {
    return this.#prepared.of(text).all(values) as unknown as Row[];
  }
}
