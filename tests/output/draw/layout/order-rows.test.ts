import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { geometry } from '../../../../src/output/draw/layout/geometry.ts';
import { orderRows } from '../../../../src/output/draw/layout/order-rows.ts';
import { countCrossings, type RowProblem } from '../../../../src/output/draw/layout/row-problem.ts';
import { rowProblemOf } from '../../../../src/output/draw/layout/row-problem-of.ts';
import { siftRows } from '../../../../src/output/draw/layout/sift-rows.ts';
import { sweepRows } from '../../../../src/output/draw/layout/sweep-rows.ts';
import { drawing, family, fanOfForty, node, numbers, step, years } from '../drawings.ts';
import { randomDrawing } from '../random-drawing.ts';

const exchanges = 100_000;

/** Every order of 0..n-1. */
function* orders(n: number, taken: readonly number[] = []): Generator<readonly number[]> {
  if (taken.length === n) yield taken;
  for (let i = 0; i < n; i++) if (!taken.includes(i)) yield* orders(n, [...taken, i]);
}

function fewest(problem: RowProblem): number {
  let least = Number.POSITIVE_INFINITY;
  for (const order of orders(problem.strips.length)) least = Math.min(least, countCrossings(problem, order));
  return least;
}

/** A family of pictures in which every one but the first has one or two sources, crowded in time. */
function crowded(count: number, seed: number) {
  const next = numbers(seed);
  const nodes = Array.from({ length: count }, (_, i) => {
    const year = 1700 + Math.floor(next() * 60);
    return node(`plate-${i}`, 'plate', 'Plate', years(year, year + Math.floor(next() * 10)));
  });
  const steps = nodes.slice(1).flatMap((each, i) => {
    const one = Math.floor(next() * (i + 1));
    const other = Math.floor(next() * (i + 1));
    return [...new Set([one, ...(next() < 0.5 ? [other] : [])])].map(from => step(`plate-${from}`, each.id));
  });
  return drawing(nodes, steps);
}

describe('few crossings', () => {
  test('as few as any order has, for nearly all small families, tried against every order', () => {
    const counts = Array.from({ length: 120 }, (_, seed) => {
      const where = geometry(crowded(4 + (seed % 4), seed));
      const problem = rowProblemOf(where);
      return { least: fewest(problem), had: countCrossings(problem, orderRows(where, exchanges).flat()) };
    });
    const reached = counts.filter(({ least, had }) => had === least).length;
    const sum = (key: 'least' | 'had') => counts.reduce((total, each) => total + each[key], 0);
    console.info(
      `${reached} of ${counts.length} families have as few crossings as any order: ${sum('had')} in all, ${sum('least')} at least`,
    );
    expect(counts.every(({ least, had }) => had >= least)).toBe(true);
    expect(reached).toBeGreaterThanOrEqual(114);
    expect(sum('had')).toBeLessThanOrEqual(sum('least') + 8);
  });

  test('the first order alone has more: the measure can fail', () => {
    const where = geometry(family(60, 5));
    const problem = rowProblemOf(where);
    const unordered = where.spots.map((_, i) => i);
    const ordered = orderRows(where, exchanges).flat();
    expect(countCrossings(problem, ordered) * 3).toBeLessThan(countCrossings(problem, unordered));
  });

  test('none where each has one source and no two are near in time', () => {
    const where = geometry(
      drawing(
        Array.from({ length: 12 }, (_, i) => node(`plate-${i}`, 'plate', 'P', years(1700 + 40 * i))),
        Array.from({ length: 11 }, (_, i) => step(`plate-${Math.floor(i / 3)}`, `plate-${i + 1}`)),
      ),
    );
    expect(countCrossings(rowProblemOf(where), orderRows(where, exchanges).flat())).toBe(0);
  });

  test('a fan has none', () => {
    const where = geometry(fanOfForty);
    expect(countCrossings(rowProblemOf(where), orderRows(where, exchanges).flat())).toBe(0);
  });
});

describe('every node stands in the order once, whatever the steps', () => {
  test('in groups that steps join', () => {
    fc.assert(
      fc.property(randomDrawing(20), each => {
        const where = geometry(each);
        const groups = orderRows(where, 5_000);
        expect(groups.flat().toSorted((a, b) => a - b)).toEqual(where.spots.map((_, i) => i));
        const group = new Map(groups.flatMap((nodes, i) => nodes.map(number => [number, i] as const)));
        expect(where.lanes.filter(({ from, to }) => group.get(from) !== group.get(to))).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});

/** One source at x 0 over two copies; another picture's line and name lie between. */
const threeRows: RowProblem = {
  strips: [
    [{ lo: -5, hi: 40, of: 0 }],
    [
      { lo: 95, hi: 150, of: 1 },
      { lo: 0, hi: 100, of: 3 },
    ],
    [
      { lo: 95, hi: 150, of: 2 },
      { lo: 10, hi: 100, of: 0 },
    ],
    [{ lo: -60, hi: -20, of: 3 }],
  ],
  uprights: [
    { x: 10, members: [0, 2] },
    { x: -40, members: [3, 1] },
  ],
};

describe('counting crossings', () => {
  test.each([
    [[0, 1, 2, 3], 1],
    [[0, 2, 1, 3], 0],
    [[3, 0, 1, 2], 1],
    [[1, 3, 0, 2], 0],
  ])('in the order %j: %i', (order, crossings) => {
    expect(countCrossings(threeRows, order)).toBe(crossings);
  });

  test('sifting finds the order without crossings, and what it gains is what counting says', () => {
    expect(countCrossings(threeRows, siftRows(threeRows, [0, 1, 2, 3], 1000))).toBe(0);
    expect(siftRows(threeRows, [0, 1, 2, 3], 0)).toEqual([0, 1, 2, 3]);
  });

  test('neither sifting nor sweeping ever gives more crossings than there were', () => {
    for (let seed = 0; seed < 40; seed++) {
      const problem = rowProblemOf(geometry(crowded(25, seed)));
      const first = problem.strips.map((_, i) => i);
      const before = countCrossings(problem, first);
      expect(countCrossings(problem, siftRows(problem, first, 20_000))).toBeLessThanOrEqual(before);
      expect(countCrossings(problem, sweepRows(problem, first))).toBeLessThanOrEqual(before);
    }
  });
});
