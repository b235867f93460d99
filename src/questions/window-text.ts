import { formatDay } from '../domain/dates/calendar.ts';
import type { DatedDays } from '../domain/dates/dated-days.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';
import type { EditionWindow, WindowKey } from '../store/graph-store.ts';

/** Days in figures, with open ends. */
export function rangeText({ lo, hi }: DayRange): string {
  const day = (number: number | undefined): string => (number === undefined ? 'open' : formatDay(number));
  return `${day(lo)} to ${day(hi)}`;
}

/** Days by which a record is found, or the date that they are read from when it is asked. */
export function daysText(days: DatedDays): string {
  return typeof days === 'string' ? `of ${days}` : rangeText(days);
}

/** A window in words, equal for equal windows alone. */
export function windowText({ profile, dateClass, detail, first, last }: WindowKey): string {
  const more = detail === undefined ? '' : `, ${detail}`;
  return `${rangeText({ lo: first, hi: last })}, ${profile}, ${dateClass}${more}`;
}

/** The window of an edition in words, with what filters ask. */
export function editionWindowText({ form, languages = [], illustrated, ...window }: EditionWindow): string {
  const traits = [
    ...(form === undefined ? [] : [form]),
    ...languages,
    ...(illustrated === true ? ['illustrated'] : []),
  ];
  return [windowText(window), ...traits].join(', ');
}
