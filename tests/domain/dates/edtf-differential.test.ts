import edtf from 'edtf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysInMonth } from '../../../src/domain/dates/calendar.ts';
import { tryEdtf } from '../../../src/domain/dates/edtf.ts';
import { days } from '../../support/days.ts';

/**
 * npm edtf 4.11.1 (inukshuk/edtf.js) as a second reader. Left out, since it is known to be otherwise there: seasons
 * and other parts of a year, ranges inside sets, members in falling order, an interval of one year twice, unknown
 * ends, significant digits, shifts from UTC, an unspecified year with 29 February or with a qualifier, the 29th to
 * 31st of an unspecified month, an unspecified month or day of a negative year (its last day comes first), and its
 * two-digit and three-digit years; and the end of February 0000, which has 29 days (a leap year by ISO 8601) and there 28,
 * see the last test. Its bounds ignore the qualifiers, as strict bounds do.
 */
describe('the npm package edtf and this program', () => {
  const sign = fc.constantFrom('', '', '', '?', '~', '%');
  const year = fc.integer({ min: -9999, max: 9999 }).map(written);
  const positiveYear = fc.integer({ min: 1, max: 9999 }).map(written);
  const masked = fc.tuple(
    fc.integer({ min: 1, max: 9 }),
    fc.integer({ min: 0, max: 9 }),
    fc.constantFrom('XX', '5X', 'X4'),
  );
  const yearOrMasked = fc.oneof(
    positiveYear,
    masked.map(texts => texts.join('')),
  );
  const month = fc.oneof(fc.integer({ min: 1, max: 12 }).map(two), fc.constantFrom('XX', '0X', '1X'));
  const day = fc.oneof(fc.integer({ min: 1, max: 31 }).map(two), fc.constantFrom('XX', '0X', '1X'));
  const plainDate = fc
    .tuple(year, fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 31 }), fc.constantFrom(1, 2, 3), sign)
    .filter(([y, m, d]) => d <= daysInMonth(Number(y), m) && !(Number(y) === 0 && m === 2 && d >= 28))
    .map(([y, m, d, components, mark]) => [y, two(m), two(d)].slice(0, components).join('-') + mark);

  test('read single dates alike, with and without X', () => {
    const whole = fc
      .tuple(yearOrMasked, month, day)
      .filter(([, m, d]) => !(Number(d) >= 29 && (m === '02' || m.includes('X'))));
    const texts = fc.oneof(
      plainDate,
      yearOrMasked,
      fc.tuple(yearOrMasked, month).map(([y, m]) => `${y}-${m}`),
      whole.map(([y, m, d]) => `${y}-${m}-${d}`),
    );
    fc.assert(
      fc.property(texts, text => agree(text)),
      { numRuns: 600 },
    );
  });

  test('read intervals alike', () => {
    const ends = fc.tuple(plainDate, plainDate).filter(([from, to]) => yearOf(from) !== yearOf(to));
    const texts = fc.oneof(
      ends.map(([from, to]) => `${from}/${to}`),
      plainDate.map(text => `${text}/..`),
      plainDate.map(text => `../${text}`),
    );
    fc.assert(
      fc.property(texts, text => agree(text)),
      { numRuns: 600 },
    );
  });

  test('read sets of rising years alike', () => {
    const years = fc.uniqueArray(fc.integer({ min: 1000, max: 2000 }), { minLength: 1, maxLength: 6 });
    const rising = years.map(list => list.toSorted((a, b) => a - b).join(','));
    const texts = fc.oneof(
      rising.map(list => `[${list}]`),
      rising.map(list => `{${list}}`),
      year.map(text => `[..${text}]`),
      year.map(text => `{${text}..}`),
    );
    fc.assert(
      fc.property(texts, text => agree(text)),
      { numRuns: 300 },
    );
  });

  /** Date of ECMAScript (ECMA-262, 21.4.1: the Gregorian calendar carried backwards, with a year 0) as a third reader. */
  test('part only at the end of February 0000, a leap year', () => {
    for (const text of ['0000-02-28', '0000-02-29', '0000-03-01']) expect(ours(text)).toEqual([days(text), days(text)]);
    expect(theirs('0000-02-28')).toEqual([days('0000-02-28'), days('0000-02-29')]);
    expect(theirs('0000-02-29')).toEqual([days('0000-03-01'), days('0000-03-01')]);
    for (const text of ['0000', '0000-01-31', '0000-02', '0000-02-01', '0000-02-27', '0000-03-01']) agree(text);
  });
});

function agree(text: string): void {
  expect(ours(text)).toEqual(theirs(text));
}

type Reading = readonly [first: number, last: number] | 'refused';

function ours(text: string): Reading {
  const bounds = tryEdtf(text);
  return bounds === undefined ? 'refused' : [bounds.lo ?? -Infinity, bounds.hi ?? Infinity];
}

function theirs(text: string): Reading {
  try {
    const { min, max } = edtf(text);
    return [Math.floor(min / 86_400_000), Math.floor(max / 86_400_000)];
  } catch {
    return 'refused';
  }
}

function yearOf(text: string): string | undefined {
  return /^-?\d+/.exec(text)?.[0];
}

function written(number: number): string {
  return `${number < 0 ? '-' : ''}${String(Math.abs(number)).padStart(4, '0')}`;
}

function two(number: number): string {
  return String(number).padStart(2, '0');
}
