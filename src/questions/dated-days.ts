import { tryEdtf } from '../domain/dates/edtf.ts';
import { restsOnSlack } from '../domain/dates/slacks-used.ts';
import { counts } from '../domain/model/counted.ts';
import type { ClaimOf } from '../domain/model/row.ts';
import type { DatedDays } from '../store/graph-store.ts';

/** What a record is found by for a dating of it, if the dating counts and has a date that says any days. */
export function datedDays(dating: ClaimOf<'Dating'>): DatedDays | undefined {
  if (dating.date === undefined || !counts(dating)) return undefined;
  const bounds = tryEdtf(dating.date);
  if (bounds === undefined || bounds.beyondCalendar) return undefined;
  if (restsOnSlack(dating.date)) return dating.date;
  const { lo, hi } = bounds;
  return { ...(lo === undefined ? {} : { lo }), ...(hi === undefined ? {} : { hi }) };
}
