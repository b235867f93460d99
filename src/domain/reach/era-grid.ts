import type { Conventions } from '../conventions/conventions.ts';
import type { EraSpeeds } from '../conventions/fallback-conventions.ts';
import { daysFromCivil } from '../dates/calendar.ts';
import type { DayRange } from '../dates/day-bounds.ts';

/** Days within which the same routes are valid and the same speeds hold. */
export interface Era {
  readonly days: DayRange;
  readonly speeds: EraSpeeds;
  /** Key of the convention of the speeds. */
  readonly speedsKey: string;
  /** Keys of the recorded routes that are valid. */
  readonly routes: ReadonlySet<string>;
}

const speedKeys = [
  'route.speed.before-1780',
  'route.speed.from-1780',
  'route.speed.from-1837',
  'route.speed.from-1840',
] as const;

/** All days, cut at every limit of validity of a route and at every change of speeds; ascending, without gaps. */
export function eraGrid(conventions: Conventions): readonly Era[] {
  const speeds = speedKeys
    .map(key => ({ key, value: conventions.get(key) }))
    .sort((a, b) => (a.value.fromYear ?? -Infinity) - (b.value.fromYear ?? -Infinity));
  const starts = new Set<number>();
  for (const { value } of speeds) if (value.fromYear !== null) starts.add(value.fromYear);
  for (const { value } of conventions.routes) {
    if (value.years[0] !== null) starts.add(value.years[0]);
    if (value.years[1] !== null) starts.add(value.years[1] + 1);
  }
  const years = [undefined, ...[...starts].sort((a, b) => a - b)];
  return years.map((first, at) => {
    const next = years[at + 1];
    const holds =
      speeds.findLast(({ value }) => value.fromYear === null || isFrom(first, value.fromYear)) ?? speeds[0]!;
    const routes = conventions.routes.filter(
      ({
        value: {
          years: [from, last],
        },
      }) => {
        return (from === null || isFrom(first, from)) && (last === null || (next !== undefined && next <= last + 1));
      },
    );
    return {
      days: { lo: firstDay(first), hi: next === undefined ? undefined : firstDay(next)! - 1 },
      speeds: holds.value,
      speedsKey: holds.key,
      routes: new Set(routes.map(({ key }) => key)),
    };
  });
}

/** Neighbouring eras by their places in the grid, both inclusive. */
export interface EraSpan {
  readonly first: number;
  readonly last: number;
}

/** The eras that a window of days touches; the window is not reversed. */
export function eraSpan(grid: readonly Era[], { lo, hi }: DayRange): EraSpan {
  let first = 0;
  let last = grid.length - 1;
  while (lo !== undefined && first < last && endsBefore(grid[first]!, lo)) first++;
  while (hi !== undefined && first < last && beginsAfter(grid[last]!, hi)) last--;
  return { first, last };
}

/** First days of all eras but the first: what `eraIndex` looks in. */
export function eraStarts(grid: readonly Era[]): readonly number[] {
  return grid.slice(1).map(({ days }) => days.lo!);
}

/** Place in the grid of the era of a day. */
export function eraIndex(starts: readonly number[], day: number): number {
  let at = 0;
  while (at < starts.length && day >= starts[at]!) at++;
  return at;
}

function endsBefore({ days }: Era, day: number): boolean {
  return days.hi !== undefined && days.hi < day;
}

function beginsAfter({ days }: Era, day: number): boolean {
  return days.lo !== undefined && days.lo > day;
}

function isFrom(year: number | undefined, from: number): boolean {
  return year !== undefined && year >= from;
}

function firstDay(year: number | undefined): number | undefined {
  return year === undefined ? undefined : daysFromCivil(year, 1, 1);
}
