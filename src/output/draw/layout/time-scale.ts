import { civilFromDays, daysFromCivil } from '../../../domain/dates/calendar.ts';
import type { Day, DayRange } from '../../../domain/dates/day-bounds.ts';

interface Tick {
  readonly x: number;
  /** Astronomical year of the tick; absent on the finer ones. */
  readonly year?: number;
}

/** An axis of time: places are proportional to days. */
export interface TimeScale {
  readonly left: number;
  readonly right: number;
  readonly first: Day;
  readonly last: Day;
  readonly ticks: readonly Tick[];
  x(day: Day): number;
}

const daysInYear = 365.2425;
/** A shorter span is drawn as so many years, lest months look like ages. */
const leastYears = 4;
const leastLabelRoom = 54;
const leastTickRoom = 9;
const yearSteps = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000];

/** Days stretch the axis beyond the places by at most so much on either side: one wide guess does not press the rest together. */
const mostStretch = 0.5;
const stretchAllowed = 10 * daysInYear;

/** The axis for places and the days around them; undefined if nothing has a place. */
export function timeScale(
  places: readonly Day[],
  days: readonly DayRange[],
  left: number,
  width: number,
): TimeScale | undefined {
  if (places.length === 0) return undefined;
  const [lo, hi] = [least(places), greatest(places)];
  const reach = Math.max((hi - lo) * mostStretch, stretchAllowed);
  const first = Math.max(least([lo, ...days.flatMap(({ lo: day }) => day ?? [])]), lo - reach);
  const last = Math.min(greatest([hi, ...days.flatMap(({ hi: day }) => day ?? [])]), hi + reach);
  const missing = Math.max(0, leastYears * daysInYear - (last - first)) / 2;
  return scaleOf(first - missing, last + missing, left, width);
}

function scaleOf(first: Day, last: Day, left: number, width: number): TimeScale {
  const x = (day: Day) => left + ((day - first) / (last - first)) * width;
  return { left, right: left + width, first, last, x, ticks: ticksOf(first, last, x, width) };
}

function ticksOf(first: Day, last: Day, x: (day: Day) => number, width: number): Tick[] {
  const perYear = (width / (last - first)) * daysInYear;
  const labelled = stepWithRoom(perYear, leastLabelRoom);
  const finer = yearSteps.find(step => labelled % step === 0 && step * perYear >= leastTickRoom) ?? labelled;
  const ticks: Tick[] = [];
  const from = Math.ceil(yearAt(first) / finer) * finer;
  for (let year = from; daysFromCivil(year, 1, 1) <= last; year += finer) {
    const day = daysFromCivil(year, 1, 1);
    if (day >= first) ticks.push({ x: x(day), ...(year % labelled === 0 ? { year } : {}) });
  }
  return ticks;
}

function stepWithRoom(perYear: number, room: number): number {
  return yearSteps.find(step => step * perYear >= room) ?? yearSteps.at(-1)!;
}

function yearAt(day: Day): number {
  return civilFromDays(Math.floor(day)).year;
}

function least(days: readonly Day[]): Day {
  return days.reduce((a, b) => Math.min(a, b));
}

function greatest(days: readonly Day[]): Day {
  return days.reduce((a, b) => Math.max(a, b));
}
