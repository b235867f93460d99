import type { JudgedColumns, JudgedWindows } from './reach-windows.ts';

/** What an order goes by, before the id. */
export type OrderKeys = readonly [number, number];

/** A window by its place in the columns. */
export interface NearWindow {
  readonly keys: OrderKeys;
  readonly columns: JudgedColumns;
  readonly at: number;
}

/** What an order asks of windows. The second key is asked for only where it may matter. */
export interface WindowOrder {
  first(columns: JudgedColumns): ArrayLike<number>;
  second(columns: JudgedColumns): (at: number) => number;
}

/** Windows kept before those that are too far are let go. */
const room = 1024;

/**
 * The windows from a position on that hold the first editions of an order: with those at the position itself, as many
 * windows as hold `wanted` editions after it; nearest first. One look at each window.
 *
 * A window is let go once those nearer hold enough. That is for good: columns come so that counts seen of a window never
 * come to more than it has in the end.
 */
export function nearestWindows(
  { columns: all }: JudgedWindows,
  order: WindowOrder,
  from: OrderKeys | undefined,
  wanted: number,
): readonly NearWindow[] {
  const begin: OrderKeys = from ?? [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let kept: NearWindow[] = [];
  let bound: OrderKeys = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  let limit = room;
  for (const columns of all) {
    const first = order.first(columns);
    const second = order.second(columns);
    for (let at = 0; at < first.length; at++) {
      const a = first[at]!;
      if (a > bound[0] || a < begin[0]) continue;
      const b = second(at);
      if ((a === bound[0] && b > bound[1]) || (a === begin[0] && b < begin[1])) continue;
      kept.push({ keys: [a, b], columns, at });
      if (kept.length < limit) continue;
      kept = nearest(kept, begin, wanted);
      bound = kept.at(-1)!.keys;
      limit = Math.max(room, 2 * kept.length);
    }
  }
  return nearest(kept, begin, wanted);
}

/** Those that hold enough editions, with all that are as near as the last of them. */
function nearest(windows: readonly NearWindow[], begin: OrderKeys, wanted: number): NearWindow[] {
  const ordered = windows.toSorted((a, b) => compareKeys(a.keys, b.keys));
  let held = 0;
  let end = 0;
  for (const { keys, columns, at } of ordered) {
    if (held >= wanted && compareKeys(keys, ordered[end - 1]!.keys) > 0) break;
    if (compareKeys(keys, begin) > 0) held += columns.columns.count[at]!;
    end++;
  }
  return ordered.slice(0, end);
}

export function compareKeys(a: OrderKeys, b: OrderKeys): number {
  return a[0] - b[0] || a[1] - b[1];
}
