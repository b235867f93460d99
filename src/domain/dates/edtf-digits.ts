import { daysFromCivil, daysInMonth, daysOfYear } from './calendar.ts';
import type { DayRange } from './day-bounds.ts';
import { appendRange, type ClosedRange } from './day-ranges.ts';
import { subyear, subyearDays } from './edtf-subyear.ts';

/** More disjoint ranges than this are given as their hull. */
export const mostParts = 400;

/** Year, month and day as written, each digit a digit or X (unspecified); the year without its sign. */
export interface WrittenDate {
  readonly negative: boolean;
  readonly year: string;
  readonly month: string | undefined;
  readonly day: string | undefined;
}

/** All days that some choice of the unspecified digits gives. */
export interface Completions {
  /** Ascending, disjoint; the hull alone if there are more than `mostParts`. */
  readonly parts: readonly DayRange[];
  readonly lo: number;
  readonly hi: number;
  readonly convex: boolean;
  readonly yearLo: number;
  readonly yearHi: number;
}

/** Undefined if no choice of digits gives a date of the calendar. Bounded: at most about 5,000 years are looked at. */
export function completions(written: WrittenDate): Completions | undefined {
  const runs = yearRuns(written.year, written.negative);
  const first = runs[0];
  const last = runs.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const years = { yearLo: first.lo, yearHi: last.hi };
  const wholeYears = (written.month ?? 'XX') === 'XX' && (written.day ?? 'XX') === 'XX';
  if (wholeYears) return { ...ofWholeYears(runs), ...years };
  const inYear = daysWithinYear(written.month ?? 'XX', written.day);
  const found = inYear === undefined ? undefined : ofEachYear(runs, inYear);
  return found === undefined ? undefined : { ...found, ...years };
}

type Found = Pick<Completions, 'parts' | 'lo' | 'hi' | 'convex'>;
type DaysWithinYear = (year: number) => readonly ClosedRange[];

function ofWholeYears(runs: readonly ClosedRange[]): Found {
  const lo = daysOfYear(runs[0]!.lo).lo;
  const hi = daysOfYear(runs.at(-1)!.hi).hi;
  if (runs.length === 1 || runs.length > mostParts) return { parts: [{ lo, hi }], lo, hi, convex: runs.length === 1 };
  const parts = runs.map(run => ({ lo: daysOfYear(run.lo).lo, hi: daysOfYear(run.hi).hi }));
  return { parts, lo, hi, convex: false };
}

function ofEachYear(runs: readonly ClosedRange[], inYear: DaysWithinYear): Found | undefined {
  const parts: DayRange[] = [];
  for (const run of runs) {
    for (let year = run.lo; year <= run.hi && parts.length <= mostParts; year++) {
      for (const range of inYear(year)) appendRange(parts, range);
    }
  }
  const lo = parts[0]?.lo;
  if (lo === undefined) return undefined;
  const hi = parts.length > mostParts ? lastDay(runs, inYear) : parts.at(-1)!.hi!;
  if (parts.length > mostParts) return { parts: [{ lo, hi }], lo, hi, convex: false };
  return { parts, lo, hi, convex: parts.length === 1 };
}

function lastDay(runs: readonly ClosedRange[], inYear: DaysWithinYear): number {
  for (const run of runs.toReversed()) {
    for (let year = run.hi; year >= run.lo; year--) {
      const last = inYear(year).at(-1);
      if (last !== undefined) return last.hi;
    }
  }
  return Number.NaN;
}

/** Undefined if no year at all has such a day: a leap year is tried. */
function daysWithinYear(month: string, day: string | undefined): DaysWithinYear | undefined {
  const part = subyear(Number(month));
  if (part !== undefined) return day === undefined ? year => subyearDays(part, year) : undefined;
  const months = choices(month, 12);
  const inYear: DaysWithinYear = year => months.flatMap(each => daysWithinMonth(year, each, day));
  return inYear(2000).length === 0 ? undefined : inYear;
}

function daysWithinMonth(year: number, month: number, day: string | undefined): ClosedRange[] {
  const length = daysInMonth(year, month);
  const start = daysFromCivil(year, month, 1) - 1;
  if (day === undefined || day === 'XX') return [{ lo: start + 1, hi: start + length }];
  return runsOf(choices(day, length)).map(run => ({ lo: start + run.lo, hi: start + run.hi }));
}

/** The numbers 1 to `most` that a pattern of two characters allows, ascending. */
function choices(pattern: string, most: number): number[] {
  if (!pattern.includes('X')) return Number(pattern) >= 1 && Number(pattern) <= most ? [Number(pattern)] : [];
  const numbers: number[] = [];
  for (let number = 1; number <= most; number++) {
    const tens = String(Math.floor(number / 10));
    const ones = String(number % 10);
    if ((pattern[0] === 'X' || pattern[0] === tens) && (pattern[1] === 'X' || pattern[1] === ones))
      numbers.push(number);
  }
  return numbers;
}

function runsOf(numbers: readonly number[]): ClosedRange[] {
  const runs: ClosedRange[] = [];
  for (const number of numbers) {
    const last = runs.at(-1);
    if (last?.hi === number - 1) runs[runs.length - 1] = { lo: last.lo, hi: number };
    else runs.push({ lo: number, hi: number });
  }
  return runs;
}

/** Runs of consecutive years, ascending. Rightmost X make runs of 10, 100 or 1,000; `-0000` is no year. */
function yearRuns(pattern: string, negative: boolean): ClosedRange[] {
  const fixed = pattern.replace(/X+$/, '');
  const length = 10 ** (pattern.length - fixed.length);
  let starts = [0];
  for (const digit of fixed) starts = starts.flatMap(start => nextDigits(digit).map(next => start * 10 + next));
  const runs = starts.map(start => ({ lo: start * length, hi: (start + 1) * length - 1 }));
  if (!negative) return runs;
  const mirrored = runs.toReversed().map(run => ({ lo: -run.hi, hi: Math.min(-run.lo, -1) }));
  return mirrored.filter(run => run.lo <= run.hi);
}

const allDigits = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];

function nextDigits(digit: string): readonly number[] {
  return digit === 'X' ? allDigits : [Number(digit)];
}
