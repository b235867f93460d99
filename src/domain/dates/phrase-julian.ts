import { dayOfJulian, daysInJulianMonth, formatDay } from './calendar.ts';
import type { DateValue, Moment, Span } from './phrase-value.ts';

/** First and last day, proleptic Gregorian, of a date of the Julian calendar. */
export interface TurnedDays {
  readonly from: string;
  readonly to: string;
}

/**
 * The Gregorian days of a day, month or year in digits of the Julian calendar. A year may have begun on 1 January or,
 * as in England, on 25 March, and is taken to run from the first to the day before the second of the next year.
 * Undefined for other digits (`17XX`, seasons) and for days that calendar does not have.
 */
export function turnedDays(digits: string): TurnedDays | undefined {
  if (!/^\d{4}(?:-\d\d){0,2}$/.test(digits)) return undefined;
  const [year = 0, month, day] = digits.split('-').map(Number);
  if (month === undefined) return days([year, 1, 1], [year + 1, 3, 24]);
  const length = daysInJulianMonth(year, month);
  if (length === 0) return undefined;
  if (day === undefined) return days([year, month, 1], [year, month, length]);
  return day >= 1 && day <= length ? days([year, month, day]) : undefined;
}

/** A value of the Julian calendar in the Gregorian; what has no days of its own there stays as it is. */
export function turnedValue(value: DateValue): DateValue {
  if (value.shape === 'interval') return { shape: 'interval', ...turnedSpan(value) };
  const members = value.shape === 'one' ? [value.moment] : value.spans;
  const spans = members.map(member => ('digits' in member ? turnedMoment(member) : turnedSpan(member)));
  const [only] = spans;
  return value.shape === 'one' && only !== undefined && 'digits' in only
    ? { shape: 'one', moment: only }
    : { shape: 'oneOf', spans };
}

function turnedMoment(moment: Moment): Moment | Span {
  const turned = turnedDays(moment.digits);
  if (turned === undefined) return moment;
  const from = { ...moment, digits: turned.from };
  return turned.from === turned.to ? from : { from, to: { ...moment, digits: turned.to } };
}

/** The outer days of both ends. */
function turnedSpan({ from, to }: Span): Span {
  return {
    ...(from === undefined ? {} : { from: { ...from, digits: turnedDays(from.digits)?.from ?? from.digits } }),
    ...(to === undefined ? {} : { to: { ...to, digits: turnedDays(to.digits)?.to ?? to.digits } }),
  };
}

type Parts = readonly [year: number, month: number, day: number];

function days(first: Parts, last: Parts = first): TurnedDays {
  return { from: formatDay(dayOfJulian(...first)), to: formatDay(dayOfJulian(...last)) };
}
