import type { DayRange } from '../domain/dates/day-bounds.ts';
import { tryEdtf } from '../domain/dates/edtf.ts';
import type { SlackConvention } from '../domain/dates/slack.ts';
import { counts } from '../domain/model/counted.ts';
import type { ClaimOf } from '../domain/model/row.ts';

/** The days by which a record is found for a dating of it, if the dating counts and has a date that says any. */
export function datedDays(dating: ClaimOf<'Dating'>, slack: SlackConvention): DayRange | undefined {
  if (dating.date === undefined || !counts(dating)) return undefined;
  const bounds = tryEdtf(dating.date, slack);
  if (bounds === undefined || bounds.beyondCalendar) return undefined;
  const { lo, hi } = bounds;
  return { ...(lo === undefined ? {} : { lo }), ...(hi === undefined ? {} : { hi }) };
}
