import type { JudgedWindows } from './reach-windows.ts';

/** What an order goes by, before the id. */
export type OrderKeys = readonly [number, number];

/** A window by its place in the columns. */
export interface NearWindow {
  readonly keys: OrderKeys;
  readonly column: number;
  readonly at: number;
}

/** What an order asks of windows: their keys, the second of which may cost more. */
export interface WindowOrder {
  first(column: number, at: number): number;
  second(column: number, at: number): number;
}

interface Kept extends NearWindow {
  readonly count: number;
}

/** Windows kept before those that are too far are let go. */
const room = 2048;

/**
 * The windows from a position on that hold the first editions of an order: with those at the position itself, as many
 * windows as hold `wanted` editions after it; nearest first. One look at each window.
 *
 * A window is let go once those nearer hold enough. That is for good: columns come so that counts seen of a window never
 * come to more than it has in the end.
 */
export function nearestWindows(
  { columns }: JudgedWindows,
  order: WindowOrder,
  from: OrderKeys | undefined,
  wanted: number,
): readonly NearWindow[] {
  let kept: Kept[] = [];
  let bound: OrderKeys = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  let limit = room;
  columns.forEach(({ columns: windows }, column) => {
    for (let at = 0; at < windows.count.length; at++) {
      const first = order.first(column, at);
      if (first > bound[0] || (from !== undefined && first < from[0])) continue;
      const keys = [first, order.second(column, at)] as const;
      if (compareKeys(keys, bound) > 0 || (from !== undefined && compareKeys(keys, from) < 0)) continue;
      kept.push({ keys, column, at, count: windows.count[at]! });
      if (kept.length < limit) continue;
      kept = nearest(kept, from, wanted);
      bound = kept.at(-1)!.keys;
      limit = Math.max(room, 2 * kept.length);
    }
  });
  return nearest(kept, from, wanted);
}

/** Those that hold enough editions, with all that are as near as the last of them. */
function nearest(windows: readonly Kept[], from: OrderKeys | undefined, wanted: number): Kept[] {
  const ordered = windows.toSorted((a, b) => compareKeys(a.keys, b.keys));
  let held = 0;
  let end = 0;
  while (end < ordered.length) {
    const { keys } = ordered[end]!;
    if (held >= wanted && compareKeys(keys, ordered[end - 1]!.keys) > 0) break;
    if (from === undefined || compareKeys(keys, from) > 0) held += ordered[end]!.count;
    end++;
  }
  return ordered.slice(0, end);
}

export function compareKeys(a: OrderKeys, b: OrderKeys): number {
  return a[0] - b[0] || a[1] - b[1];
}
