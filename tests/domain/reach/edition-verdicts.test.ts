import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import { daysFromCivil } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { editionVerdicts } from '../../../src/domain/reach/edition-verdicts.ts';
import { regularWindow } from '../../../src/domain/reach/published-window.ts';
import { reachEdition } from '../../../src/domain/reach/reach-edition.ts';
import type { ReachEdition, ReachTarget } from '../../../src/domain/reach/reach-edition-input.ts';
import { towns } from './towns.ts';

const place = fc.constantFrom(...Object.values(towns), { name: 'a place without coordinates' });
const day = fc.integer({ min: daysFromCivil(1690, 1, 1), max: daysFromCivil(1910, 1, 1) });
const end = fc.option(day, { nil: undefined });
/** Open, closed and now and then reversed. */
const days: fc.Arbitrary<DayRange> = fc.record({ lo: end, hi: end });

const outlet = fc.record({
  kind: fc.constantFrom('PUBLISHER' as const, 'BOOKSELLER' as const),
  place: fc.option(place, { nil: undefined }),
});
const access = fc.record({ when: days, at: fc.option(place, { nil: undefined }), byAsked: fc.boolean() });
const edition: fc.Arbitrary<ReachEdition> = fc
  .record({
    window: days,
    class: fc.constantFrom('IMPRINT' as const, 'ANNUAL' as const, 'OTHER' as const),
    outlets: fc.array(outlet, { maxLength: 3 }),
    accesses: fc.array(access, { maxLength: 2 }),
  })
  .map(({ window, class: kind, ...rest }) => ({ ...rest, published: regularWindow(window, kind, defaultConventions) }));

const group = fc.record({ id: fc.constantFrom('one', 'two'), open: fc.boolean() });
const stay = fc.record({ place, from: days, to: days, group }, { requiredKeys: ['place'], noNullPrototype: true });
const objectDay = fc.record({ headline: days, cautious: days }, { requiredKeys: ['headline'], noNullPrototype: true });
const target: fc.Arbitrary<ReachTarget> = fc.record({
  objectDay: fc.array(objectDay, { maxLength: 2 }),
  stays: fc.array(stay, { minLength: 1, maxLength: 4 }),
});

describe('verdicts on many editions', () => {
  test('are those that each has with its reasons', () => {
    const seed = 1761;
    fc.assert(
      fc.property(target, fc.array(edition, { minLength: 1, maxLength: 5 }), (asked, editions) => {
        const verdictOn = editionVerdicts(asked, defaultConventions);
        for (const each of editions) {
          const { verdict, margin } = reachEdition(each, asked, defaultConventions);
          const found = verdictOn(each);
          expect({ verdict: found.verdict, margin: found.margin }, `seed ${seed}`).toEqual({ verdict, margin });
        }
      }),
      { seed, numRuns: 2000 },
    );
  });

  test('give no more than a verdict and its room', () => {
    const inLeipzig = { place: towns.leipzig };
    const verdictOn = editionVerdicts(
      {
        objectDay: [{ headline: { lo: daysFromCivil(1770, 1, 1), hi: daysFromCivil(1770, 12, 31) } }],
        stays: [inLeipzig],
      },
      defaultConventions,
    );
    const published = regularWindow(
      { lo: daysFromCivil(1760, 1, 1), hi: daysFromCivil(1760, 12, 31) },
      'OTHER',
      defaultConventions,
    );
    const { verdict, margin } = verdictOn({ published, outlets: [{ kind: 'PUBLISHER', place: towns.leipzig }] });
    expect({ verdict, margin }).toEqual({ verdict: 'IN_EVERY_CASE', margin: { every: 3258, some: 4017 } });
  });
});
