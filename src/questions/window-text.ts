import { formatDay } from '../domain/dates/calendar.ts';
import type { EditionWindow, WindowKey } from '../store/graph-store.ts';

/** A window in words, equal for equal windows alone. */
export function windowText({ profile, dateClass, detail, first, last }: WindowKey): string {
  const day = (number: number | undefined): string => (number === undefined ? 'open' : formatDay(number));
  const more = detail === undefined ? '' : `, ${detail}`;
  return `${day(first)} to ${day(last)}, ${profile}, ${dateClass}${more}`;
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
