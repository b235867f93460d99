import type { SlackConvention } from '../domain/dates/slack.ts';
import { type SlackName, slacksUsed } from '../domain/dates/slacks-used.ts';
import { publishedClasses } from '../domain/reach/published-window.ts';
import { rememberedPairs } from '../domain/remembered.ts';
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
export const columnGrounds = rememberedPairs(makeGrounds);

function makeGrounds(
  { stored, count }: DatedColumns,
  { keys }: KeyedColumns,
  details: readonly (WindowDetail | undefined)[],
  slack: SlackConvention,
  isPossible: (at: number) => boolean,
): ColumnGrounds {
  const { detail, dateClass } = stored;
  const ofKey = new Float64Array(keys.reduce((most, key) => Math.max(most, key), -1) + 1);
  const ofDetail = new Float64Array(details.length);
  const ofClasses = new Float64Array(publishedClasses.length);
  for (let at = 0; at < count.length; at++) {
    const editions = count[at]!;
    // As the store keeps it: how far ahead of an imprint is reckoned with, whatever comes of it.
    ofClasses[dateClass[at]!]! += editions;
    ofDetail[detail[at]!]! += editions;
    if (keys[at]! >= 0 && (detail[at] === 0 || isPossible(at))) ofKey[keys[at]!]! += editions;
  }
  const ofSlacks = new Map<SlackName, number>();
  let withAccess = 0;
  ofDetail.forEach((editions, number) => {
    const said = editions === 0 ? undefined : details[number];
    if (said === undefined) return;
    for (const name of slacksOf(said, slack)) ofSlacks.set(name, (ofSlacks.get(name) ?? 0) + editions);
    if (said.accesses.length > 0) withAccess += editions;
  });
  const used = Int32Array.from(ofKey.keys()).filter(key => ofKey[key] !== 0);
  return {
    keys: used,
    ofKeys: Int32Array.from(used, key => ofKey[key]!),
    ofClasses: [...ofClasses],
    ofSlacks,
    withAccess,
  };
}

function slacksOf({ datings, accesses }: WindowDetail, slack: SlackConvention): ReadonlySet<SlackName> {
  const dates = [...datings.map(({ days }) => days), ...accesses.map(({ when }) => when)];
  return new Set(dates.flatMap(date => (typeof date === 'string' ? slacksUsed(date, slack) : [])));
}
