import type { DayRange } from './day-bounds.ts';
import { hullOf, mergeRanges } from './day-ranges.ts';
import type { EdtfDate, EdtfSpan } from './edtf-date.ts';
import { mostParts } from './edtf-digits.ts';
import { earlierBy, laterBy, type SlackAmount, type SlackConvention, slackAmount, widenRange } from './slack.ts';

/**
 * The days a date may mean once its qualifiers are taken at their slack; the date itself without a slack. A qualifier
 * counts at the scale of what it stands beside (to the right of a component it covers all to its left, and the finest
 * decides); of several the largest counts.
 */
export function widenDate(date: EdtfDate, slack: SlackConvention | undefined): EdtfSpan {
  if (slack === undefined || date.marks.length === 0) return date;
  const amounts = date.marks.map(mark => slackAmount(mark.scale, mark.sign, slack)).filter(isPositive);
  if (amounts.length === 0) return date;
  const years = Math.max(...amounts.map(amount => Math.floor(amount.months / 12)));
  if (date.beyondCalendar) return { ...date, yearLo: date.yearLo - years, yearHi: date.yearHi + years };
  const yearAlone = date.components > 1 && date.marks.every(mark => mark.component === 0);
  const parts = yearAlone ? shiftByYears(date.parts, years) : date.parts.map(part => widenRange(part, amounts));
  const merged = parts === undefined ? [widenRange(hullOf(date.parts), amounts)] : mergeRanges(parts);
  const capped = parts === undefined || (!date.convex && date.parts.length === 1);
  const convex = !capped && merged.length === 1;
  return { parts: merged, convex, ...hullOf(merged), yearLo: date.yearLo - years, yearHi: date.yearHi + years };
}

/** Only the year is approximate: the same day or month in each year near it. Undefined if these are too many. */
function shiftByYears(parts: readonly DayRange[], years: number): DayRange[] | undefined {
  if (parts.length * (2 * years + 1) > mostParts) return undefined;
  const shifts = Array.from({ length: 2 * years + 1 }, (_, index) => 12 * (index - years));
  return shifts.flatMap(months => parts.map(part => shiftRange(part, months)));
}

function shiftRange(part: DayRange, months: number): DayRange {
  const lo = part.lo === undefined ? undefined : earlierBy(part.lo, { months: -months, days: 0 });
  const hi = part.hi === undefined ? undefined : laterBy(part.hi, { months, days: 0 });
  return { lo, hi };
}

function isPositive(amount: SlackAmount): boolean {
  return amount.months > 0 || amount.days > 0;
}
