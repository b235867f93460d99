import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { longestEdtf, tryEdtf } from '../../../src/domain/dates/edtf.ts';
import { defaultSlack } from '../../../src/domain/dates/slack.ts';
import { processorTime } from '../../support/processor-time.ts';
import { anyEdtf } from './edtf-arbitrary.ts';

const mostMilliseconds = 20;
const extremeSlack = {
  ...defaultSlack,
  day: 1e6,
  month: 1e6,
  year: 1e6,
  decade: 1e6,
  century: 1e6,
  uncertainFactor: 9,
};

/** As many members as fit. */
function filled(open: string, member: string, close: string): string {
  const count = Math.min(64, Math.floor((longestEdtf - 1) / (member.length + 1)));
  return `${open}${Array.from({ length: count }, () => member).join(',')}${close}`;
}

const nasty = [
  ...['XXXX-XX-XX', 'XXXX-XX-X1', 'XXXX-X2-X9', 'XXX1-02-29', 'XXX3-XX-31', 'XXX5-02-2X', 'XXXX-02-30', '-XXX4-XX-XX'],
  ...['~XXX4-12-25', '%1XX4-X2-X1', '~XXX4-24', '~1X44-X1-X1', 'X0X0-02-29', 'XXX9-0X-3X', 'XXXX-24', '-XXXX-02-29'],
].flatMap(date => [date, `${date}/${date}`, `${date}/..`, filled('[', date, ']'), filled('{', date, '}')]);
const ranges = [
  '0000..9999',
  'XXX0..XXX9',
  '-9999-01-01..9999-12-31',
  'Y-200000..Y200000',
  'Y10000..Y9007199254740991',
];
const numbers = [
  'Y9E999999999',
  'Y1E15',
  'Y1E16',
  `Y${'9'.repeat(110)}`,
  `Y1E${'9'.repeat(110)}`,
  `1764S${'9'.repeat(100)}`,
];
const repeated = [
  '[',
  '{',
  '(',
  '/',
  '..',
  ',',
  '-',
  'X',
  '?',
  '~',
  'T',
  'Y',
  'E',
  'S',
  '1764-',
  '1764?',
  '[1764,',
  '1,',
  '\u0000',
];
const texts = [
  ...nasty,
  ...ranges.flatMap(range => [`[${range}]`, filled('[', range, ']'), filled('{', range, '}')]),
  ...numbers,
  ...repeated.flatMap(piece => [piece.repeat(Math.floor(longestEdtf / piece.length)), piece.repeat(100_000)]),
];

describe('hostile strings', () => {
  test.each(texts.map(text => [text.slice(0, 40), text.length, text] as const))(
    '%s… of %i characters',
    (_, __, text) => {
      expect(milliseconds(text)).toBeLessThan(mostMilliseconds);
    },
  );

  test('of any characters are read or refused in time, and never throw', () => {
    const alphabet = fc.constantFrom(...'0123456789XYESTZ?~%-/.,[]{}: +u'.split(''), '..', '1764', '-02-29', 'XXX1');
    const soup = fc.oneof(
      fc.array(alphabet, { maxLength: 60 }).map(pieces => pieces.join('')),
      fc.string(),
    );
    fc.assert(
      fc.property(soup, text => milliseconds(text) < mostMilliseconds),
      { numRuns: 3000 },
    );
  });

  test('made from readable ones by one change are read or refused in time', () => {
    const change = fc.tuple(fc.nat(120), fc.constantFrom('X', '?', '/', '..', '0', 'T', 'S2', 'E9', '', ' '));
    const altered = fc
      .tuple(anyEdtf, change)
      .map(([text, [at, piece]]) => text.slice(0, at) + piece + text.slice(at + 1));
    fc.assert(
      fc.property(altered, text => milliseconds(text) < mostMilliseconds),
      { numRuns: 2000 },
    );
  });
});

describe('speed', () => {
  test('ten thousand expressions are read in half a second (three times as long is let pass on a slow machine)', () => {
    const ordinary = fc.sample(anyEdtf, { numRuns: 10_000, seed: 1764 });
    const start = processorTime();
    const read = ordinary.filter(text => tryEdtf(text, defaultSlack) !== undefined);
    expect(processorTime() - start).toBeLessThan(3 * 500);
    expect(read).toHaveLength(10_000);
  });
});

/** The best of three: a pause of the machine is not the reader's. */
function milliseconds(text: string): number {
  let best = Infinity;
  for (let run = 0; run < 3 && best >= mostMilliseconds; run++) {
    const start = processorTime();
    tryEdtf(text);
    tryEdtf(text, extremeSlack);
    best = Math.min(best, (processorTime() - start) / 2);
  }
  return best;
}
