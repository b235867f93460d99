import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  civilFromDays,
  dayOfJulian,
  daysFromCivil,
  daysInMonth,
  formatDay,
  parseDay,
  republicanDay,
  republicanYear,
} from '../../../src/domain/dates/calendar.ts';

const anyDay = fc.integer({ min: -73_000_000, max: 73_000_000 });

describe('day numbers', () => {
  test.each([
    ['0001-01-01', -719_162],
    ['1582-10-15', -141_427],
    ['1752-09-14', -79_366],
    ['1764-01-01', -75_240],
    ['1764-02-29', -75_181],
    ['1764-12-31', -74_875],
    ['1790-01-01', -65_743],
    ['1790-12-31', -65_379],
    ['1900-02-28', -25_509],
    ['1900-03-01', -25_508],
    ['1970-01-01', 0],
    ['2000-02-29', 11_016],
  ])('%s is day %i and back', (text, number) => {
    expect(parseDay(text)).toBe(number);
    expect(formatDay(number)).toBe(text);
  });

  test('agree with the proleptic Gregorian calendar of ECMAScript wherever that reaches', () => {
    fc.assert(
      fc.property(fc.integer({ min: -99_000_000, max: 99_000_000 }), number => {
        const date = new Date(number * 86_400_000);
        const expected = { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
        expect(civilFromDays(number)).toEqual(expected);
      }),
      { numRuns: 2000 },
    );
  });

  test('go to a date and back, and the next day is the next date', () => {
    fc.assert(
      fc.property(anyDay, number => {
        const { year, month, day } = civilFromDays(number);
        expect(daysFromCivil(year, month, day)).toBe(number);
        const next = civilFromDays(number + 1);
        const sameMonth = day < daysInMonth(year, month);
        expect(next.day).toBe(sameMonth ? day + 1 : 1);
      }),
      { numRuns: 2000 },
    );
  });

  test('are written and read back, also before year 0 and beyond four digits', () => {
    expect(formatDay(daysFromCivil(-44, 3, 15))).toBe('-0044-03-15');
    expect(formatDay(daysFromCivil(12_000, 1, 1))).toBe('Y12000-01-01');
    expect(formatDay(daysFromCivil(-12_000, 1, 1))).toBe('Y-12000-01-01');
    fc.assert(fc.property(anyDay, number => parseDay(formatDay(number)) === number));
  });

  test.each(['1764-02-30', '1700-02-29', '-0000-01-01', '1764-5-1', 'Y1764-05-01', '17640501', '1764-05', ''])(
    'a day is not written %j',
    text => expect(() => parseDay(text)).toThrow(expect.objectContaining({ code: 'DATE_UNREADABLE' })),
  );
});

describe('Julian dates', () => {
  test.each([
    [1752, 9, 2, '1752-09-13', -79_367],
    [1582, 10, 5, '1582-10-15', -141_427],
    [1723, 3, 24, '1723-04-04', -90_122],
    [1700, 2, 29, '1700-03-11', -98_546],
  ])('%i-%i-%i is %s', (year, month, day, gregorian, number) => {
    expect(formatDay(dayOfJulian(year, month, day))).toBe(gregorian);
    expect(dayOfJulian(year, month, day)).toBe(number);
  });

  test('a date the calendar lacks is refused', () => {
    expect(() => dayOfJulian(1701, 2, 29)).toThrow('expected a date of the Julian calendar, came "1701-2-29"');
    expect(() => dayOfJulian(1701, 13, 1)).toThrow('Julian');
  });
});

describe('the calendar of the French Republic', () => {
  test.each([
    [1, '1792-09-22', '1793-09-21'],
    [2, '1793-09-22', '1794-09-21'],
    [3, '1794-09-22', '1795-09-22'],
    [4, '1795-09-23', '1796-09-21'],
    [7, '1798-09-22', '1799-09-22'],
    [11, '1802-09-23', '1803-09-23'],
    [13, '1804-09-23', '1805-09-22'],
    [14, '1805-09-23', '1805-12-31'],
  ])('year %i is %s to %s', (year, lo, hi) => {
    expect(republicanYear(year)).toEqual({ lo: parseDay(lo), hi: parseDay(hi) });
  });

  // 18 Brumaire VIII, 9 Thermidor II and 11 Nivôse XIV (31 December 1805): the common history books.
  test.each([
    [8, 2, 18, '1799-11-09'],
    [2, 11, 9, '1794-07-27'],
    [14, 4, 10, '1805-12-31'],
    [3, 13, 6, '1795-09-22'],
  ])('year %i month %i day %i is %s', (year, month, day, gregorian) => {
    expect(formatDay(republicanDay(year, month, day))).toBe(gregorian);
  });

  test.each([
    [0, 1, 1],
    [15, 1, 1],
    [2, 13, 6],
    [2, 14, 1],
    [2, 1, 31],
    [2, 0, 1],
    [14, 4, 11],
  ])('year %i month %i day %i is refused', (year, month, day) => {
    expect(() => republicanDay(year, month, day)).toThrow(expect.objectContaining({ code: 'DATE_UNREADABLE' }));
  });
});
