import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { civilFromDays, daysFromCivil } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { edtfBounds, tryEdtf } from '../../../src/domain/dates/edtf.ts';
import { defaultSlack } from '../../../src/domain/dates/slack.ts';
import { anyEdtf } from './edtf-arbitrary.ts';

describe('the bounds of any expression', () => {
  test('are ordered, and its parts are disjoint, ascending and fill the hull', () => {
    fc.assert(
      fc.property(anyEdtf, fc.constantFrom(undefined, defaultSlack), (text, slack) => {
        const { lo, hi, parts, convex } = edtfBounds(text, slack);
        expect([parts[0]?.lo, parts.at(-1)?.hi]).toEqual([lo, hi]);
        expect(parts.length).toBeLessThanOrEqual(400);
        if (convex) expect(parts).toHaveLength(1);
        for (const part of parts) expect(part.lo ?? -Infinity).toBeLessThanOrEqual(part.hi ?? Infinity);
        for (const [index, part] of parts.slice(1).entries()) expect(part.lo).toBeGreaterThan(parts[index]!.hi! + 1);
      }),
      { numRuns: 1000 },
    );
  });

  test('hold its beginning and its end, and the end can follow the beginning', () => {
    fc.assert(
      fc.property(anyEdtf, fc.constantFrom(undefined, defaultSlack), (text, slack) => {
        const { lo, hi, start, end } = edtfBounds(text, slack);
        expect([start.lo, end.hi]).toEqual([lo, hi]);
        expect(start.lo ?? -Infinity).toBeLessThanOrEqual(end.lo ?? Infinity);
        expect(start.hi ?? -Infinity).toBeLessThanOrEqual(end.hi ?? Infinity);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('unspecified digits', () => {
  const digit = (fixed: fc.Arbitrary<string>) => fc.oneof(fixed, fc.constant('X'));
  const pattern = fc.tuple(
    digit(fc.constantFrom('0', '6', '9')),
    digit(fc.constantFrom('0', '4')),
    fc.tuple(digit(fc.constantFrom('0', '1')), digit(fc.constantFrom('0', '2', '9'))),
    fc.option(fc.tuple(digit(fc.constantFrom('0', '2', '3')), digit(fc.constantFrom('0', '1', '9')))),
  );
  const century = [daysFromCivil(1700, 1, 1), daysFromCivil(1799, 12, 31)] as const;

  test('allow exactly the days of the century which they match, found by trying them all', () => {
    fc.assert(
      fc.property(pattern, ([tens, ones, [m1, m2], day]) => {
        const text = `17${tens}${ones}-${m1}${m2}${day === null ? '' : `-${day.join('')}`}`;
        const [year, month, dayPattern] = [`17${tens}${ones}`, `${m1}${m2}`, day?.join('') ?? 'XX'];
        const matching = daysWhere(...century, (y, m, d) => fits(y, year) && fits(m, month) && fits(d, dayPattern));
        const bounds = tryEdtf(text);
        if (matching.length <= 400) expect(bounds?.parts ?? []).toEqual(matching);
        else expect(bounds?.parts).toEqual([{ lo: matching[0]!.lo, hi: matching.at(-1)!.hi }]);
      }),
      { numRuns: 150 },
    );
  });
});

function fits(number: number, pattern: string): boolean {
  const text = String(number).padStart(pattern.length, '0');
  return [...pattern].every((char, at) => char === 'X' || char === text[at]);
}

function daysWhere(lo: number, hi: number, holds: (year: number, month: number, day: number) => boolean): DayRange[] {
  const ranges: { lo: number; hi: number }[] = [];
  for (let number = lo; number <= hi; number++) {
    const { year, month, day } = civilFromDays(number);
    if (!holds(year, month, day)) continue;
    if (ranges.at(-1)?.hi === number - 1) ranges.at(-1)!.hi = number;
    else ranges.push({ lo: number, hi: number });
  }
  return ranges;
}
