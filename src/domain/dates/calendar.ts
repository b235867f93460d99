import { PlatestemmaError } from '../../errors.ts';
import type { Day, DayRange } from './day-bounds.ts';

/** A calendar date; the year is astronomical (0 = 1 BC), month and day count from 1. */
export interface CivilDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/**
 * Day number of a date in the proleptic Gregorian calendar. The date is taken to exist: `hasDay` asks.
 * Method: eras of 400 years that begin on 1 March (Howard Hinnant, "chrono-Compatible Low-Level Date Algorithms").
 */
export function daysFromCivil(year: number, month: number, day: number): Day {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}

/** The proleptic Gregorian date of a day number; inverse of `daysFromCivil`. */
export function civilFromDays(number: Day): CivilDate {
  const z = number + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  const day = dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
}

function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** Length of a month of 1..12; 0 for any other month. */
export function daysInMonth(year: number, month: number): number {
  return month === 2 && isLeapYear(year) ? 29 : (monthLengths[month - 1] ?? 0);
}

export function hasDay(year: number, month: number, day: number): boolean {
  return day >= 1 && day <= daysInMonth(year, month);
}

/** First and last day of a Gregorian year. */
export function daysOfYear(year: number): { readonly lo: Day; readonly hi: Day } {
  return { lo: daysFromCivil(year, 1, 1), hi: daysFromCivil(year, 12, 31) };
}

/**
 * Day number of a date in the Julian calendar whose year begins on 1 January (an Old Style year that began on
 * 25 March is the caller's to turn). Refuses a date which that calendar does not have.
 */
export function dayOfJulian(year: number, month: number, day: number): Day {
  if (!Number.isSafeInteger(year) || !Number.isInteger(day) || day < 1 || day > daysInJulianMonth(year, month)) {
    throw unreadable('a date of the Julian calendar', `${year}-${month}-${day}`);
  }
  const a = Math.floor((14 - month) / 12);
  const y = year + 4800 - a;
  const m = month + 12 * a - 3;
  const julianDayNumber = day + Math.floor((153 * m + 2) / 5) + 365 * y + Math.floor(y / 4) - 32_083;
  return julianDayNumber - 2_440_588;
}

/** Length of a month of 1..12 in the Julian calendar; 0 for any other month. */
export function daysInJulianMonth(year: number, month: number): number {
  return month === 2 && year % 4 === 0 ? 29 : (monthLengths[month - 1] ?? 0);
}

/** Gregorian first days of the years I to XIV of the French Republic, and of a XV that was never counted out. */
const republicanStarts = [
  ...[daysFromCivil(1792, 9, 22), daysFromCivil(1793, 9, 22), daysFromCivil(1794, 9, 22), daysFromCivil(1795, 9, 23)],
  ...[daysFromCivil(1796, 9, 22), daysFromCivil(1797, 9, 22), daysFromCivil(1798, 9, 22), daysFromCivil(1799, 9, 23)],
  ...[daysFromCivil(1800, 9, 23), daysFromCivil(1801, 9, 23), daysFromCivil(1802, 9, 23), daysFromCivil(1803, 9, 24)],
  ...[daysFromCivil(1804, 9, 23), daysFromCivil(1805, 9, 23), daysFromCivil(1806, 9, 23)],
] as const;

/** The calendar was given up on 1 January 1806. */
const republicanEnd = daysFromCivil(1805, 12, 31);

/** First and last day of a year 1..14 of the French Republic; year 14 ends with 31 December 1805. */
export function republicanYear(year: number): DayRange & { readonly lo: Day; readonly hi: Day } {
  const lo = republicanStarts[year - 1];
  const next = republicanStarts[year];
  if (lo === undefined || next === undefined) throw unreadable('a year 1 to 14 of the French Republic', `${year}`);
  return { lo, hi: Math.min(next - 1, republicanEnd) };
}

/**
 * Day number of a date of the French Republic: months 1 (Vendémiaire) to 12 (Fructidor) of 30 days, and 13 for the
 * five or six complementary days. Refuses a date which that calendar does not have.
 */
export function republicanDay(year: number, month: number, day: number): Day {
  const { lo, hi } = republicanYear(year);
  const result = lo + 30 * (month - 1) + day - 1;
  const monthsAndDays = Number.isInteger(month) && Number.isInteger(day) && month >= 1 && month <= 13 && day >= 1;
  if (!monthsAndDays || day > 30 || result > hi) {
    throw unreadable('a date of the French Republic', `year ${year}, month ${month}, day ${day}`);
  }
  return result;
}

/**
 * A day as YYYY-MM-DD, proleptic Gregorian with astronomical years; a year of more than four digits takes the
 * prefix Y (EDTF, "Letter-prefixed calendar year"): `-0044-03-15`, `Y12000-01-01`.
 */
export function formatDay(number: Day): string {
  const { year, month, day } = civilFromDays(number);
  return `${formatYear(year)}-${two(month)}-${two(day)}`;
}

/** A year with at least four digits, prefixed with Y if it has more. */
export function formatYear(year: number): string {
  const digits = String(Math.abs(year)).padStart(4, '0');
  return `${digits.length > 4 ? 'Y' : ''}${year < 0 ? '-' : ''}${digits}`;
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}

const written = /^(?:(-?\d{4})|Y(-?[1-9]\d{4,5}))-(\d\d)-(\d\d)$/;

/** Inverse of `formatDay`. Refuses other forms, days that do not exist, and years of more than six digits. */
export function parseDay(text: string): Day {
  const match = text.length <= 16 ? written.exec(text) : null;
  if (match !== null && !text.startsWith('-0000')) {
    const [year, month, day] = [Number(match[1] ?? match[2]), Number(match[3]), Number(match[4])];
    if (hasDay(year, month, day)) return daysFromCivil(year, month, day);
  }
  throw unreadable('a day as YYYY-MM-DD', text);
}

function unreadable(expected: string, came: string): PlatestemmaError {
  return new PlatestemmaError('DATE_UNREADABLE', `expected ${expected}, came ${JSON.stringify(came.slice(0, 60))}`);
}
