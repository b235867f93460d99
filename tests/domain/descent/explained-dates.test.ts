import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { involvedIn } from '../../../src/domain/descent/date-reasons.ts';
import type {
  DateContradiction,
  DateLink,
  DatesNetwork,
  DayBound,
  DayEnd,
  LinkedDates,
} from '../../../src/domain/descent/dates-network.ts';
import { solveDates } from '../../../src/domain/descent/solve-dates.ts';
import { runs } from '../../support/runs.ts';
import { anyNetwork, type NetworkShape } from './any-network.ts';

vi.setConfig({ testTimeout: runs(60_000, 900_000) });

const shape: NetworkShape = {
  ...{ variables: 6, links: 9, bounds: 7, choices: 0, days: 60, lag: 25 },
  ...{ limits: true, gaps: true, mixed: false },
};

type Solve = (network: DatesNetwork) => LinkedDates;

/** The network of some of its claims. */
function only({ bounds, links, choices }: DatesNetwork, claims: readonly string[]): DatesNetwork {
  const isOf = ({ by }: { readonly by: readonly string[] }) => by.every(id => claims.includes(id));
  return { bounds: bounds.filter(isOf), links: links.filter(isOf), choices };
}

/** The same network said by five claims, each of several things. */
function withFewClaims({ bounds, links, choices }: DatesNetwork): DatesNetwork {
  const few = <T extends DayBound | DateLink>(each: T, i: number): T => ({ ...each, by: [`claim ${i % 5}`] });
  return { bounds: bounds.map(few), links: links.map(few), choices };
}

function contradicts(network: DatesNetwork): boolean {
  return solveDates(network).contradictions().length > 0;
}

function without<T>(list: readonly T[], item: T): readonly T[] {
  return list.filter(each => each !== item);
}

function each(contradictions: readonly DateContradiction[]): readonly DateContradiction[] {
  return contradictions.flatMap(({ smaller, ...whole }) => (smaller === undefined ? [whole] : [whole, smaller]));
}

describe('a contradiction', () => {
  const law = (solve: Solve, networks = anyNetwork(shape)) =>
    fc.property(networks, network => {
      for (const { involved, smaller, daysShort } of solve(network).contradictions()) {
        if (smaller !== undefined) {
          expect(smaller.involved.length).toBeLessThan(involved.length);
          expect(smaller.daysShort).toBeLessThan(daysShort);
        }
      }
      for (const { involved, daysShort } of each(solve(network).contradictions())) {
        expect(contradicts(only(network, involved))).toBe(true);
        for (const claim of involved) expect(contradicts(only(network, without(involved, claim)))).toBe(false);
        expect(daysShort).toBeGreaterThan(0);
      }
    });

  test('names claims that cannot all be right, and none too many', () => {
    fc.assert(law(solveDates), { numRuns: runs(200, 1000) });
  });

  test('names none too many where a claim says several things', () => {
    fc.assert(law(solveDates, anyNetwork(shape).map(withFewClaims)), { numRuns: runs(200, 1000) });
  });

  test('that names a claim too many is found out', () => {
    const wordy: Solve = network => {
      const dates = solveDates(network);
      const all = [...network.bounds, ...network.links].flatMap(({ by }) => by);
      return { ...dates, contradictions: () => dates.contradictions().map(said => ({ ...said, involved: all })) };
    };
    expect(fc.check(law(wordy), { numRuns: 300 }).failed).toBe(true);
  });

  test('is gone when one of its links or days gives way by the days short, if it is the only one', () => {
    const { limits: _, ...rest } = shape;
    const lone = anyNetwork({ ...rest, limits: false, gaps: false });
    fc.assert(
      fc.property(lone, network => {
        const [only, ...others] = solveDates(network).contradictions();
        if (only === undefined || others.length > 0 || only.code === 'LOOP') return;
        const ending = only.reasons.at(-1)!;
        if (ending.kind !== 'BOUND') throw new Error('expected a last day');
        const eased = (days: number) => ({
          ...network,
          bounds: network.bounds.map(bound => {
            const [given] = bound.days;
            const isIt = bound.by[0] === ending.by[0] && given?.hi !== undefined;
            return isIt ? { ...bound, days: [{ ...given, hi: given.hi + days }] } : bound;
          }),
        });
        expect(solveDates(eased(only.daysShort - 1)).days(ending.variable).contradictory).toBe(true);
        const short = (found: LinkedDates) =>
          found.contradictions().some(each => each.involved.includes(ending.by[0]!));
        if (network.bounds.filter(({ variable }) => variable === ending.variable).length === 1) {
          expect(short(solveDates(eased(only.daysShort)))).toBe(false);
        }
      }),
      { numRuns: runs(200, 1000) },
    );
  });
});

