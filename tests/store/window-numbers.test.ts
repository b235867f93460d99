import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bytesOfNumbers,
  mergedTallies,
  numbersOfBytes,
  type TallyNumbers,
  type TallyRow,
  tallyNumbers,
  windowColumns,
  windowsOfTally,
} from '../../src/store/window-numbers.ts';

const small = fc.integer({ min: -2, max: 2 });
const traits = fc.nat(3);
const rows: fc.Arbitrary<readonly TallyRow[]> = fc.array(
  fc.tuple(small, small, fc.constant(0), small, small, traits, small),
);

/** Counts by all but the last number, worked with a map. */
function sums(all: readonly (readonly number[])[]): Record<string, number> {
  const found: Record<string, number> = {};
  for (const row of all) {
    const name = row.slice(0, -1).join();
    found[name] = (found[name] ?? 0) + row.at(-1)!;
  }
  return Object.fromEntries(Object.entries(found).filter(([, count]) => count !== 0));
}

function rowsOfTally(numbers: TallyNumbers): number[][] {
  const length = numbers.length / 7;
  return Array.from({ length }, (_, i) => Array.from({ length: 7 }, (__, field) => numbers[field * length + i]!));
}

function rowsOfWindows(numbers: Int32Array<ArrayBuffer>): number[][] {
  const { profile, dateClass, detail, first, last, count } = windowColumns(numbers);
  return [...count].map((c, i) => [profile[i]!, dateClass[i]!, detail[i]!, first[i]!, last[i]!, c]);
}

function isInOrder(all: readonly (readonly number[])[]): boolean {
  const inOrder = (a: readonly number[], b: readonly number[]) =>
    a
      .slice(0, -1)
      .map((number, i) => number - b[i]!)
      .find(difference => difference !== 0) ?? 0;
  return all.every((row, i) => i === 0 || inOrder(all[i - 1]!, row) < 0);
}

describe('tallies as numbers', () => {
  test('hold each window with its traits once, in order, with its counts added up; what comes to nothing is left out', () => {
    fc.assert(
      fc.property(rows, rows, (a, b) => {
        const [one, other] = [tallyNumbers(a), tallyNumbers(b)];
        expect(sums(rowsOfTally(one))).toEqual(sums(a));
        const merged = rowsOfTally(mergedTallies(one, other));
        expect(sums(merged)).toEqual(sums([...a, ...b]));
        expect(merged).toHaveLength(Object.keys(sums(merged)).length);
        expect(isInOrder(merged)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  test('give the windows of the rows whose traits pass', () => {
    fc.assert(
      fc.property(rows, fc.option(fc.subarray([0, 1, 2, 3]), { nil: undefined }), (all, passing) => {
        const passes = passing && Uint8Array.from([0, 1, 2, 3], number => (passing.includes(number) ? 1 : 0));
        const windows = rowsOfWindows(windowsOfTally(tallyNumbers(all), passes));
        const expected = all.filter(row => passing === undefined || passing.includes(row[5]));
        expect(sums(windows)).toEqual(sums(expected.map(row => [...row.slice(0, 5), row[6]])));
        expect(windows).toHaveLength(Object.keys(sums(windows)).length);
        expect(isInOrder(windows)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  test('are bytes, low byte first, and come back', () => {
    const numbers = tallyNumbers([[1, 2, 0, -1_000_000_000, 258, 4, 3]]);
    const bytes = Uint8Array.from(bytesOfNumbers(numbers));
    expect([...bytes]).toEqual([
      ...[1, 0, 0, 0],
      ...[2, 0, 0, 0],
      ...[0, 0, 0, 0],
      ...[0, 54, 101, 196],
      ...[2, 1, 0, 0],
      ...[4, 0, 0, 0],
      ...[3, 0, 0, 0],
    ]);
    expect(numbersOfBytes(bytes)).toEqual(numbers);
  });
});
