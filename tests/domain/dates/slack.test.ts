import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatDay } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { edtfBounds } from '../../../src/domain/dates/edtf.ts';
import { defaultSlack, type SlackConvention } from '../../../src/domain/dates/slack.ts';
import { anyEdtf } from './edtf-arbitrary.ts';

function days({ lo, hi }: DayRange): string {
  return `${lo === undefined ? '' : formatDay(lo)}..${hi === undefined ? '' : formatDay(hi)}`;
}

function widened(text: string, change: Partial<SlackConvention> = {}): string {
  return days(edtfBounds(text, { ...defaultSlack, ...change }));
}

describe('an approximate date', () => {
  test.each([
    ['1764~', '1759-01-01..1769-12-31'],
    ['1764%', '1759-01-01..1769-12-31'],
    ['1764-05~', '1764-04-01..1764-06-30'],
    ['1764-05-12~', '1764-05-05..1764-05-19'],
    ['1764-21~', '1763-12-01..1764-08-31'],
    ['1764-33~', '1763-10-01..1764-06-30'],
    ['176X~', '1755-01-01..1774-12-31'],
    ['17XX~', '1675-01-01..1824-12-31'],
    ['1764S3~', '1755-01-01..1774-12-31'],
    ['1764~/1766?', '1759-01-01..1766-12-31'],
    ['1764-05~-12', '1764-04-12..1764-06-12'],
    ['1764-05-~01/1764-06-~20', '1764-04-24..1764-06-27'],
    ['1764-~05-12', '1764-04-12..1764-06-12'],
    ['1764-02~', '1764-01-01..1764-03-31'],
    ['1764-~01-31', '1763-12-31..1764-02-29'],
    ['1764-~03-30', '1764-02-29..1764-04-30'],
    ['1764~-05-~12', '1759-05-12..1769-05-12'],
    ['[1764~,1780]', '1759-01-01..1780-12-31'],
    ['{1764,1780~}', '1764-01-01..1785-12-31'],
  ])('%s is %s', (text, expected) => expect(widened(text)).toBe(expected));

  test('keeps its strict days beside the widened ones', () => {
    const { loRaw, hiRaw, lo, hi } = edtfBounds('1764~', defaultSlack);
    expect([days({ lo: loRaw, hi: hiRaw }), days({ lo, hi })]).toEqual([
      ...['1764-01-01..1764-12-31', '1759-01-01..1769-12-31'],
    ]);
    expect(days(edtfBounds('1764~'))).toBe('1764-01-01..1764-12-31');
  });

  test('of which the year alone is approximate lies on the same day of each year near it', () => {
    const bounds = edtfBounds('~1764-05-12', { ...defaultSlack, year: 1 });
    expect([bounds.parts.map(days), bounds.convex]).toEqual([
      [...['1763-05-12..1763-05-12', '1764-05-12..1764-05-12', '1765-05-12..1765-05-12']],
      false,
    ]);
    expect(days(edtfBounds('~1764-02-29', defaultSlack))).toBe('1759-02-28..1769-02-28');
  });

  test('with more than 400 such days is their hull', () => {
    const bounds = edtfBounds('~17XX-05-12', defaultSlack);
    expect([bounds.parts.map(days), bounds.convex]).toEqual([['1675-05-12..1824-05-12'], false]);
  });

  test('in an interval widens its own side', () => {
    const { start, end } = edtfBounds('1764~/1780', defaultSlack);
    expect([days(start), days(end)]).toEqual(['1759-01-01..1769-12-31', '1780-01-01..1780-12-31']);
  });

  test('beyond the calendar moves by years', () => {
    expect(edtfBounds('Y300000~', defaultSlack)).toMatchObject({ yearLo: 299_995, yearHi: 300_005 });
  });
});

describe('an uncertain date', () => {
  test('is not moved unless the convention says so', () => {
    expect(widened('1764?')).toBe('1764-01-01..1764-12-31');
    expect(widened('1764?', { uncertainFactor: 1 })).toBe('1759-01-01..1769-12-31');
    expect(widened('1764?', { uncertainFactor: 0.5 })).toBe('1761-01-01..1767-12-31');
    expect(widened('1764%', { uncertainFactor: 2 })).toBe('1754-01-01..1774-12-31');
  });
});

describe('the open side of a one-of set', () => {
  test('stays open unless the convention closes it', () => {
    expect([widened('[..1764]'), widened('[1764..]')]).toEqual(['..1764-12-31', '1764-01-01..']);
    const closed = { openSetBound: 100 };
    expect([widened('[..1764]', closed), widened('[1764..]', closed)]).toEqual([
      ...['1664-01-01..1764-12-31', '1764-01-01..1864-12-31'],
    ]);
    expect([widened('{..1764}', closed), widened('../1764', closed)]).toEqual(['..1764-12-31', '..1764-12-31']);
  });
});

describe('slack, on any expression', () => {
  const slack = fc.record({
    ...{ day: fc.nat(40), month: fc.nat(14), season: fc.nat(14), year: fc.nat(30), decade: fc.nat(30) },
    ...{ century: fc.nat(120), uncertainFactor: fc.constantFrom(0, 0.5, 1, 2) },
  });

  test('never narrows, and keeps the strict days', () => {
    fc.assert(
      fc.property(anyEdtf, slack, (text, convention) => {
        const [strict, wide] = [edtfBounds(text), edtfBounds(text, convention)];
        expect([wide.loRaw, wide.hiRaw]).toEqual([strict.lo, strict.hi]);
        expectInside(strict, wide);
        expectInside(strict.start, wide.start);
        expectInside(strict.end, wide.end);
      }),
    );
  });

  test('grows with each number of the convention', () => {
    const field = fc.constantFrom<keyof SlackConvention>(
      'day',
      'month',
      'season',
      'year',
      'decade',
      'century',
      'uncertainFactor',
    );
    fc.assert(
      fc.property(anyEdtf, slack, field, fc.nat(9), (text, convention, name, more) => {
        const grown = { ...convention, [name]: convention[name as keyof typeof convention] + more };
        expectInside(edtfBounds(text, convention), edtfBounds(text, grown));
      }),
    );
  });

  test('does not depend on the order of the convention or of the members', () => {
    fc.assert(
      fc.property(fc.array(anyEdtf.filter(isMember), { minLength: 1, maxLength: 5 }), slack, (members, convention) => {
        const turned = Object.fromEntries(Object.entries(convention).reverse()) as unknown as SlackConvention;
        const [forth, back] = [members.join(','), members.toReversed().join(',')];
        expect(edtfBounds(`[${back}]`, turned)).toEqual(edtfBounds(`[${forth}]`, convention));
      }),
    );
  });
});

function isMember(text: string): boolean {
  return !/[/[{T]/.test(text);
}

function expectInside(inner: DayRange, outer: DayRange): void {
  expect(outer.lo ?? -Infinity).toBeLessThanOrEqual(inner.lo ?? -Infinity);
  expect(outer.hi ?? Infinity).toBeGreaterThanOrEqual(inner.hi ?? Infinity);
}
