import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDay } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { flipDistance } from '../../../src/domain/reach/flip-distance.ts';
import { type LagDays, type ReachVerdict, verdict } from '../../../src/domain/reach/verdict.ts';

const days = (lo: number | undefined, hi: number | undefined): DayRange => ({ lo, hi });
const between = (first: string, last: string): DayRange => ({ lo: parseDay(first), hi: parseDay(last) });
const lag = (least: number, most?: number): LagDays => ({ least, most });

const always = 'IN_EVERY_CASE';
const sometimes = 'IN_SOME_CASES';
const never = 'IN_NO_CASE';

describe('a verdict on small numbers', () => {
  test.each<[string, DayRange, LagDays, DayRange, ReachVerdict, number, number]>([
    ['B1', days(0, 9), lag(2, 4), days(13, 20), always, 0, 18],
    ['B2', days(0, 9), lag(2, 4), days(5, 8), sometimes, -8, 6],
    ['B3', days(0, 9), lag(2, 4), days(0, 1), never, -13, -1],
    ['B4', days(0, 1), lag(0, 0), days(0, 1), sometimes, -1, 1],
    ['B5', days(0, 2), lag(0, 1), days(0, 3), sometimes, -3, 3],
    ['B6, arrival on the day itself is in time', days(5, 5), lag(3, 3), days(8, 8), always, 0, 0],
  ])('%s', (_, p, l, o, expected, every, some) => {
    expect(verdict(p, l, o)).toEqual({ verdict: expected, margin: { every, some } });
  });
});

describe('a verdict on books and objects', () => {
  const of1764 = between('1764-01-01', '1764-12-31');
  test.each<[string, DayRange, LagDays, DayRange, ReachVerdict, number, number]>([
    ['B7, London book at Birmingham', of1764, lag(2, 60), between('1765-07-01', '1766-06-30'), always, 122, 909],
    ['B8, the same for an object of 1764', of1764, lag(2, 60), of1764, sometimes, -425, 363],
    [
      'B9, a number of March to Bengal',
      between('1764-03-01', '1764-03-31'),
      lag(80, 540),
      of1764,
      sometimes,
      -630,
      225,
    ],
    ['B10, late October to Bengal', between('1764-10-20', '1764-10-31'), lag(80, 540), of1764, never, -844, -8],
    [
      'B11, a Leipzig book of about 1770 to London',
      between('1765-01-01', '1775-12-31'),
      lag(2, 180),
      between('1768-01-01', '1772-12-31'),
      sometimes,
      -3101,
      2919,
    ],
    ['B12, a Dublin reprint at Dublin', of1764, lag(0, 30), between('1764-07-04', '1764-07-04'), sometimes, -210, 185],
  ])('%s', (_, p, l, o, expected, every, some) => {
    expect(verdict(p, l, o)).toEqual({ verdict: expected, margin: { every, some } });
  });
});

describe('open ends', () => {
  const year = (y: number) => between(`${y}-01-01`, `${y}-12-31`);
  const until = (y: number): DayRange => ({ hi: parseDay(`${y}-12-31`) });
  const from = (y: number): DayRange => ({ lo: parseDay(`${y}-01-01`) });

  test.each<[string, DayRange, DayRange, ReachVerdict]>([
    ['B14', until(1760), year(1770), always],
    ['B15', until(1760), year(1755), sometimes],
    ['B16', year(1760), from(1758), sometimes],
    ['B17', year(1760), until(1758), never],
    ['B18', year(1750), until(1758), sometimes],
    ['B19', year(1750), from(1761), always],
  ])('%s', (_, p, o, expected) => {
    expect(verdict(p, lag(2, 60), o).verdict).toBe(expected);
  });

  test('of the lag leave room only on the earliest reckoning', () => {
    expect(verdict(days(0, 9), lag(3), days(100, 120))).toEqual({
      verdict: sometimes,
      margin: { every: undefined, some: 117 },
    });
  });
});

test('a reversed range has no day and contradicts', () => {
  expect(verdict(days(5, 4), lag(0, 1), days(0, 9))).toEqual({ verdict: 'CONTRADICTORY', margin: {} });
  expect(verdict(days(0, 9), lag(0, 1), days(5, 4))).toEqual({ verdict: 'CONTRADICTORY', margin: {} });
});

test('the days by which one bound must be wrong are the days short', () => {
  expect(flipDistance(verdict(days(0, 9), lag(2, 4), days(0, 1)))).toEqual({ toSome: 1 });
  expect(flipDistance(verdict(days(0, 9), lag(2, 4), days(5, 8)))).toEqual({ toEvery: 8 });
  expect(flipDistance(verdict(days(0, 9), lag(2, 4), days(13, 20)))).toEqual({});
});

const end = fc.option(fc.integer({ min: -20, max: 20 }), { nil: undefined });
const range = fc.tuple(fc.integer({ min: -15, max: 15 }), fc.nat(6)).map(([lo, n]) => ({ lo, hi: lo + n }));
const lags = fc.tuple(fc.nat(5), fc.nat(4)).map(([least, n]) => ({ least, most: least + n }));

describe('laws', () => {
  test('the verdict is what trying every combination says', () => {
    fc.assert(
      fc.property(range, lags, range, (p, l, o) => {
        expect(verdict(p, l, o).verdict).toBe(tried(p, l, o));
      }),
    );
  });

  test('a bound moved outward never makes a sometimes an always or a never', () => {
    fc.assert(
      fc.property(range, lags, range, fc.array(fc.nat(9), { minLength: 6, maxLength: 6 }), (p, l, o, by) => {
        fc.pre(verdict(p, l, o).verdict === sometimes);
        const wide = (r: { lo: number; hi: number }, i: number) => ({ lo: r.lo - by[i]!, hi: r.hi + by[i + 1]! });
        const slow = { least: Math.max(0, l.least - by[4]!), most: l.most + by[5]! };
        expect(verdict(wide(p, 0), slow, wide(o, 2)).verdict).toBe(sometimes);
      }),
    );
  });

  test('an end left open never makes a sometimes an always or a never', () => {
    fc.assert(
      fc.property(range, lags, range, end, end, (p, l, o, a, b) => {
        fc.pre(verdict(p, l, o).verdict === sometimes);
        expect(verdict({ ...p, lo: a === undefined ? undefined : p.lo }, l, o).verdict).toBe(sometimes);
        expect(verdict({ ...p, hi: b === undefined ? undefined : p.hi }, { least: l.least }, o).verdict).toBe(
          sometimes,
        );
        expect(verdict(p, l, { lo: undefined, hi: o.hi }).verdict).toBe(sometimes);
        expect(verdict(p, l, { lo: o.lo, hi: undefined }).verdict).toBe(sometimes);
      }),
    );
  });
});

interface Closed {
  readonly lo: number;
  readonly hi: number;
}

function tried(p: Closed, l: { least: number; most: number }, o: Closed): ReachVerdict {
  const outcomes = new Set<boolean>();
  for (let a = p.lo; a <= p.hi; a++)
    for (let b = l.least; b <= l.most; b++) for (let c = o.lo; c <= o.hi; c++) outcomes.add(a + b <= c);
  return outcomes.size === 2 ? sometimes : outcomes.has(true) ? always : never;
}
