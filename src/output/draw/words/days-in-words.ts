import { civilFromDays } from '../../../domain/dates/calendar.ts';
import type { Day, DayRange } from '../../../domain/dates/day-bounds.ts';
import { year, years } from '../../cite/date-words.ts';

const months = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November'],
  'December',
];

/** Days as a caption has them: as short as they can be said without losing more than days within a year. */
export function daysInWords({ lo, hi }: DayRange): string {
  if (lo === undefined) return hi === undefined ? 'no date' : `not after ${yearOf(hi)}`;
  if (hi === undefined) return `not before ${yearOf(lo)}`;
  if (lo > hi) return `not before ${yearOf(lo)}, yet not after ${yearOf(hi)}`;
  return yearOf(lo) === yearOf(hi) ? withinYear(lo, hi) : years(civilFromDays(lo).year, civilFromDays(hi).year);
}

function withinYear(lo: Day, hi: Day): string {
  const [from, to] = [civilFromDays(lo), civilFromDays(hi)];
  const month = months[from.month - 1];
  if (lo === hi) return `${from.day} ${month} ${year(from.year)}`;
  return from.month === to.month ? `${month} ${year(from.year)}` : year(from.year);
}

function yearOf(day: Day): string {
  return year(civilFromDays(day).year);
}
