import { expect, test } from 'vitest';
import { compareKeys, NearestWindows, type OrderKeys } from '../../src/questions/nearest-windows.ts';
import type { WindowColumns } from '../../src/store/graph-store.ts';
import { seededRandom } from '../support/seeded-random.ts';

/** A window by its keys, with what each of some columns counts of it, the newest first. */
interface Offered {
  readonly keys: OrderKeys;
  readonly counts: readonly number[];
}

test.each([1, 60, 200, 700, 5000])(
  'the first %i editions are held by the windows kept, however many are offered',
  wanted => {
    const random = seededRandom(wanted);
    for (let round = 0; round < 40; round++) {
      const windows = manyWindows(random);
      const begin = round % 2 === 0 ? undefined : windows[Math.floor(random() * windows.length)]!.keys;
      expect(firstOf(keptOf(windows, begin, wanted), begin, wanted)).toEqual(firstOf(allOf(windows), begin, wanted));
    }
  },
);

/** Counts come to no less than none at any time: what a newer column takes away an older one has given. */
function manyWindows(random: () => number): readonly Offered[] {
  return Array.from({ length: 1500 }, () => {
    const older = Math.floor(random() * 3);
    const newer = Math.floor(random() * (older + 3)) - older;
    return { keys: [Math.floor(random() * 3), Math.floor(random() * 400)], counts: [newer, older] };
  });
}

function keptOf(windows: readonly Offered[], begin: OrderKeys | undefined, wanted: number): Map<string, number> {
  const nearest = new NearestWindows(begin, wanted);
  for (const column of [0, 1]) {
    const columns = { count: Int32Array.from(windows, ({ counts }) => counts[column]!) } as unknown as WindowColumns;
    windows.forEach(({ keys: [a, b] }, at) => {
      nearest.offer(a, b, columns, at);
    });
  }
  return summed(nearest.windows().map(({ keys, columns, at }) => [keys, columns.count[at]!]));
}

function allOf(windows: readonly Offered[]): Map<string, number> {
  return summed(windows.map(({ keys, counts }) => [keys, counts[0]! + counts[1]!]));
}

function summed(each: readonly (readonly [OrderKeys, number])[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const [keys, count] of each) sums.set(keys.join(), (sums.get(keys.join()) ?? 0) + count);
  return sums;
}

/** Keys from the beginning on with their editions, until there are as many as are wanted after it. */
function firstOf(sums: ReadonlyMap<string, number>, begin: OrderKeys | undefined, wanted: number): unknown {
  const ordered = [...sums]
    .map(([keys, count]) => ({ keys: keys.split(',').map(Number) as unknown as OrderKeys, count }))
    .filter(({ keys }) => begin === undefined || compareKeys(keys, begin) >= 0)
    .sort((x, y) => compareKeys(x.keys, y.keys));
  let held = 0;
  return ordered.filter(({ keys, count }) => {
    const isWanted = held < wanted;
    if (begin === undefined || compareKeys(keys, begin) > 0) held += count;
    return isWanted;
  });
}
