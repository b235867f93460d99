import type { SlackConvention } from '../../domain/dates/slack.ts';
import { DatesKnown } from '../dates-known.ts';
import type { KeyCache } from './key-cache.ts';
import type { Bound, NamedValues } from './named-values.ts';
import { kindNumber } from './row-codec.ts';
import { type Condition, searchConditions, ways } from './search-conditions.ts';
import { searchSql } from './search-statements.ts';

/** A filter as it crosses to the thread. */
export interface WrittenFilter {
  /** Places in the list of kinds. */
  readonly kinds: readonly number[];
  readonly days: readonly [first: number, last: number] | null;
  readonly slack: SlackConvention | null;
  readonly place: string | null;
  readonly subject: string | null;
}

/** How to find what passes a filter: all of it is of one of the kinds. */
export interface FilterPlan {
  /** Kinds of which many records pass: they are looked at one by one. */
  readonly many: readonly number[];
  /** Kinds of which few pass, if any. */
  readonly few: readonly number[];
  /** Keys as JSON, among which are all of the few. */
  readonly keys: string;
  /** Conditions that a record of one of the keys has yet to pass. */
  readonly left: readonly Condition[];
  readonly conditions: readonly Condition[];
  readonly values: Bound;
}

/** What comes to pass a condition. */
interface Gathered {
  readonly condition: Condition;
  readonly many: ReadonlySet<number>;
  readonly few: ReadonlySet<number>;
  readonly keys: ReadonlySet<number>;
}

/** Plans of filters: gathers what passes where it is little. */
export class SearchFilter {
  readonly #read: NamedValues;
  readonly #keys: KeyCache;
  readonly #gathered: number;
  readonly #dates = new DatesKnown();

  /** @param gathered so many records that come by one way are few */
  constructor(read: NamedValues, keys: KeyCache, gathered: number) {
    this.#read = read;
    this.#keys = keys;
    this.#gathered = gathered;
  }

  plan({ kinds, ...filter }: WrittenFilter): FilterPlan {
    const values = this.#values(filter);
    const conditions = searchConditions.filter(condition => filter[condition] !== null);
    const found = conditions.map(condition => this.#gather(condition, new Set(kinds), values));
    const many = kinds.filter(kind => found.every(each => each.many.has(kind)));
    const possible = kinds.filter(kind => found.every(each => each.many.has(kind) || each.few.has(kind)));
    // What passes a condition that many records of no kind pass is among its keys.
    const whole = found.filter(each => each.many.size === 0);
    const [one, ...others] = whole.map(each => each.keys);
    const keys =
      one === undefined
        ? [...new Set(found.flatMap(each => [...each.keys]))]
        : [...one].filter(key => others.every(each => each.has(key)));
    return {
      many,
      few: keys.length === 0 ? [] : possible.filter(kind => !many.includes(kind)),
      keys: JSON.stringify(keys),
      left: conditions.filter(condition => !whole.some(each => each.condition === condition)),
      conditions,
      values,
    };
  }

  #gather(condition: Condition, kinds: ReadonlySet<number>, values: Bound): Gathered {
    const [many, few, keys] = [new Set<number>(), new Set<number>(), new Set<number>()];
    for (const { kinds: names, text } of ways[condition]) {
      const to = names.map(kindNumber).filter(kind => kinds.has(kind));
      if (to.length === 0) continue;
      const rows = this.#read.all<[number]>(searchSql.byWay(text), { ...values, most: this.#gathered + 1 });
      const isMany = rows.length > this.#gathered;
      if (!isMany) for (const [key] of rows) keys.add(key);
      if (rows.length > 0) for (const kind of to) (isMany ? many : few).add(kind);
    }
    return { condition, many, few, keys };
  }

  #values({ days, slack, place, subject }: Omit<WrittenFilter, 'kinds'>): Bound {
    return {
      ...(days === null ? {} : this.#dayValues(days, slack ?? undefined)),
      ...(place === null ? {} : this.#placeValues(place)),
      ...(subject === null ? {} : { subject, subjectEnd: `${subject}\u{10ffff}` }),
    };
  }

  #dayValues(days: readonly [first: number, last: number], slack: SlackConvention | undefined): Bound {
    for (const [number, date] of this.#read.all<[number, string]>(searchSql.datesAfter, { last: this.#dates.last })) {
      this.#dates.add(number, date);
    }
    const [firstDay, lastDay] = days;
    return { firstDay, lastDay, dates: JSON.stringify(this.#dates.meeting(days, slack)) };
  }

  #placeValues(id: string): Bound {
    const place = this.#keys.get(id);
    if (place === undefined) return { places: '[]', workshops: '[]' };
    const places = JSON.stringify(this.#read.all<[number]>(searchSql.placesWithin, { place }).flat());
    const workshops = JSON.stringify(this.#read.all<[number]>(searchSql.workshopsAt, { places }).flat());
    return { places, workshops };
  }
}
