import type { Day, DayRange } from '../dates/day-bounds.ts';

/** In the order in which they are shown. */
export const reachVerdicts = ['IN_EVERY_CASE', 'IN_SOME_CASES', 'IN_NO_CASE', 'CONTRADICTORY'] as const;
export type ReachVerdict = (typeof reachVerdicts)[number];

/** Days from the first day for sale to the arrival; an absent `most` is open. */
export interface LagDays {
  readonly least: number;
  readonly most?: number | undefined;
}

/** Room in days, negative: days short. `every` on the latest reckoning, `some` on the earliest; absent: a bound is open. */
export interface MarginDays {
  readonly every?: number | undefined;
  readonly some?: number | undefined;
}

export interface VerdictAndMargin {
  readonly verdict: ReachVerdict;
  readonly margin: MarginDays;
}

/**
 * Whether something for sale on a day of `published`, on its way for `lag` days, was there on a day of `object`, where
 * arrival on the day itself is in time. Exact for integer days that are independent of each other: the condition is
 * monotone in each of them, so its extremes lie at the corners. An open end only ever takes the answer towards
 * IN_SOME_CASES. A reversed range has no day: CONTRADICTORY, without room.
 */
export function verdict(published: DayRange, lag: LagDays, object: DayRange): VerdictAndMargin {
  if (isReversed(published) || isReversed(object)) return contradictory;
  return verdictOfMargin({
    every: room(object.lo, laterBy(published.hi, lag.most)),
    some: room(object.hi, laterBy(published.lo, lag.least)),
  });
}

export const contradictory: VerdictAndMargin = Object.freeze({ verdict: 'CONTRADICTORY', margin: Object.freeze({}) });

/** The verdict that margins of a possible case give. */
export function verdictOfMargin(margin: MarginDays): VerdictAndMargin {
  if (margin.some !== undefined && margin.some < 0) return { verdict: 'IN_NO_CASE', margin };
  const always = margin.every !== undefined && margin.every >= 0;
  return { verdict: always ? 'IN_EVERY_CASE' : 'IN_SOME_CASES', margin };
}

export function isReversed({ lo, hi }: DayRange): boolean {
  return lo !== undefined && hi !== undefined && lo > hi;
}

/** Sum of a day and a number of days; absent (open) if either is. */
export function laterBy(day: Day | undefined, days: number | undefined): Day | undefined {
  return day === undefined || days === undefined ? undefined : day + days;
}

/** Days from `from` to `until`; absent if either end is open. */
export function room(until: Day | undefined, from: Day | undefined): number | undefined {
  return until === undefined || from === undefined ? undefined : until - from;
}
