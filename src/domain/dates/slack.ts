import { civilFromDays, daysFromCivil, daysInMonth } from './calendar.ts';
import type { Day, DayRange } from './day-bounds.ts';

/**
 * How far an approximate date may lie outside what is written, on both sides, by the precision of what is marked.
 * A convention: editable, and shown with every answer that rests on it. Whole numbers, none below 0.
 */
export interface SlackConvention {
  /** Days around an approximate day. */
  readonly day: number;
  /** Months around an approximate month. */
  readonly month: number;
  /** Months around an approximate season, quarter, four-month term or half-year. */
  readonly season: number;
  /** Years around an approximate year. */
  readonly year: number;
  /** Years around an approximate decade. */
  readonly decade: number;
  /** Years around an approximate century or anything longer. */
  readonly century: number;
  /** What `?` widens, as a factor of what `~` would: 0 leaves the days alone, 1 widens like `~`. */
  readonly uncertainFactor: number;
  /** Years that close the open side of a one-of set (`[..1764]`); absent: it stays open. */
  readonly openSetBound?: number | undefined;
}

/** The slacks used unless a question brings its own: five years are common practice in cataloguing handbooks. */
export const defaultSlack: SlackConvention = Object.freeze({
  ...{ day: 7, month: 1, season: 3, year: 5, decade: 5, century: 25 },
  uncertainFactor: 0,
});

export type SlackScale = 'day' | 'month' | 'season' | 'year' | 'decade' | 'century';

/** A length in calendar units. */
export interface SlackAmount {
  readonly months: number;
  readonly days: number;
}

/** The slack of something marked `~`, `?` or `%` (both) at a scale. */
export function slackAmount(scale: SlackScale, mark: '~' | '?' | '%', slack: SlackConvention): SlackAmount {
  const factor = factorOf(mark, slack);
  // What widens nothing does not rest on the scale.
  const count = factor === 0 ? 0 : Math.ceil(slack[scale] * factor);
  if (scale === 'day') return { months: 0, days: count };
  if (scale === 'month' || scale === 'season') return { months: count, days: 0 };
  return { months: 12 * count, days: 0 };
}

function factorOf(mark: '~' | '?' | '%', slack: SlackConvention): number {
  if (mark === '~') return 1;
  return mark === '?' ? slack.uncertainFactor : Math.max(1, slack.uncertainFactor);
}

/** The range moved outward on both sides by the largest of the amounts; open ends stay open. */
export function widenRange(range: DayRange, amounts: readonly SlackAmount[]): DayRange {
  let { lo, hi } = range;
  for (const amount of amounts) {
    if (range.lo !== undefined) lo = Math.min(lo!, earlierBy(range.lo, amount));
    if (range.hi !== undefined) hi = Math.max(hi!, laterBy(range.hi, amount));
  }
  return { lo, hi };
}

/** A first day moved earlier. In a month too short for it the day becomes the last of that month. */
export function earlierBy(first: Day, amount: SlackAmount): Day {
  return (amount.months === 0 ? first : shiftMonths(first, -amount.months, false)) - amount.days;
}

/** A last day moved later (or earlier for a negative amount). The end of a month stays the end of a month. */
export function laterBy(last: Day, amount: SlackAmount): Day {
  return (amount.months === 0 ? last : shiftMonths(last, amount.months, true)) + amount.days;
}

function shiftMonths(number: Day, months: number, keepMonthEnd: boolean): Day {
  const { year, month, day } = civilFromDays(number);
  const count = year * 12 + (month - 1) + months;
  const newYear = Math.floor(count / 12);
  const newMonth = count - newYear * 12 + 1;
  const length = daysInMonth(newYear, newMonth);
  const atEnd = keepMonthEnd && day === daysInMonth(year, month);
  return daysFromCivil(newYear, newMonth, atEnd ? length : Math.min(day, length));
}
