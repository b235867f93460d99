import type { WindowColumns } from '../store/graph-store.ts';
import type { Breath } from './breath.ts';

/**
 * Windows that keys decide, key by key, in the order of their first day for sale and in that of their last day: how many
 * editions lie on either side of a cut day is found by halving.
 */
export interface WindowRuns {
  /** Keys that are there, each once; the windows of the i-th stand from starts[i] to before starts[i + 1]. */
  readonly keys: readonly number[];
  readonly starts: Int32Array;
  readonly byStart: RunOrder;
  readonly byLast: RunOrder;
  /** Places of the windows that are judged by themselves, in order; and the same to look up. */
  readonly apart: readonly number[];
  readonly isApart: ReadonlySet<number>;
}

export interface RunOrder {
  /** Places of windows in the columns. */
  readonly places: Int32Array;
  /** The days that they are in the order of. */
  readonly days: Int32Array;
  /** Editions of all windows before each, and one more of all. */
  readonly before: Float64Array;
}

/** @param startOf first day for sale of the window at a place @param isApart of a place among those that may be */
export async function makeRuns(
  columns: WindowColumns,
  { keys, apart }: { readonly keys: Int32Array; readonly apart: readonly number[] },
  startOf: (at: number) => number,
  isApart: (at: number) => boolean,
  breath: Breath,
): Promise<WindowRuns> {
  const alone = apart.filter(isApart);
  const without = new Set(alone);
  const { distinct, starts, places } = byKey(keys, without);
  const order = async (dayOf: (at: number) => number): Promise<RunOrder> => {
    const ordered = places.slice();
    for (let run = 0; run < distinct.length; run++) {
      sortRun(ordered.subarray(starts[run], starts[run + 1]), dayOf);
      if (breath.isDue()) await breath.take();
    }
    return { places: ordered, days: ordered.map(dayOf), before: sumsBefore(ordered, columns.count) };
  };
  return {
    keys: distinct,
    starts,
    byStart: await order(startOf),
    byLast: await order(at => columns.last[at]!),
    apart: alone,
    isApart: without,
  };
}

/** Place of the first day after `cut` within a run; its end if there is none. */
export function firstAfter(days: Int32Array, cut: number, from: number, end: number): number {
  let low = from;
  let high = end;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (days[middle]! <= cut) low = middle + 1;
    else high = middle;
  }
  return low;
}

interface ByKey {
  readonly distinct: readonly number[];
  readonly starts: Int32Array;
  readonly places: Int32Array;
}

/** Places of windows, those of a key together. */
function byKey(keys: Int32Array, without: ReadonlySet<number>): ByKey {
  const sizes = new Map<number, number>();
  keys.forEach((key, at) => {
    if (!without.has(at)) sizes.set(key, (sizes.get(key) ?? 0) + 1);
  });
  const distinct = [...sizes.keys()];
  const starts = new Int32Array(distinct.length + 1);
  distinct.forEach((key, run) => {
    starts[run + 1] = starts[run]! + sizes.get(key)!;
  });
  const next = new Map(distinct.map((key, run) => [key, starts[run]!]));
  const places = new Int32Array(starts[distinct.length]!);
  keys.forEach((key, at) => {
    if (without.has(at)) return;
    const place = next.get(key)!;
    places[place] = at;
    next.set(key, place + 1);
  });
  return { distinct, starts, places };
}

/** Most runs are in order as they come. */
function sortRun(places: Int32Array, dayOf: (at: number) => number): void {
  for (let i = 1; i < places.length; i++) {
    if (dayOf(places[i - 1]!) > dayOf(places[i]!)) {
      places.sort((a, b) => dayOf(a) - dayOf(b));
      return;
    }
  }
}

function sumsBefore(places: Int32Array, count: Int32Array): Float64Array {
  const sums = new Float64Array(places.length + 1);
  places.forEach((at, i) => {
    sums[i + 1] = sums[i]! + count[at]!;
  });
  return sums;
}
