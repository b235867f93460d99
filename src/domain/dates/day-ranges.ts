import type { Day, DayRange } from './day-bounds.ts';

/** A range of days with both ends, both inclusive. */
export interface ClosedRange extends DayRange {
  readonly lo: Day;
  readonly hi: Day;
}

/** The same days as disjoint ranges, ascending, with at least one day between neighbours. O(n log n). */
export function mergeRanges(ranges: readonly DayRange[]): DayRange[] {
  const merged: DayRange[] = [];
  for (const range of ranges.toSorted(byStart)) appendRange(merged, range);
  return merged;
}

/** Adds a range that begins no earlier than the last one; it is joined to that one where they touch or overlap. */
export function appendRange(ranges: DayRange[], next: DayRange): void {
  const last = ranges.at(-1);
  if (last === undefined || !touches(last, next)) ranges.push(next);
  else ranges[ranges.length - 1] = { lo: last.lo, hi: latest(last.hi, next.hi) };
}

/** The days that lie both in `a` and in `b`, in their order; empty if there are none. O(n m). */
export function commonRanges(a: readonly DayRange[], b: readonly DayRange[]): readonly DayRange[] {
  const shared = a.flatMap(x => b.map(y => ({ lo: ifBoth(x.lo, y.lo, Math.max), hi: ifBoth(x.hi, y.hi, Math.min) })));
  return shared.filter(({ lo, hi }) => lo === undefined || hi === undefined || lo <= hi);
}

/** The smallest range that holds all the given ranges, which are ascending; `{}` (open both ways) for none. */
export function hullOf(ranges: readonly DayRange[]): DayRange {
  let hi = ranges[0]?.hi;
  for (const range of ranges) hi = latest(hi, range.hi);
  return { lo: ranges[0]?.lo, hi };
}

/** The later of two upper ends; absent (open) is latest. */
export function latest(a: Day | undefined, b: Day | undefined): Day | undefined {
  return a === undefined || b === undefined ? undefined : Math.max(a, b);
}

/** The earlier of two lower ends; absent (open) is earliest. */
export function earliest(a: Day | undefined, b: Day | undefined): Day | undefined {
  return a === undefined || b === undefined ? undefined : Math.min(a, b);
}

/** The choice between two ends if both are given, otherwise the one that is. */
export function ifBoth(
  a: Day | undefined,
  b: Day | undefined,
  choose: (a: Day, b: Day) => Day | undefined,
): Day | undefined {
  return a === undefined || b === undefined ? (a ?? b) : choose(a, b);
}

function touches(last: DayRange, next: DayRange): boolean {
  return last.hi === undefined || next.lo === undefined || next.lo <= last.hi + 1;
}

function byStart(a: DayRange, b: DayRange): number {
  if (a.lo === undefined || b.lo === undefined) return (a.lo === undefined ? 0 : 1) - (b.lo === undefined ? 0 : 1);
  return a.lo - b.lo;
}
