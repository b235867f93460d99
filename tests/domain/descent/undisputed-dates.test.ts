import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { DatesNetwork, LinkedDates } from '../../../src/domain/descent/dates-network.ts';
import { solveDates } from '../../../src/domain/descent/solve-dates.ts';
import { runs } from '../../support/runs.ts';
import { anyNetwork, type NetworkShape } from './any-network.ts';
import { dated, inDays, inLines, link, network } from './network.ts';

vi.setConfig({ testTimeout: runs(60_000, 900_000) });

/** Two prints that contradict each other, and beside them an engraving in a book of 1779, drawn after a painting. */
const quarrel = network({
  bounds: [
    dated('painting', '1770/..'),
    dated('book', '1779'),
    dated('print', '1790'),
    dated('tile', '1785'),
    dated('drawing', '1765/..'),
  ],
  links: [
    link('painting', 'engraving', 60),
    link('engraving', 'book', 0),
    link('engraving', 'print', 0),
    link('print', 'tile', 30),
    link('drawing', 'print', 0),
  ],
});

describe('beside a contradiction', () => {
  const dates = solveDates(quarrel);

  test('what has no part in it is dated by all else', () => {
    const { linked, contradictory } = dates.days('engraving');
    expect([inDays(linked), contradictory]).toEqual(['1770-03-02..1779-12-31', false]);
    expect(inLines(dates.why('engraving', 'LAST'))).toEqual([
      'book not after 1779-12-31 (book 1779)',
      'engraving to book at least 0 (engraving>book)',
    ]);
  });

  test('no day rests on a claim in dispute', () => {
    expect([inDays(dates.days('drawing').linked), dates.days('drawing').contradictory]).toEqual([
      '1765-01-01..',
      false,
    ]);
  });

  test('what it speaks of has its own days', () => {
    expect(['print', 'tile'].map(name => [inDays(dates.days(name).linked), dates.days(name).contradictory])).toEqual([
      ['1790-01-01..1790-12-31', true],
      ['1785-01-01..1785-12-31', true],
    ]);
  });

  test('a second one takes no days from the others', () => {
    const both = solveDates(network({ ...quarrel, bounds: [...quarrel.bounds, dated('drawing', '1760')] }));
    expect(both.contradictions()).toHaveLength(2);
    expect([both.days('drawing').contradictory, inDays(both.days('engraving').linked)]).toEqual([
      true,
      '1770-03-02..1779-12-31',
    ]);
  });
});

describe('in random networks', () => {
  const shape: NetworkShape = {
    ...{ variables: 6, links: 7, bounds: 8, choices: 1, days: 60, lag: 25 },
    ...{ limits: true, gaps: true, mixed: true },
  };
  const seen = { variables: 0, narrowed: 0 };

  /** Whichever of the claims that contradictions name are withdrawn, if the rest holds then no day is lost that it leaves. */
  const law = (solve: (network: DatesNetwork) => LinkedDates) =>
    fc.property(anyNetwork(shape), fc.infiniteStream(fc.nat()), (given, random) => {
      const dates = solve(given);
      if (dates.contradictions().length === 0) return;
      const held = solveDates(withSomeWithdrawn(given, () => random.next().value! % 2 === 0));
      if (held.contradictions().length > 0) return;
      for (const name of dates.variables) {
        const { recorded, linked, contradictory } = dates.days(name);
        if (contradictory || !held.variables.includes(name)) continue;
        const after = held.days(name).linked;
        expect(linked.lo ?? -Infinity).toBeLessThanOrEqual(after.lo ?? -Infinity);
        expect(linked.hi ?? Infinity).toBeGreaterThanOrEqual(after.hi ?? Infinity);
        seen.variables += 1;
        if (linked.lo !== recorded.lo || linked.hi !== recorded.hi) seen.narrowed += 1;
      }
    });

  test('days hold whichever of the claims in dispute is wrong', () => {
    fc.assert(law(solveDates), { numRuns: runs(200, 2000) });
    expect(seen.variables).toBeGreaterThan(50);
    expect(seen.narrowed).toBeGreaterThan(5);
  });

  test('days that rest on a claim in dispute are found out', () => {
    const taking = (given: DatesNetwork) => {
      const dates = solveDates(given);
      const sided = solveDates(withoutFirst(given));
      return { ...dates, variables: dates.variables, days: (name: string) => daysOf(sided, name, dates) };
    };
    const daysOf = (sided: LinkedDates, name: string, dates: LinkedDates) =>
      sided.variables.includes(name) ? { ...sided.days(name), contradictory: false } : dates.days(name);
    expect(fc.check(law(taking), { numRuns: 400 }).failed).toBe(true);
  });
});

function withSomeWithdrawn(given: DatesNetwork, isWrong: () => boolean): DatesNetwork {
  const named = new Set(
    solveDates(given)
      .contradictions()
      .flatMap(({ involved }) => involved),
  );
  return [...named].filter(isWrong).reduce(without, given);
}

/** The first claim of each contradiction is always the wrong one. */
function withoutFirst(given: DatesNetwork): DatesNetwork {
  const found = solveDates(given).contradictions();
  return found.length === 0 ? given : withoutFirst(found.map(({ involved }) => involved[0]!).reduce(without, given));
}

function without({ bounds, links, choices }: DatesNetwork, wrong: string): DatesNetwork {
  const isLeft = ({ by }: { readonly by: readonly string[] }) => !by.includes(wrong);
  return {
    bounds: bounds.filter(isLeft),
    links: links.filter(isLeft),
    choices: choices.filter(({ options }) =>
      options.every(each => each.claim !== wrong && each.bounds.every(isLeft) && each.links.every(isLeft)),
    ),
  };
}
