import { hasDay } from './calendar.ts';
import { exact, type SingleDate } from './phrase-single-date.ts';

const rule = 'phrase-28-figures';
const slashed = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/;
const dotted = /^(\d{1,2})\. ?(\d{1,2})\. ?(\d{4})$/;
const monthOnly = /^(\d{1,2})[/.](\d{4})$/;
const iso = /^(\d{4})-(\d{2})-(\d{2})$/;

/**
 * Dates in figures. Dots are the continental day.month.year; slashes are month/day/year to some and day/month/year
 * to others: where both are days, the reading is the one or the other. Common practice.
 */
export function readNumericDate(text: string): SingleDate | undefined {
  const slashes = slashed.exec(text)?.slice(1).map(Number);
  if (slashes !== undefined) return dayOrMonth(slashes[0]!, slashes[1]!, slashes[2]!);
  const dots = dotted.exec(text)?.slice(1).map(Number);
  if (dots !== undefined) return theDay(dots[2]!, dots[1]!, dots[0]!);
  const figures = iso.exec(text)?.slice(1).map(Number);
  if (figures !== undefined) return theDay(figures[0]!, figures[1]!, figures[2]!);
  const [month, year] = monthOnly.exec(text)?.slice(1) ?? [];
  if (month === undefined || Number(month) < 1 || Number(month) > 12) return undefined;
  return exact({ digits: `${year}-${month.padStart(2, '0')}` }, rule);
}

function dayOrMonth(first: number, second: number, year: number): SingleDate | undefined {
  const dayFirst = theDay(year, second, first);
  const monthFirst = theDay(year, first, second);
  if (dayFirst === undefined || monthFirst === undefined || first === second) return dayFirst ?? monthFirst;
  const members = [dayFirst.unit, monthFirst.unit].sort((a, b) => (a.digits < b.digits ? -1 : 1));
  return {
    value: { shape: 'oneOf', spans: members },
    unit: { digits: String(year).padStart(4, '0') },
    rule,
    flags: ['day-or-month'],
  };
}

function theDay(year: number, month: number, day: number): SingleDate | undefined {
  if (!hasDay(year, month, day)) return undefined;
  const digits = [String(year).padStart(4, '0'), ...[month, day].map(part => String(part).padStart(2, '0'))].join('-');
  return exact({ digits }, rule);
}
