import { counts } from '../model/counted.ts';
import type { ClaimOf } from '../model/row.ts';
import type { DayRange } from './day-bounds.ts';
import { tryEdtf } from './edtf.ts';
import { restsOnSlack } from './slacks-used.ts';

/** Days that a date allows; the date itself, EDTF, where they rest on how approximate dates are read, which is said when it is asked. */
export type DatedDays = DayRange | string;

/** What a record is found by for a dating of it, if the dating counts and has a date that says any days. */
export function datedDays(dating: ClaimOf<'Dating'>): DatedDays | undefined {
  if (dating.date === undefined || !counts(dating)) return undefined;
  const bounds = tryEdtf(dating.date);
  if (bounds === undefined || bounds.beyondCalendar) return undefined;
  if (restsOnSlack(dating.date)) return dating.date;
  const { lo, hi } = bounds;
  return { ...(lo === undefined ? {} : { lo }), ...(hi === undefined ? {} : { hi }) };
}
