import { daysOfYear } from './calendar.ts';
import type { EdtfDate, EdtfMark, EdtfSpan } from './edtf-date.ts';
import { type EdtfFault, edtfFault } from './edtf-fault.ts';

const yearForm = /^([?~%]?)(Y?)(-?)(\d+)(?:E([1-9]\d*))?(?:S(\d+))?([?~%]?)$/;

const tooLarge = `a year of at most ${Number.MAX_SAFE_INTEGER}`;

/**
 * Reads years of more than four digits (`Y12000`), exponents (`Y-17E7`) and significant digits (`1950S2`: all years
 * that share the first two digits with 1950). Numbers too large to be exact are refused before they are computed.
 */
export function readLongYear(text: string): EdtfDate | EdtfFault {
  const match = yearForm.exec(text);
  if (match === null) return edtfFault('a date such as 1764, 1764-05, 1764-05-12, 176X or 1764~');
  const [, left = '', prefix, sign, digits = '', exponent, significant, right = ''] = match;
  const wrongForm = prefix === '' ? faultOfShortForm(digits, exponent, significant) : faultOfLongForm(digits, exponent);
  if (wrongForm !== undefined) return wrongForm;
  if (significant !== undefined && !/^[1-9]\d?$/.test(significant)) return edtfFault('1 to 99 significant digits');
  const value = Number(digits) * 10 ** Number(exponent ?? 0);
  if (prefix === 'Y' && value < 10_000) return edtfFault('a year of more than four digits after Y');
  if (sign === '-' && value === 0) return edtfFault('year 0 as 0000');
  const [low, high] = sharing(value, significant);
  if (high > Number.MAX_SAFE_INTEGER) return edtfFault(tooLarge);
  const years = sign === '-' ? ofYears(-high, -low) : ofYears(low, high);
  const estimate = significant === undefined ? undefined : sign === '-' ? -value : value;
  const wholly = left === '' && exponent === undefined && significant === undefined;
  return {
    ...years,
    precision: high === low ? 'year' : `${high - low + 1} years`,
    marks: [...markOf(left, high - low), ...markOf(right, high - low)],
    components: 1,
    unspecified: false,
    level: wholly ? 1 : 2,
    estimate,
  };
}

function faultOfShortForm(digits: string, exponent: string | undefined, significant: string | undefined) {
  const fourDigits = digits.length === 4 && exponent === undefined && significant !== undefined;
  return fourDigits ? undefined : edtfFault('a year of four digits, or Y before a year of more');
}

function faultOfLongForm(digits: string, exponent: string | undefined) {
  if (digits.startsWith('0')) return edtfFault('no 0 at the beginning of a year after Y');
  const length = digits.length + (exponent === undefined ? 0 : exponent.length > 2 ? 100 : Number(exponent));
  return length > 16 ? edtfFault(tooLarge) : undefined;
}

/** First and last number that share the first `significant` digits with the value. */
function sharing(value: number, significant: string | undefined): readonly [number, number] {
  const free = significant === undefined ? 0 : String(value).length - Number(significant);
  if (free <= 0) return [value, value];
  const unit = 10 ** free;
  const low = Math.floor(value / unit) * unit;
  return [low, low + unit - 1];
}

function markOf(sign: string, more: number): EdtfMark[] {
  if (sign !== '?' && sign !== '~' && sign !== '%') return [];
  return [{ sign, component: 0, scale: more === 0 ? 'year' : more < 10 ? 'decade' : 'century' }];
}

function ofYears(yearLo: number, yearHi: number): EdtfSpan & { readonly beyondCalendar: boolean } {
  if (Math.max(Math.abs(yearLo), Math.abs(yearHi)) > farthestYear) {
    return { parts: [{}], convex: true, yearLo, yearHi, beyondCalendar: true };
  }
  const [lo, hi] = [daysOfYear(yearLo).lo, daysOfYear(yearHi).hi];
  return { parts: [{ lo, hi }], convex: true, lo, hi, yearLo, yearHi, beyondCalendar: false };
}

/** Years farther than this from year 0 have no days, only numbers. */
const farthestYear = 200_000;
