import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import type { DatesNetwork, LinkedDates } from '../../../src/domain/descent/dates-network.ts';
import { solveDates } from '../../../src/domain/descent/solve-dates.ts';
import { runs } from '../../support/runs.ts';
import { anyNetwork, type NetworkShape } from './any-network.ts';
import { byTrial } from './by-trial.ts';

vi.setConfig({ testTimeout: runs(60_000, 900_000) });

/**
 * Days from 0 to 5 and two links of at most 3 days one after the other: a bounded day lies between -6 and 11, and one
 * that is not is found within 6 days of an end of the window.
 */
const small: NetworkShape = {
  ...{ variables: 3, links: 4, bounds: 4, choices: 0, days: 5, lag: 3 },
  ...{ limits: true, gaps: false, mixed: false },
};
const window = { first: -13, last: 18 };

type Solve = (network: DatesNetwork) => LinkedDates;

function sameAsTrial(shape: NetworkShape, solve: Solve = solveDates) {
  return fc.property(anyNetwork(shape), network => {
    const dates = solve(network);
    const tried = byTrial(network, dates.variables, window.first, window.last);
    expect(dates.contradictions().length === 0).toBe(tried.consistent);
    if (!tried.consistent) return;
    const ranges = dates.variables.map(name => [name, dates.days(name).linked]);
    expect(ranges).toEqual(dates.variables.map(name => [name, openAtEnds(tried.days[name]!)]));
    for (const { claim, possible } of dates.alternatives())
      expect([claim, possible]).toEqual([claim, tried.possible.has(claim)]);
    expect(dates.exact).toBe(true);
  });
}

function openAtEnds([lo, hi]: readonly [number, number]): DayRange {
  return { ...(lo < -6 ? {} : { lo }), ...(hi > 11 ? {} : { hi }) };
}

const found = (law: fc.IProperty<[DatesNetwork]>) => fc.check(law, { numRuns: 400 }).failed;

describe('against every day of every variable', () => {
  test('days and contradictions are right with limits and loops', () => {
    fc.assert(sameAsTrial(small), { numRuns: runs(100, 1000) });
  });

  test('with gaps between recorded days', () => {
    fc.assert(sameAsTrial({ ...small, gaps: true }), { numRuns: runs(100, 1000) });
  });

  test('with alternatives in the order of time', () => {
    fc.assert(sameAsTrial({ ...small, choices: 2, gaps: true, limits: false }), { numRuns: runs(100, 1000) });
  });

  test('with alternatives of any form, limits, loops and gaps', () => {
    fc.assert(sameAsTrial({ ...small, choices: 2, gaps: true, mixed: true }), { numRuns: runs(100, 1000) });
  });

  test('what forgets limits is found out', () => {
    const forgetful: Solve = network =>
      solveDates({ ...network, links: network.links.map(({ most: _, ...link }) => ({ least: 0, ...link })) });
    expect(found(sameAsTrial(small, forgetful))).toBe(true);
  });

  test('what takes the hull of days with gaps is found out', () => {
    const coarse: Solve = network =>
      solveDates({
        ...network,
        bounds: network.bounds.map(bound => ({
          ...bound,
          days: [{ lo: bound.days[0]?.lo, hi: bound.days.at(-1)?.hi }],
        })),
      });
    expect(found(sameAsTrial({ ...small, gaps: true }, coarse))).toBe(true);
  });

  test('what takes the first alternative is found out', () => {
    const hasty: Solve = network =>
      solveDates({
        ...network,
        choices: network.choices.map(choice => ({ ...choice, options: choice.options.slice(0, 1) })),
      });
    expect(found(sameAsTrial({ ...small, choices: 2, mixed: true }, hasty))).toBe(true);
  });
});
