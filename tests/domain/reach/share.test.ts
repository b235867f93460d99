import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysFromCivil, parseDay } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { type Share, share, shareLimit } from '../../../src/domain/reach/share.ts';
import { type LagDays, verdict } from '../../../src/domain/reach/verdict.ts';

const days = (lo: number, hi: number): DayRange => ({ lo, hi });
const between = (first: string, last: string): DayRange => ({ lo: parseDay(first), hi: parseDay(last) });
const lag = (least: number, most?: number): LagDays => ({ least, most });
const of1764 = between('1764-01-01', '1764-12-31');

const counted: [string, DayRange, LagDays, DayRange, bigint, bigint][] = [
  ['B1', days(0, 9), lag(2, 4), days(13, 20), 240n, 240n],
  ['B2', days(0, 9), lag(2, 4), days(5, 8), 54n, 120n],
  ['B3', days(0, 9), lag(2, 4), days(0, 1), 0n, 60n],
  ['B4', days(0, 1), lag(0, 0), days(0, 1), 3n, 4n],
  ['B5', days(0, 2), lag(0, 1), days(0, 3), 15n, 24n],
  ['B6', days(5, 5), lag(3, 3), days(8, 8), 1n, 1n],
];

test.each(counted)('%s counts its combinations', (_, p, l, o, inTime, all) => {
  expect(share(p, l, o)).toEqual({ inTime, all });
});

// The published fractions are in lowest terms.
test.each<[string, DayRange, LagDays, DayRange, bigint, bigint]>([
  ['B8', of1764, lag(2, 60), of1764, 3_329_075n, 7_903_404n],
  ['B9', between('1764-03-01', '1764-03-31'), lag(80, 540), of1764, 694_586n, 5_230_506n],
  [
    'B11',
    between('1765-01-01', '1775-12-31'),
    lag(2, 180),
    between('1768-01-01', '1772-12-31'),
    627_249_294n,
    1_313_691_561n,
  ],
  ['B12', of1764, lag(0, 30), between('1764-07-04', '1764-07-04'), 5301n, 11_346n],
])('%s has the share of its fraction', (_, p, l, o, above, below) => {
  const found = share(p, l, o)!;
  expect(found.inTime * below).toBe(found.all * above);
});

describe('open ends, in a frame', () => {
  const year = (y: number): DayRange => ({ lo: daysFromCivil(y, 1, 1), hi: daysFromCivil(y, 12, 31) });
  const until = (y: number): DayRange => ({ hi: daysFromCivil(y, 12, 31) });
  const from = (y: number): DayRange => ({ lo: daysFromCivil(y, 1, 1) });
  const framed = (range: DayRange, first: number): DayRange => ({
    lo: range.lo ?? daysFromCivil(first, 1, 1),
    hi: range.hi ?? daysFromCivil(1780, 12, 31),
  });

  test.each<[string, DayRange, DayRange, 0 | 1, string, string]>([
    ['B15', until(1760), year(1755), 1, '0.9084', '0.8638'],
    ['B16', year(1760), from(1758), 1, '0.8877', '0.8877'],
    ['B18', year(1750), until(1758), 0, '0.1427', '0.2158'],
  ])('%s', (_, p, o, limit, from1700, from1720) => {
    const l = lag(2, 60);
    expect(share(p, l, o)).toBeUndefined();
    expect(shareLimit(p, l, o)).toBe(limit);
    expect(fraction(share(framed(p, 1700), l, framed(o, 1700))!)).toBe(from1700);
    expect(fraction(share(framed(p, 1720), l, framed(o, 1720))!)).toBe(from1720);
  });

  test('that draw both ways have no limit', () => {
    expect(shareLimit(until(1760), lag(2), year(1755))).toBeUndefined();
    expect(shareLimit(year(1760), lag(2, 60), year(1755))).toBeUndefined();
  });
});

test('it stays exact where doubles would not', () => {
  const long = days(-10_000_000, 10_000_000);
  const n = 20_000_001n;
  expect(share(long, lag(0, 0), long)).toEqual({ inTime: (n * (n + 1n)) / 2n, all: n * n });
});

const range = fc.tuple(fc.integer({ min: -8, max: 8 }), fc.nat(5)).map(([lo, n]) => ({ lo, hi: lo + n }));
const lags = fc.tuple(fc.nat(4), fc.nat(4)).map(([least, n]) => ({ least, most: least + n }));

test('it is the count of all combinations, all for always and none for never', () => {
  fc.assert(
    fc.property(range, lags, range, (p, l, o) => {
      let inTime = 0n;
      let all = 0n;
      for (let a = p.lo; a <= p.hi; a++)
        for (let b = l.least; b <= l.most; b++)
          for (let c = o.lo; c <= o.hi; c++) {
            all += 1n;
            if (a + b <= c) inTime += 1n;
          }
      expect(share(p, l, o)).toEqual({ inTime, all });
      const { verdict: found } = verdict(p, l, o);
      expect([found === 'IN_EVERY_CASE', found === 'IN_NO_CASE']).toEqual([inTime === all, inTime === 0n]);
    }),
  );
});

function fraction({ inTime, all }: Share): string {
  return (Number(inTime) / Number(all)).toFixed(4);
}
