import type { DayRange } from '../dates/day-bounds.ts';
import type { DateChoice, DayBound } from './dates-network.ts';

/** Days that one claim, or the alternatives of a group together, allow a variable. */
export interface DomainBound {
  readonly days: readonly DayRange[];
  /** Without the early start of imprint years. */
  readonly recorded: readonly DayRange[];
  /** The bound; absent where the days are those of alternatives. */
  readonly bound?: DayBound | undefined;
  readonly choice?: DateChoice | undefined;
}

/** What is recorded of one variable. */
export interface RecordedDomain {
  readonly bounds: readonly DomainBound[];
  /** First and last day on which all bounds hold, infinite if open; where there is none, `first` is later than `last`. */
  readonly first: number;
  readonly last: number;
  /** Some bound has a gap between its days. */
  readonly gaps: boolean;
}

export function recordedDomain(bounds: readonly DomainBound[]): RecordedDomain {
  const [only] = bounds;
  if (bounds.length === 1 && only!.days.length === 1) {
    return { bounds, first: only!.days[0]!.lo ?? -Infinity, last: lastDayOf(only!.days), gaps: false };
  }
  const days = bounds.map(bound => bound.days);
  const first = firstCommonDay(days, -Infinity);
  const missed = lastBefore(days, first);
  const last = missed < first ? missed : 0 - firstCommonDay(days.map(mirrorDays), -Infinity);
  return { bounds, first, last, gaps: days.some(ranges => ranges.length > 1) };
}

/**
 * The first day not before `from` on which all the ranges hold. Where one of them has no day left, the day that was
 * reached until then: it is later than the last day of that one.
 */
export function firstCommonDay(bounds: readonly (readonly DayRange[])[], from: number): number {
  let day = from;
  while (!(lastBefore(bounds, day) < day)) {
    const next = Math.max(day, ...bounds.map(days => firstDayFrom(days, day)));
    if (next === day) break;
    day = next;
  }
  return day;
}

/** First day of ascending ranges that is not before `from`; -Infinity if open, Infinity if there is none. */
export function firstDayFrom(days: readonly DayRange[], from: number): number {
  for (const { lo = -Infinity, hi = Infinity } of days) if (hi >= from) return Math.max(lo, from);
  return Infinity;
}

/** Last day of ascending ranges; Infinity if open. */
export function lastDayOf(days: readonly DayRange[]): number {
  return days.at(-1)?.hi ?? Infinity;
}

/** The same days counted backwards. */
export function mirrorDays(days: readonly DayRange[]): readonly DayRange[] {
  const against = (day: number | undefined) => (day === undefined ? undefined : 0 - day);
  return days.map(({ lo, hi }) => ({ lo: against(hi), hi: against(lo) })).reverse();
}

/** Earliest last day of those that have none from `day` on; Infinity if all have. */
function lastBefore(bounds: readonly (readonly DayRange[])[], day: number): number {
  return Math.min(Infinity, ...bounds.map(lastDayOf).filter(last => last < day));
}
