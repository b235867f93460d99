import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isotonic } from '../../../../src/output/draw/layout/isotonic.ts';

// The example of scikit-learn's `isotonic_regression`: the first four pool to 11/4, the rest to 44/6.
test('the example of a handbook', () => {
  const expected = [...Array.from({ length: 4 }, () => 11 / 4), ...Array.from({ length: 6 }, () => 44 / 6)];
  expect(isotonic([5, 3, 1, 2, 8, 10, 7, 9, 6, 4])).toEqual(expected);
});

test.each([
  [[], []],
  [[7], [7]],
  [
    [1, 2, 2, 3],
    [1, 2, 2, 3],
  ],
  [
    [3, 2, 1],
    [2, 2, 2],
  ],
])('of %j: %j', (wishes, values) => expect(isotonic(wishes)).toEqual(values));

const wishes = fc.array(fc.integer({ min: -6, max: 6 }), { minLength: 1, maxLength: 5 });

test('never falls, and no other list that never falls is nearer to the wishes', () => {
  fc.assert(
    fc.property(wishes, each => {
      const got = isotonic(each);
      expect(got.every((value, i) => i === 0 || value >= got[i - 1]! - 1e-9)).toBe(true);
      expect(farFrom(each, got)).toBeLessThanOrEqual(farFrom(each, nearestOfAll(each)) + 1e-9);
    }),
  );
});

test('a list that is not the nearest is told from it', () => {
  expect(farFrom([3, 1], [1, 1])).toBeGreaterThan(farFrom([3, 1], isotonic([3, 1])));
});

function farFrom(some: readonly number[], others: readonly number[]): number {
  return some.reduce((sum, value, i) => sum + (value - others[i]!) ** 2, 0);
}

/** Of all ways to part the list into runs with one mean each, the nearest that never falls. */
function nearestOfAll(list: readonly number[]): number[] {
  let best: number[] | undefined;
  for (let cuts = 0; cuts < 2 ** (list.length - 1); cuts++) {
    const values = runs(list, cuts).flatMap(run => run.map(() => run.reduce((a, b) => a + b) / run.length));
    const rises = values.every((value, i) => i === 0 || value >= values[i - 1]!);
    if (rises && (best === undefined || farFrom(list, values) < farFrom(list, best))) best = values;
  }
  return best!;
}

function runs(list: readonly number[], cuts: number): number[][] {
  const parts: number[][] = [[]];
  list.forEach((value, i) => {
    parts.at(-1)!.push(value);
    if ((cuts >> i) & 1 && i < list.length - 1) parts.push([]);
  });
  return parts;
}
