import { describe, expect, test } from 'vitest';
import { formatDay } from '../../../src/domain/dates/calendar.ts';
import type { DayBounds, DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { edtfBounds, estimatedYear, tryEdtf } from '../../../src/domain/dates/edtf.ts';
import { readForEvent } from '../../../src/domain/dates/reading-by-event.ts';

function days({ lo, hi }: DayRange): string {
  return `${lo === undefined ? '' : formatDay(lo)}..${hi === undefined ? '' : formatDay(hi)}`;
}

function parts(bounds: DayBounds): string[] {
  return bounds.parts.map(days);
}

/** Hull, level. */
function read(text: string): string {
  const bounds = edtfBounds(text);
  return `${days(bounds)} ${bounds.level}`;
}

describe('an EDTF date', () => {
  test.each([
    ['1764-05-12', '1764-05-12..1764-05-12 0'],
    ['1764-05', '1764-05-01..1764-05-31 0'],
    ['1764-02', '1764-02-01..1764-02-29 0'],
    ['1764', '1764-01-01..1764-12-31 0'],
    ['0000', '0000-01-01..0000-12-31 0'],
    ['-0044', '-0044-01-01..-0044-12-31 1'],
    ['1764-05-12T23:30:00', '1764-05-12..1764-05-12 0'],
    ['1764-05-12T23:30:00-05:00', '1764-05-12..1764-05-12 0'],
    ['-0044-03-15T12:00:00Z', '-0044-03-15..-0044-03-15 1'],
    ['176X', '1760-01-01..1769-12-31 1'],
    ['17XX', '1700-01-01..1799-12-31 1'],
    ['1XXX', '1000-01-01..1999-12-31 2'],
    ['XXXX', '0000-01-01..9999-12-31 2'],
    ['-176X', '-1769-01-01..-1760-12-31 1'],
    ['-XXXX', '-9999-01-01..-0001-12-31 2'],
    ['1764-XX', '1764-01-01..1764-12-31 1'],
    ['1764-05-XX', '1764-05-01..1764-05-31 1'],
    ['1764-XX-XX', '1764-01-01..1764-12-31 1'],
    ['1984-1X', '1984-10-01..1984-12-31 2'],
    ['1763-02-2X', '1763-02-20..1763-02-28 2'],
    ['1764-02-2X', '1764-02-20..1764-02-29 2'],
    ['1764-04-3X', '1764-04-30..1764-04-30 2'],
    ['156X-12-25', '1560-12-25..1569-12-25 2'],
    ['XXXX-12-XX', '0000-12-01..9999-12-31 2'],
    ['17X4', '1704-01-01..1794-12-31 2'],
    ['1764-X2', '1764-02-01..1764-12-31 2'],
    ['17XX-02-29', '1704-02-29..1796-02-29 2'],
    ['XXXX-02-29', '0000-02-29..9996-02-29 2'],
    ['1764-21', '1764-03-01..1764-05-31 1'],
    ['1764-22', '1764-06-01..1764-08-31 1'],
    ['1764-23', '1764-09-01..1764-11-30 1'],
    ['1764-24', '1764-01-01..1765-02-28 1'],
    ['1763-28', '1763-01-01..1764-02-29 2'],
    ['1764-25', '1764-03-01..1764-05-31 2'],
    ['1764-29', '1764-09-01..1764-11-30 2'],
    ['1764-30', '1764-01-01..1765-02-28 2'],
    ['1764-31', '1764-03-01..1764-05-31 2'],
    ['1764-32', '1764-06-01..1764-08-31 2'],
    ['1764-33', '1764-01-01..1764-03-31 2'],
    ['1764-36', '1764-10-01..1764-12-31 2'],
    ['1764-37', '1764-01-01..1764-04-30 2'],
    ['1764-38', '1764-05-01..1764-08-31 2'],
    ['1764-39', '1764-09-01..1764-12-31 2'],
    ['1764-40', '1764-01-01..1764-06-30 2'],
    ['1764-41', '1764-07-01..1764-12-31 2'],
    ['Y12000', 'Y12000-01-01..Y12000-12-31 1'],
    ['Y-12E4', 'Y-120000-01-01..Y-120000-12-31 2'],
    ['1950S2', '1900-01-01..1999-12-31 2'],
    ['1764S3', '1760-01-01..1769-12-31 2'],
    ['1764S9', '1764-01-01..1764-12-31 2'],
    ['-1764S3', '-1769-01-01..-1760-12-31 2'],
    ['0050S1', '0050-01-01..0059-12-31 2'],
    ['1764?', '1764-01-01..1764-12-31 1'],
    ['?1764-05', '1764-05-01..1764-05-31 2'],
    ['1764-05~-12', '1764-05-12..1764-05-12 2'],
    ['1764-~05', '1764-05-01..1764-05-31 2'],
  ])('%s is %s', (text, expected) => expect(read(text)).toBe(expected));

  // The biblatex Package manual, table "Unspecified Date Parsing".
  test.each([
    ['199X', '1990-01-01..1999-12-31'],
    ['19XX', '1900-01-01..1999-12-31'],
    ['1999-XX', '1999-01-01..1999-12-31'],
    ['1999-01-XX', '1999-01-01..1999-01-31'],
    ['1999-XX-XX', '1999-01-01..1999-12-31'],
  ])('%s is %s, as biblatex has it', (text, expected) => expect(days(edtfBounds(text))).toBe(expected));

  test('has every field', () => {
    const [lo, hi] = [-75_240, -74_875];
    expect(edtfBounds('1764%')).toEqual({
      ...{ kind: 'date', lo, hi, start: { lo, hi }, end: { lo, hi }, parts: [{ lo, hi }], convex: true },
      ...{ loUnknown: false, hiUnknown: false, uncertain: true, approximate: true, level: 1 },
      ...{ loRaw: lo, hiRaw: hi, beyondCalendar: false },
    });
    expect(edtfBounds('1764-05-12T23:30:00').kind).toBe('datetime');
  });

  test('is uncertain, approximate or both by any of its qualifiers', () => {
    const flags = ['1764', '1764?', '1764~', '1764%', '1764?-05-~12', '?1764-05-12'].map(text => {
      const { uncertain, approximate } = edtfBounds(text);
      return [uncertain, approximate];
    });
    const [no, yes] = [false, true];
    expect(flags).toEqual([
      [no, no],
      [yes, no],
      [no, yes],
      [yes, yes],
      [yes, yes],
      [yes, no],
    ]);
  });
});

describe('days that are no single range', () => {
  test('are given as parts', () => {
    expect(parts(edtfBounds('1764-24'))).toEqual(['1764-01-01..1764-02-29', '1764-12-01..1765-02-28']);
    expect(parts(edtfBounds('1764-X2'))).toEqual(['1764-02-01..1764-02-29', '1764-12-01..1764-12-31']);
    expect(parts(edtfBounds('1764-02-X9'))).toEqual([
      '1764-02-09..1764-02-09',
      '1764-02-19..1764-02-19',
      '1764-02-29..1764-02-29',
    ]);
    expect(parts(edtfBounds('176X-12-25'))).toHaveLength(10);
    expect(edtfBounds('176X-12-25').convex).toBe(false);
    expect(parts(edtfBounds('17XX-02-29'))).toHaveLength(24);
  });

  test('are given as their hull when there are more than 400 of them', () => {
    expect(parts(edtfBounds('1XX4'))).toHaveLength(100);
    const many = edtfBounds('XXX4');
    expect([parts(many), many.convex]).toEqual([['0004-01-01..9994-12-31'], false]);
    const december = edtfBounds('XXXX-12-XX');
    expect([parts(december), december.convex]).toEqual([['0000-12-01..9999-12-31'], false]);
  });
});

describe('an EDTF interval', () => {
  test.each([
    ['1764/1766', '1764-01-01..1764-12-31', '1766-01-01..1766-12-31', 0],
    ['1764/1764', '1764-01-01..1764-12-31', '1764-01-01..1764-12-31', 0],
    ['1764-05-12/1764', '1764-05-12..1764-05-12', '1764-05-12..1764-12-31', 0],
    ['1764/1764-05-12', '1764-01-01..1764-05-12', '1764-05-12..1764-05-12', 0],
    ['1764/..', '1764-01-01..1764-12-31', '1764-01-01..', 1],
    ['1764/', '1764-01-01..1764-12-31', '1764-01-01..', 1],
    ['../1764', '..1764-12-31', '1764-01-01..1764-12-31', 1],
    ['/1764', '..1764-12-31', '1764-01-01..1764-12-31', 1],
    ['../..', '..', '..', 1],
    ['/..', '..', '..', 1],
    ['1764-21/1765', '1764-03-01..1764-05-31', '1765-01-01..1765-12-31', 1],
    ['176X/1780', '1760-01-01..1769-12-31', '1780-01-01..1780-12-31', 2],
    ['2004-06-~01/2004-06-~20', '2004-06-01..2004-06-01', '2004-06-20..2004-06-20', 2],
  ])('%s begins %s and ends %s', (text, start, end, level) => {
    const bounds = edtfBounds(text);
    expect([days(bounds.start), days(bounds.end), bounds.level]).toEqual([start, end, level]);
    expect(parts(bounds)).toEqual([days({ lo: bounds.start.lo, hi: bounds.end.hi })]);
    expect(bounds.kind).toBe('interval');
  });

  test('tells an unknown end from an open one', () => {
    const flags = ['1764/', '1764/..', '/1764', '../1764', '/..', '../'].map(text => {
      const { loUnknown, hiUnknown } = edtfBounds(text);
      return `${loUnknown ? 'unknown' : ''}/${hiUnknown ? 'unknown' : ''}`;
    });
    expect(flags).toEqual(['/unknown', '/', 'unknown/', '/', 'unknown/', '/unknown']);
  });
});

describe('an EDTF set', () => {
  test.each([
    ['[1764,1766]', ['1764-01-01..1764-12-31', '1766-01-01..1766-12-31']],
    ['[1766,1764]', ['1764-01-01..1764-12-31', '1766-01-01..1766-12-31']],
    ['[1764,1765]', ['1764-01-01..1765-12-31']],
    ['[1760..1770]', ['1760-01-01..1770-12-31']],
    ['[..1764]', ['..1764-12-31']],
    ['[1764..]', ['1764-01-01..']],
    ['[1667,1668,1670..1672]', ['1667-01-01..1668-12-31', '1670-01-01..1672-12-31']],
    ['[1760-01,1760-02,1760-12..]', ['1760-01-01..1760-02-29', '1760-12-01..']],
    ['{..1764-05,1765,1766-05..}', ['..1764-05-31', '1765-01-01..1765-12-31', '1766-05-01..']],
    ['[176X..178X]', ['1760-01-01..1789-12-31']],
  ])('%s is %j', (text, expected) => {
    const bounds = edtfBounds(text);
    expect([parts(bounds), bounds.level, bounds.convex]).toEqual([expected, 2, expected.length === 1]);
  });

  test('of all its members begins with the first and ends with the last', () => {
    const bounds = edtfBounds('{1764,1766..1768}');
    expect([bounds.kind, days(bounds.start), days(bounds.end)]).toEqual([
      ...['allOf', '1764-01-01..1764-12-31', '1768-01-01..1768-12-31'],
    ]);
    const open = edtfBounds('{..1764}');
    expect([days(open.start), days(open.end)]).toEqual(['..1764-12-31', '1764-01-01..1764-12-31']);
  });

  test('of which one is meant begins and ends in its hull', () => {
    const bounds = edtfBounds('[1764,1766..1768]');
    expect([bounds.kind, days(bounds.start), days(bounds.end)]).toEqual([
      ...['oneOf', '1764-01-01..1768-12-31', '1764-01-01..1768-12-31'],
    ]);
  });
});

describe('years beyond the calendar', () => {
  test('have no days, only numbers', () => {
    expect(edtfBounds('Y17E7')).toEqual({
      ...{ kind: 'date', start: {}, end: {}, parts: [{}], convex: true, level: 2, beyondCalendar: true },
      ...{ loUnknown: false, hiUnknown: false, uncertain: false, approximate: false },
      ...{ yearLo: 170_000_000, yearHi: 170_000_000 },
    });
  });

  test.each([
    ['Y200000', false, undefined, undefined],
    ['Y200001', true, 200_001, 200_001],
    ['Y-200001', true, -200_001, -200_001],
    ['Y171010000S3', true, 171_000_000, 171_999_999],
    ['Y-171010000S3', true, -171_999_999, -171_000_000],
    ['1764/Y300000', true, 1764, 300_000],
    ['Y-300000/..', true, -300_000, undefined],
    ['[1764,Y300000]', true, 1764, 300_000],
    ['Y9007199254740991', true, 9_007_199_254_740_991, 9_007_199_254_740_991],
  ])('%s: %s, %s to %s', (text, beyondCalendar, yearLo, yearHi) => {
    expect(edtfBounds(text)).toMatchObject({ beyondCalendar });
    expect([edtfBounds(text).yearLo, edtfBounds(text).yearHi]).toEqual([yearLo, yearHi]);
  });

  test('an interval of them is not turned round', () => {
    expect(tryEdtf('Y300000/Y300001')?.beyondCalendar).toBe(true);
    expect(tryEdtf('Y300001/Y300000')).toBeUndefined();
    expect(tryEdtf('[Y300001..Y300000]')).toBeUndefined();
  });

  test('significant digits keep the year that was named', () => {
    expect(['1950S2', '-1950S2', 'Y3388E2S3', '1950', 'S2'].map(estimatedYear)).toEqual([
      ...[1950, -1950, 338_800, undefined, undefined],
    ]);
  });
});

describe('the same days read by event', () => {
  test('a life lasted from birth to death', () => {
    const reading = readForEvent(edtfBounds('1724/1806-11'), 'lived');
    expect([reading.reading, days(reading.start), days(reading.end)]).toEqual([
      ...['throughout', '1724-01-01..1724-12-31', '1806-11-01..1806-11-30'],
    ]);
  });

  test('a thing was made on one day, whether written as an interval or a set', () => {
    const interval = readForEvent(edtfBounds('1760/1770'), 'made');
    expect(interval).toEqual(readForEvent(edtfBounds('[1760..1770]'), 'made'));
    expect([interval.reading, days(interval.range), interval.parts.map(days)]).toEqual([
      ...['within', '1760-01-01..1770-12-31', ['1760-01-01..1770-12-31']],
    ]);
  });
});
