import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import type { DatesNetwork } from '../../../src/domain/descent/dates-network.ts';
import { solveDates } from '../../../src/domain/descent/solve-dates.ts';
import { runs } from '../../support/runs.ts';
import { anyNetwork, type NetworkShape } from './any-network.ts';

vi.setConfig({ testTimeout: runs(60_000, 900_000) });

/**
 * Days against those of HiGHS, a solver of linear programs of the University of Edinburgh (https://highs.dev), as
 * compiled for the npm package `highs`. Days are whole numbers in both: the programs are of differences alone.
 */
type Load = typeof loadHighs.default;
let highs: Awaited<ReturnType<Load>>;
beforeAll(async () => {
  // The package declares for import what it exports for require.
  highs = await (loadHighs as unknown as Load)();
});

const shape: NetworkShape = {
  ...{ variables: 9, links: 14, bounds: 9, choices: 0, days: 4000, lag: 700 },
  ...{ limits: true, gaps: false, mixed: false },
};

/** The least or greatest value of a variable; undefined if there is no end to it. Anything else than an answer is an error. */
function extreme(network: DatesNetwork, goal: 'Minimize' | 'Maximize', variable: string): number | undefined {
  const { Status, ObjectiveValue } = highs.solve(programOf(network, goal, variable), { presolve: 'off' });
  if (Status === 'Unbounded') return undefined;
  if (Status !== 'Optimal') throw new Error(`HiGHS says neither a value nor that there is none: ${Status}`);
  return Math.round(ObjectiveValue);
}

function isFeasible(network: DatesNetwork, variable: string): boolean {
  const { Status } = highs.solve(programOf(network, 'Minimize', `0 ${variable}`), { presolve: 'off' });
  if (Status !== 'Optimal' && Status !== 'Infeasible') throw new Error(`HiGHS says neither yes nor no: ${Status}`);
  return Status === 'Optimal';
}

/** In the LP format of CPLEX, which HiGHS reads. */
function programOf({ bounds, links }: DatesNetwork, goal: string, objective: string): string {
  const names = new Set([...bounds.map(({ variable }) => variable), ...links.flatMap(({ from, to }) => [from, to])]);
  const rows = [
    ...bounds.flatMap(({ variable, days: [range] }) => limits(variable, range?.lo, range?.hi)),
    ...links.flatMap(({ from, to, least, most }) => limits(`${to} - ${from}`, least, most)),
  ];
  const free = [...names].map(name => ` ${name} free`);
  return [
    goal,
    ` obj: ${objective}`,
    'Subject To',
    ...rows.map((row, i) => ` c${i}: ${row}`),
    'Bounds',
    ...free,
    'End',
  ].join('\n');
}

function limits(expression: string, least: number | undefined, most: number | undefined): readonly string[] {
  return [
    ...(least === undefined ? [] : [`${expression} >= ${least}`]),
    ...(most === undefined ? [] : [`${expression} <= ${most}`]),
  ];
}

function range(lo: number | undefined, hi: number | undefined): DayRange {
  return { ...(lo === undefined ? {} : { lo }), ...(hi === undefined ? {} : { hi }) };
}

describe('against a solver of linear programs', () => {
  const seen = { consistent: 0, contradictory: 0, days: 0 };
  const law = (solve: typeof solveDates) =>
    fc.property(anyNetwork(shape), network => {
      const dates = solve(network);
      const [first] = dates.variables;
      if (first === undefined) return;
      const feasible = isFeasible(network, first);
      expect(dates.contradictions().length === 0).toBe(feasible);
      seen[feasible ? 'consistent' : 'contradictory'] += 1;
      if (!feasible) return;
      for (const name of dates.variables) {
        const expected = range(extreme(network, 'Minimize', name), extreme(network, 'Maximize', name));
        expect([name, dates.days(name).linked]).toEqual([name, expected]);
        seen.days += 1;
      }
    });

  test('days and contradictions are the same', () => {
    fc.assert(law(solveDates), { numRuns: runs(100, 500) });
    expect(seen.consistent).toBeGreaterThan(20);
    expect(seen.contradictory).toBeGreaterThan(10);
  });

  test('a day too few is found out', () => {
    const hasty: typeof solveDates = network =>
      solveDates({
        ...network,
        links: network.links.map(link => (link.least === undefined ? link : { ...link, least: link.least - 1 })),
      });
    expect(fc.check(law(hasty), { numRuns: 100 }).failed).toBe(true);
  });
});
