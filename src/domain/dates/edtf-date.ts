import type { Day, DayRange } from './day-bounds.ts';
import { completions } from './edtf-digits.ts';
import { type EdtfFault, edtfFault } from './edtf-fault.ts';
import { readLongYear } from './edtf-long-year.ts';
import { subyear } from './edtf-subyear.ts';
import type { SlackScale } from './slack.ts';

/** A qualifier and what it stands beside: `?` uncertain, `~` approximate, `%` both. */
export interface EdtfMark {
  readonly sign: '?' | '~' | '%';
  /** 0 year, 1 month or part of a year, 2 day. */
  readonly component: 0 | 1 | 2;
  readonly scale: SlackScale;
}

/** The days of one date; beyond the calendar one range open both ways, and only years. */
export interface EdtfSpan {
  readonly parts: readonly DayRange[];
  readonly convex: boolean;
  readonly lo?: Day | undefined;
  readonly hi?: Day | undefined;
  readonly yearLo: number;
  readonly yearHi: number;
}

/** One date of an expression, without slack. */
export interface EdtfDate extends EdtfSpan {
  readonly beyondCalendar: boolean;
  /** Members that a `..` joins must share this. */
  readonly precision: string;
  /** Ascending by component; two at most on one component. */
  readonly marks: readonly EdtfMark[];
  readonly components: 1 | 2 | 3;
  readonly unspecified: boolean;
  readonly level: 0 | 1 | 2;
  /** The year named in an expression with significant digits (`1950S2`). */
  readonly estimate?: number | undefined;
}

const calendarForm = /^([?~%]?)(-?)([\dX]{4})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?))?)?$/;

/** Reads one date without time of day: not an interval, not a set. Linear in the length of the text. */
export function readDate(text: string): EdtfDate | EdtfFault {
  const match = calendarForm.exec(text);
  return match === null ? readLongYear(text) : readCalendarDate(match);
}

function readCalendarDate(match: RegExpExecArray): EdtfDate | EdtfFault {
  const [, yearLeft, sign, year = '', yearRight, monthLeft, month, monthRight, dayLeft, day, dayRight] = match;
  const found = completions({ negative: sign === '-', year, month, day });
  if (found === undefined) return edtfFault(missingDate(sign, year, month, day));
  const components = day !== undefined ? 3 : month !== undefined ? 2 : 1;
  const part = month === undefined ? undefined : subyear(Number(month));
  const scales = [yearScale(year), part === undefined ? 'month' : 'season', 'day'] as const;
  const signs = [yearLeft, yearRight, monthLeft, monthRight, dayLeft, dayRight];
  const marks = signs.flatMap((each, index) => markOf(each, Math.floor(index / 2) as 0 | 1 | 2, scales));
  const unspecified = match[0].includes('X');
  const rank = Math.max(
    sign === '-' ? 1 : 0,
    part?.level ?? 0,
    unspecified ? unspecifiedLevel(year, month, day) : 0,
    marks.length === 0 ? 0 : marks.length === 1 && signs[components * 2 - 1] !== '' ? 1 : 2,
  );
  const precision = components === 1 ? yearPrecision(year) : components === 3 ? 'day' : (part?.grouping ?? 'month');
  const level = rank as 0 | 1 | 2;
  return { ...found, beyondCalendar: false, precision, marks, components, unspecified, level };
}

function markOf(sign: string | undefined, component: 0 | 1 | 2, scales: readonly SlackScale[]): EdtfMark[] {
  if (sign !== '?' && sign !== '~' && sign !== '%') return [];
  return [{ sign, component, scale: scales[component] ?? 'day' }];
}

/**
 * Level 1, "Unspecified digit(s) from the right": one or two digits of a year alone, a whole month, a whole day,
 * or both. All else is level 2.
 */
function unspecifiedLevel(year: string, month: string | undefined, day: string | undefined): 1 | 2 {
  const rest = `${month ?? ''}${day ?? ''}`;
  if (year.includes('X')) return rest === '' && /^\d\d+X+$/.test(year) ? 1 : 2;
  return /^(?:\d\d)?(?:XX){1,2}$/.test(rest) ? 1 : 2;
}

function unspecifiedAtRight(year: string): number {
  return year.length - year.replace(/X+$/, '').length;
}

function yearScale(year: string): SlackScale {
  const count = unspecifiedAtRight(year);
  return count === 0 ? 'year' : count === 1 ? 'decade' : 'century';
}

function yearPrecision(year: string): string {
  return ['year', 'decade', 'century', 'millennium', 'any year'][unspecifiedAtRight(year)] ?? 'any year';
}

function missingDate(
  sign: string | undefined,
  year: string,
  month: string | undefined,
  day: string | undefined,
): string {
  if (sign === '-' && year === '0000') return 'year 0 as 0000';
  if (day !== undefined && subyear(Number(month)) !== undefined) return 'no day after a season or part of a year';
  if (day === undefined) return 'a month 01 to 12, or 21 to 41 for a season or part of a year';
  return 'a day that the month has, in a month 01 to 12';
}
