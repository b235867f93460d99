import fc from 'fast-check';
import { tryEdtf } from '../../../src/domain/dates/edtf.ts';
import { readDate } from '../../../src/domain/dates/edtf-date.ts';
import { isEdtfFault } from '../../../src/domain/dates/edtf-fault.ts';

/** Each digit may be given up for X. */
function digits(least: number, most: number, length: number): fc.Arbitrary<string> {
  const kept = fc.array(fc.boolean(), { minLength: length, maxLength: length });
  const written = fc.integer({ min: least, max: most }).map(number => String(number).padStart(length, '0'));
  const partly = fc
    .tuple(written, kept)
    .map(([text, keep]) => [...text].map((char, at) => (keep[at] ? char : 'X')).join(''));
  return fc.oneof({ arbitrary: written, weight: 3 }, { arbitrary: partly, weight: 1 });
}

const sign = fc.oneof(
  { arbitrary: fc.constant(''), weight: 4 },
  { arbitrary: fc.constantFrom('?', '~', '%'), weight: 1 },
);
const year = fc.tuple(fc.constantFrom('', '', '', '-'), digits(0, 2100, 4)).map(texts => texts.join(''));
const month = digits(1, 12, 2);
const day = digits(1, 31, 2);
const part = fc.integer({ min: 21, max: 41 }).map(String);

const yearOnly = fc.tuple(sign, year, sign);
const yearMonth = fc.tuple(yearOnly, fc.constant('-'), sign, fc.oneof(month, part), sign);
const wholeDay = fc.tuple(yearOnly, fc.constant('-'), sign, month, sign, fc.constant('-'), sign, day, sign);
const longYear = fc.tuple(fc.constantFrom('Y', 'Y-'), fc.integer({ min: 10_000, max: 999_999 }), sign);
const significant = fc.tuple(
  fc.integer({ min: 1000, max: 2100 }),
  fc.constant('S'),
  fc.integer({ min: 1, max: 4 }),
  sign,
);

/** One readable date without time of day. */
export const anyEdtfDate: fc.Arbitrary<string> = fc
  .oneof(
    ...[yearOnly, yearMonth, wholeDay].map(arbitrary => ({ arbitrary, weight: 4 })),
    ...[longYear, significant].map(arbitrary => ({ arbitrary, weight: 1 })),
  )
  .map(flatten)
  .filter(text => !isEdtfFault(readDate(text)));

const side = fc.oneof({ arbitrary: anyEdtfDate, weight: 5 }, { arbitrary: fc.constantFrom('', '..'), weight: 1 });
const interval = fc.tuple(side, side).map(([from, to]) => `${from}/${to}`);
const member = fc.oneof(
  { arbitrary: anyEdtfDate, weight: 3 },
  { arbitrary: fc.tuple(yearOnly, yearOnly).map(rangeOf), weight: 1 },
);
const members = fc.array(member, { minLength: 1, maxLength: 6 }).map(texts => texts.join(','));
const set = fc.oneof(
  members.map(texts => `[${texts}]`),
  members.map(texts => `{${texts}}`),
  anyEdtfDate.map(text => `[..${text}]`),
  anyEdtfDate.map(text => `{${text}..}`),
);

/** Any readable expression of the three levels. */
export const anyEdtf: fc.Arbitrary<string> = fc
  .oneof(anyEdtfDate, interval, set)
  .filter(text => tryEdtf(text) !== undefined);

function rangeOf(ends: readonly [unknown, unknown]): string {
  return `${flatten(ends[0])}..${flatten(ends[1])}`;
}

function flatten(texts: unknown): string {
  return Array.isArray(texts) ? texts.map(flatten).join('') : String(texts);
}
