import type { DatedDays } from '../../domain/dates/dated-days.ts';
import { kindOfId } from '../../domain/model/id.ts';
import { openDay } from '../../domain/reach/open-day.ts';
import type { PutRow } from '../graph-store.ts';
import { kindNumber } from './row-codec.ts';

/**
 * Days of a dating on their way to the writer: ids of the dating and of what it dates, its kind, spread, first and last; or
 * the date in their place, '' for none.
 */
export type WrittenDays = readonly [
  dating: string,
  record: string,
  kind: number,
  spread: number,
  first: number,
  last: number,
  date: string,
];

/** A dating that has no days is told by its id alone, where it may have had some before. */
export type WrittenDating = WrittenDays | readonly [dating: string];

/** Days as they are read. */
export type ReadDays = readonly [first: number, last: number, date: string | null];

export function encodeDating({ row, isNew, days }: PutRow): readonly WrittenDating[] {
  if (row.kind !== 'Dating') return [];
  if (days === undefined) return isNew === true ? [] : [[row.id]];
  const kind = kindNumber(kindOfId(row.of)!);
  if (typeof days === 'string') return [[row.id, row.of, kind, ofDate, 0, 0, days]];
  const [first, last] = [days.lo ?? -openDay, days.hi ?? openDay];
  return [[row.id, row.of, kind, spreadOf(first, last), first, last, '']];
}

export function decodeDays([first, last, date]: ReadDays): DatedDays {
  if (date !== null) return date;
  return { ...(first === -openDay ? {} : { lo: first }), ...(last === openDay ? {} : { hi: last }) };
}

/** Stands for the spread of what is found by a date. */
const ofDate = -1;

/** Greatest spread there can be. */
export const widest = spreadOf(-openDay, openDay);

/** Number of binary digits of the days from the first to the last. */
function spreadOf(first: number, last: number): number {
  return 32 - Math.clz32(last - first);
}
