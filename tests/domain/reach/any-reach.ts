import fc from 'fast-check';
import { defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import { daysFromCivil } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { regularWindow } from '../../../src/domain/reach/published-window.ts';
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

/** Editions of one stretch of days, with up to as many accesses. */
export function anyEdition(mostAccesses: number): fc.Arbitrary<ReachEdition> {
  return fc
    .record({
      window: days,
      class: fc.constantFrom('IMPRINT' as const, 'ANNUAL' as const, 'OTHER' as const),
      outlets: fc.array(outlet, { maxLength: 3 }),
      accesses: fc.array(access, { maxLength: mostAccesses }),
    })
    .map(({ window, class: kind, ...rest }) => ({
      ...rest,
      published: regularWindow(window, kind, defaultConventions),
    }));
}

const group = fc.record({ id: fc.constantFrom('one', 'two'), open: fc.boolean() });
const stay = fc.record({ place, from: days, to: days, group }, { requiredKeys: ['place'], noNullPrototype: true });
const objectDay = fc.record({ headline: days, cautious: days }, { requiredKeys: ['headline'], noNullPrototype: true });

export const anyTarget: fc.Arbitrary<ReachTarget> = fc.record({
  objectDay: fc.array(objectDay, { maxLength: 2 }),
  stays: fc.array(stay, { minLength: 1, maxLength: 4 }),
});
