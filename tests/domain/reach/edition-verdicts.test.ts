import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import { daysFromCivil } from '../../../src/domain/dates/calendar.ts';
import { editionVerdicts } from '../../../src/domain/reach/edition-verdicts.ts';
import { regularWindow } from '../../../src/domain/reach/published-window.ts';
import { reachEdition } from '../../../src/domain/reach/reach-edition.ts';
import { anyEdition, anyTarget } from './any-reach.ts';
import { towns } from './towns.ts';

describe('verdicts on many editions', () => {
  test('are those that each has with its reasons', () => {
    const seed = 1761;
    fc.assert(
      fc.property(anyTarget, fc.array(anyEdition(2), { minLength: 1, maxLength: 5 }), (asked, editions) => {
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
