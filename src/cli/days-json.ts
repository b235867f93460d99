import { formatDay } from '../domain/dates/calendar.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';

/** Day bounds with the names of the API: days written out, open ends null. */
export function daysJson(range: DayRange): { first: string | null; last: string | null } {
  return {
    first: range.lo === undefined ? null : formatDay(range.lo),
    last: range.hi === undefined ? null : formatDay(range.hi),
  };
}
