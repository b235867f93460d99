import type { DayRange } from '../../domain/dates/day-bounds.ts';
import { kindOfId } from '../../domain/model/id.ts';
import { openDay } from '../../domain/reach/open-day.ts';
import type { PutRow } from '../graph-store.ts';
import { kindNumber } from './row-codec.ts';

/** Days of a dating on their way to the writer: ids of the dating and of what it dates, its kind, spread, first and last. */
export type WrittenDays = readonly [
  dating: string,
  record: string,
  kind: number,
  spread: number,
  first: number,
  last: number,
];

/** A dating that has no days is told by its id alone, where it may have had some before. */
export type WrittenDating = WrittenDays | readonly [dating: string];

export function encodeDating({ row, isNew, days }: PutRow): readonly WrittenDating[] {
  if (row.kind !== 'Dating') return [];
  if (days === undefined) return isNew === true ? [] : [[row.id]];
  const [first, last] = [days.lo ?? -openDay, days.hi ?? openDay];
  return [[row.id, row.of, kindNumber(kindOfId(row.of)!), spreadOf(first, last), first, last]];
}

export function decodeDays([first, last]: readonly [first: number, last: number]): DayRange {
  return { ...(first === -openDay ? {} : { lo: first }), ...(last === openDay ? {} : { hi: last }) };
}

/** Greatest spread there can be. */
export const widest = spreadOf(-openDay, openDay);

/** Number of binary digits of the days from the first to the last. */
function spreadOf(first: number, last: number): number {
  return 32 - Math.clz32(last - first);
}
