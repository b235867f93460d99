import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bytesOfNumbers,
  mergedNumbers,
  numbersOfBytes,
  type WindowNumbers,
  type WindowRow,
  windowColumns,
  windowNumbers,
} from '../../../src/store/sqlite/window-numbers.ts';

const small = fc.integer({ min: -2, max: 2 });
const rows: fc.Arbitrary<readonly WindowRow[]> = fc.array(fc.tuple(small, small, fc.constant(0), small, small, small));

/** Counts by window, worked with a map. */
function sums(all: readonly WindowRow[]): Record<string, number> {
  const found: Record<string, number> = {};
  for (const [profile, dateClass, detail, first, last, count] of all) {
    const name = [profile, dateClass, detail, first, last].join();
    found[name] = (found[name] ?? 0) + count;
  }
  return Object.fromEntries(Object.entries(found).filter(([, count]) => count !== 0));
}

function rowsOf(numbers: WindowNumbers): WindowRow[] {
  const { profile, dateClass, detail, first, last, count } = windowColumns(numbers);
  return [...count].map((c, i) => [profile[i]!, dateClass[i]!, detail[i]!, first[i]!, last[i]!, c]);
}

function isInOrder(all: readonly WindowRow[]): boolean {
  const byWindow = (a: WindowRow, b: WindowRow) =>
    a
      .slice(0, 5)
      .map((n, i) => n - b[i]!)
      .find(d => d !== 0) ?? 0;
  return all.every((row, i) => i === 0 || byWindow(all[i - 1]!, row) < 0);
}

describe('windows as numbers', () => {
  test('hold each window once, in order, with its counts added up; what comes to nothing is left out', () => {
    fc.assert(
      fc.property(rows, rows, (a, b) => {
        const [one, other] = [windowNumbers(a), windowNumbers(b)];
        expect(sums(rowsOf(one))).toEqual(sums(a));
        const merged = rowsOf(mergedNumbers(one, other));
        expect(sums(merged)).toEqual(sums([...a, ...b]));
        expect(merged).toHaveLength(Object.keys(sums(merged)).length);
        expect(isInOrder(merged)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  test('are bytes, low byte first, and come back', () => {
    const numbers = windowNumbers([[1, 2, 0, -1_000_000_000, 258, 3]]);
    const bytes = Uint8Array.from(bytesOfNumbers(numbers));
    expect([...bytes]).toEqual([
      ...[1, 0, 0, 0],
      ...[2, 0, 0, 0],
      ...[0, 0, 0, 0],
      ...[0, 54, 101, 196],
      ...[2, 1, 0, 0],
      ...[3, 0, 0, 0],
    ]);
    expect(numbersOfBytes(bytes)).toEqual(numbers);
  });
});
