import type { SlackConvention } from '../domain/dates/slack.ts';
import { type SlackName, slacksUsed } from '../domain/dates/slacks-used.ts';
import { publishedClasses } from '../domain/reach/published-window.ts';
import type { DatedColumns } from './dated-columns.ts';
import type { WindowDetail } from './window-detail.ts';
import type { KeyedColumns } from './window-keys.ts';

/**
 * How many editions of some columns rest on what: a count may take away what those of other columns have too many, so that
 * nothing rests on it where all come to nothing.
 */
export interface ColumnGrounds {
  /** Keys of windows that have any day of publication, and how many of each. */
  readonly keys: Int32Array;
  readonly ofKeys: Int32Array;
  /** By class. */
  readonly ofClasses: readonly number[];
  readonly ofSlacks: ReadonlyMap<SlackName, number>;
  /** Those of which somebody had a copy. */
  readonly withAccess: number;
}

/** Worked once for the same columns and keys. @param isPossible of the place of a window that has a detail: it has some day */
export function columnGrounds(
  columns: DatedColumns,
  keyed: KeyedColumns,
  details: readonly (WindowDetail | undefined)[],
  slack: SlackConvention,
  isPossible: (at: number) => boolean,
): ColumnGrounds {
  const ofColumns = made.get(columns) ?? new WeakMap<KeyedColumns, ColumnGrounds>();
  made.set(columns, ofColumns);
  const grounds = ofColumns.get(keyed) ?? makeGrounds(columns, keyed, details, slack, isPossible);
  ofColumns.set(keyed, grounds);
  return grounds;
}

const made = new WeakMap<DatedColumns, WeakMap<KeyedColumns, ColumnGrounds>>();

function makeGrounds(
  { detail, dateClass, count }: DatedColumns,
  { keys }: KeyedColumns,
  details: readonly (WindowDetail | undefined)[],
  slack: SlackConvention,
  isPossible: (at: number) => boolean,
): ColumnGrounds {
  const ofKeys = new Map<number, number>();
  const ofSlacks = new Map<SlackName, number>();
  const ofClasses = publishedClasses.map(() => 0);
  let withAccess = 0;
  for (let at = 0; at < count.length; at++) {
    const editions = count[at]!;
    const said = details[detail[at]!];
    ofClasses[dateClass[at]!]! += editions;
    for (const name of said === undefined ? [] : slacksOf(said, slack)) add(ofSlacks, name, editions);
    if (said !== undefined && said.accesses.length > 0) withAccess += editions;
    if (keys[at]! >= 0 && (said === undefined || isPossible(at))) add(ofKeys, keys[at]!, editions);
  }
  return {
    keys: Int32Array.from(ofKeys.keys()),
    ofKeys: Int32Array.from(ofKeys.values()),
    ...{ ofClasses, ofSlacks, withAccess },
  };
}

function add<K>(counts: Map<K, number>, key: K, count: number): void {
  counts.set(key, (counts.get(key) ?? 0) + count);
}

function slacksOf({ datings, accesses }: WindowDetail, slack: SlackConvention): ReadonlySet<SlackName> {
  const dates = [...datings.map(({ days }) => days), ...accesses.map(({ when }) => when)];
  return new Set(dates.flatMap(date => (typeof date === 'string' ? slacksUsed(date, slack) : [])));
}