describe('why a day is the first or the last', () => {
  const ends: readonly DayEnd[] = ['FIRST', 'LAST'];
  const dayAt = (dates: LinkedDates, name: string, end: DayEnd) => {
    if (!dates.variables.includes(name)) return undefined;
    const { lo, hi } = dates.days(name).linked;
    return end === 'FIRST' ? lo : hi;
  };

  const law = (solve: Solve, networks = anyNetwork(shape)) =>
    fc.property(networks, network => {
      const dates = solve(network);
      for (const name of dates.variables) {
        if (dates.days(name).contradictory) continue;
        for (const end of ends) {
          const claims = involvedIn(dates.why(name, end));
          const said = dayAt(dates, name, end);
          expect(claims.length > 0).toBe(said !== undefined);
          expect([name, end, dayAt(solveDates(only(network, claims)), name, end)]).toEqual([name, end, said]);
          for (const claim of claims) {
            expect(dayAt(solveDates(only(network, without(claims, claim))), name, end)).not.toBe(said);
          }
        }
      }
    });

  test('names claims that say so, and none too many', () => {
    fc.assert(law(solveDates), { numRuns: runs(150, 1000) });
  });

  test('names none too many where a claim says several things', () => {
    fc.assert(law(solveDates, anyNetwork(shape).map(withFewClaims)), { numRuns: runs(150, 1000) });
  });

  test('that leaves out a claim is found out', () => {
    const curt: Solve = network => {
      const dates = solveDates(network);
      return { ...dates, why: (name, end) => dates.why(name, end).slice(1) };
    };
    expect(fc.check(law(curt), { numRuns: 200 }).failed).toBe(true);
  });

  test('names, over alternatives, claims that say so', () => {
    const withChoices = { ...shape, variables: 5, links: 5, choices: 2, mixed: true };
    fc.assert(
      fc.property(anyNetwork(withChoices), network => {
        const dates = solveDates(network);
        for (const name of dates.variables) {
          if (dates.days(name).contradictory) continue;
          for (const end of ends) {
            const claims = involvedIn(dates.why(name, end));
            const kept = onlyWithChoices(network, claims);
            expect([name, end, dayAt(solveDates(kept), name, end)]).toEqual([name, end, dayAt(dates, name, end)]);
          }
        }
      }),
      { numRuns: runs(150, 1000) },
    );
  });
});

/** The network of some of its claims, with the choices of which each option is among them. */
function onlyWithChoices(network: DatesNetwork, claims: readonly string[]): DatesNetwork {
  const { bounds, links } = only(network, claims);
  const choices = network.choices.filter(({ options }) => options.every(({ claim }) => claims.includes(claim)));
  return { bounds, links, choices };
}

describe('room', () => {
  const over = { ...shape, gaps: false };
  const constraintOf = ({ bounds, links }: DatesNetwork, id: string) =>
    [...bounds, ...links].find(({ by }) => by[0] === id)!;

  /** The network in which a claim says more, by so many days. */
  const tightened = (network: DatesNetwork, id: string, kind: string, days: number): DatesNetwork => ({
    ...network,
    bounds: network.bounds.map(bound => (bound.by[0] === id ? tightBound(bound, kind, days) : bound)),
    links: network.links.map(link => (link.by[0] === id ? tightLink(link, kind, days) : link)),
  });

  const law = (solve: Solve, shapes: NetworkShape) =>
    fc.property(anyNetwork(shapes), network => {
      const dates = solve(network);
      if (dates.contradictions().length > 0) return;
      for (const { by } of [...network.bounds, ...network.links]) {
        const id = by[0]!;
        const room = dates.room(id);
        for (const kind of ['first', 'last', 'least', 'most'] as const) {
          const days = room[kind];
          if (days === undefined) {
            if (says(constraintOf(network, id), kind))
              expect(contradicts(tightened(network, id, kind, 10_000))).toBe(false);
            continue;
          }
          expect([kind, contradicts(tightened(network, id, kind, days))]).toEqual([kind, false]);
          expect([kind, contradicts(tightened(network, id, kind, days + 1))]).toEqual([kind, true]);
        }
      }
    });

  test('is what a claim can say more without contradicting, to the day', () => {
    fc.assert(law(solveDates, over), { numRuns: runs(100, 1000) });
  });

  test('is so too where alternatives follow in the order of time', () => {
    const inTime = { ...over, limits: false, choices: 2, links: 6 };
    fc.assert(law(solveDates, inTime), { numRuns: runs(100, 1000) });
  });

  test('a day too much is found out', () => {
    const generous: Solve = network => {
      const dates = solveDates(network);
      const more = (id: string) =>
        Object.fromEntries(Object.entries(dates.room(id)).map(([kind, days]) => [kind, days + 1]));
      return { ...dates, room: more };
    };
    expect(fc.check(law(generous, over), { numRuns: 200 }).failed).toBe(true);
  });
});

