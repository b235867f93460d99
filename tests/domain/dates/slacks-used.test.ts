import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tryEdtf } from '../../../src/domain/dates/edtf.ts';
import { defaultSlack, type SlackConvention } from '../../../src/domain/dates/slack.ts';
import { restsOnSlack, type SlackName, slacksUsed } from '../../../src/domain/dates/slacks-used.ts';
import { anyEdtf } from './edtf-arbitrary.ts';

const count = fc.nat(40);
const anySlack: fc.Arbitrary<SlackConvention> = fc
  .record({
    ...{ day: count, month: count, season: count, year: count, decade: count, century: count },
    uncertainFactor: fc.constantFrom(0, 0, 0.5, 1, 2),
    openSetBound: fc.option(count, { nil: undefined }),
  })
  .map(slack => ({ ...slack }));

describe('the slacks by which a date is read', () => {
  const cases: readonly (readonly [text: string, used: readonly SlackName[], change?: Partial<SlackConvention>])[] = [
    ['1764', []],
    ['1764-05/1766', []],
    ['[1760, 1762]', []],
    ['[1760,1762..1765]', []],
    ['1764~', ['year']],
    ['1764-05~', ['month']],
    ['1764-05-12~', ['day']],
    ['1764-21~', ['season']],
    ['176X~', ['decade']],
    ['17XX~', ['century']],
    ['1764?', ['uncertainFactor']],
    ['1764?', ['uncertainFactor', 'year'], { uncertainFactor: 1 }],
    ['1764%', ['uncertainFactor', 'year']],
    ['1764~/1766-05~', ['month', 'year']],
    ['[..1764]', ['openSetBound']],
    ['[1764..]', ['openSetBound'], { openSetBound: 100 }],
    ['no date', []],
  ];
  for (const [text, used, change = {}] of cases) {
    test(`of ${text} are ${used.join(' and ') || 'none'}, where the others are ${JSON.stringify(change)}`, () => {
      expect(slacksUsed(text, { ...defaultSlack, ...change })).toEqual(used);
    });
  }

  test('are all that its days rest on: whatever the others are, the days are the same', () => {
    fc.assert(
      fc.property(anyEdtf, anySlack, anySlack, (text, one, other) => {
        const used = slacksUsed(text, one);
        const others = { ...other, ...Object.fromEntries(used.map(name => [name, one[name]])) };
        expect(tryEdtf(text, others)).toEqual(tryEdtf(text, one));
      }),
      { numRuns: 500 },
    );
  });

  test('are none for a date whose days are the same by all slacks', () => {
    fc.assert(
      fc.property(anyEdtf, anySlack, (text, slack) => {
        if (!restsOnSlack(text)) expect(tryEdtf(text, slack)).toEqual(tryEdtf(text));
      }),
      { numRuns: 500 },
    );
  });

  test('would be told too few, were one of them left out', () => {
    const [text, one] = ['1764~/1766-05~', defaultSlack];
    const less = slacksUsed(text, one).filter(name => name !== 'month');
    const others = { ...one, month: 9, ...Object.fromEntries(less.map(name => [name, one[name]])) };
    expect(tryEdtf(text, others)).not.toEqual(tryEdtf(text, one));
  });
});