function says(constraint: DayBound | DateLink, kind: 'first' | 'last' | 'least' | 'most'): boolean {
  if ('variable' in constraint) {
    return kind === 'first'
      ? constraint.days[0]?.lo !== undefined
      : kind === 'last' && constraint.days.at(-1)?.hi !== undefined;
  }
  return (kind === 'least' || kind === 'most') && constraint[kind] !== undefined;
}

function tightBound(bound: DayBound, kind: string, days: number): DayBound {
  const [range = {}] = bound.days;
  if (kind === 'first') return { ...bound, days: [{ ...range, lo: range.lo! + days }] };
  return { ...bound, days: [{ ...range, hi: range.hi! - days }] };
}

function tightLink(link: DateLink, kind: string, days: number): DateLink {
  return kind === 'least' ? { ...link, least: link.least! + days } : { ...link, most: link.most! - days };
}

describe('what is solved', () => {
  const over = { ...shape, choices: 2, mixed: true, links: 6 };
  const shuffled = anyNetwork(over).chain(network => {
    const mixed = <T>(list: readonly T[]) => fc.shuffledSubarray([...list], { minLength: list.length });
    const { bounds, links, choices } = network;
    return fc.tuple(
      fc.constant(network),
      fc.record({ bounds: mixed(bounds), links: mixed(links), choices: mixed(choices) }),
    );
  });

  /** Everything that a solution tells. */
  const all = (solve: Solve, network: DatesNetwork) => {
    const dates = solve(network);
    const names = dates.variables.toSorted();
    const claims = [...network.bounds, ...network.links].flatMap(({ by }) => by).sort();
    return {
      days: names.map(name => [name, dates.days(name), dates.why(name, 'FIRST'), dates.why(name, 'LAST')]),
      contradictions: dates.contradictions(),
      alternatives: dates.alternatives(),
      rooms: claims.map(dates.room),
    };
  };

  test('is the same in whatever order the claims come', () => {
    fc.assert(
      fc.property(shuffled, ([network, other]) => {
        expect(all(solveDates, other)).toEqual(all(solveDates, network));
      }),
      { numRuns: runs(150, 1000) },
    );
  });

  test('in an order of its own is found out', () => {
    const fickle: Solve = network => {
      const dates = solveDates(network);
      return { ...dates, contradictions: () => (network.links[0]?.from === 'v0' ? dates.contradictions() : []) };
    };
    const law = fc.property(shuffled, ([network, other]) => {
      expect(all(fickle, other)).toEqual(all(fickle, network));
    });
    expect(fc.check(law, { numRuns: 400 }).failed).toBe(true);
  });

  test('is never wider for one more claim', () => {
    const law = (solve: Solve) =>
      fc.property(anyNetwork(over), fc.nat(), (network, n) => {
        const left = network.links[n % Math.max(1, network.links.length)];
        if (left === undefined) return;
        const [whole, fewer] = [solve(network), solve({ ...network, links: without(network.links, left) })];
        if (whole.contradictions().length > 0) return;
        expect(fewer.contradictions()).toEqual([]);
        for (const name of fewer.variables) {
          const [wide, narrow] = [fewer.days(name).linked, whole.days(name).linked];
          expect(narrow.lo ?? -Infinity).toBeGreaterThanOrEqual(wide.lo ?? -Infinity);
          expect(narrow.hi ?? Infinity).toBeLessThanOrEqual(wide.hi ?? Infinity);
        }
      });
    fc.assert(law(solveDates), { numRuns: runs(150, 1000) });
    const forgetful: Solve = network =>
      solveDates(network.links.length > 3 ? { ...network, bounds: network.bounds.slice(1) } : network);
    expect(fc.check(law(forgetful), { numRuns: 400 }).failed).toBe(true);
  });
});
