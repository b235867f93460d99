import type { WindowColumns } from '../store/graph-store.ts';

/** What an order goes by, before the id. */
export type OrderKeys = readonly [number, number];

/** A window by its place in columns. */
export interface NearWindow {
  readonly keys: OrderKeys;
  readonly columns: WindowColumns;
  readonly at: number;
}

/** Windows kept before those that are too far are let go. */
const room = 128;

/**
 * The windows from a position on that hold the first editions of an order: with those at the position itself, as many
 * windows as hold `wanted` editions after it.
 *
 * A window is let go once those nearer hold enough. That is for good: columns come so that counts seen of a window never
 * come to more than it has in the end, if all of one are offered before those of the next.
 */
export class NearestWindows {
  readonly #begin: OrderKeys;
  readonly #wanted: number;
  #kept: NearWindow[] = [];
  #bound: OrderKeys = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  #limit = room;

  constructor(from: OrderKeys | undefined, wanted: number) {
    this.#begin = from ?? [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
    this.#wanted = wanted;
  }

  /** Whether a window with this first key may be wanted. */
  takes(a: number): boolean {
    return a <= this.#bound[0] && a >= this.#begin[0];
  }

  /** Least second key that is wanted beside a first one. */
  least(a: number): number {
    return a === this.#begin[0] ? this.#begin[1] : Number.NEGATIVE_INFINITY;
  }

  /** Greatest second key that is wanted beside a first one. */
  most(a: number): number {
    return a === this.#bound[0] ? this.#bound[1] : Number.POSITIVE_INFINITY;
  }

  offer(a: number, b: number, columns: WindowColumns, at: number): void {
    if (!this.takes(a) || b < this.least(a) || b > this.most(a)) return;
    this.#kept.push({ keys: [a, b], columns, at });
    if (this.#kept.length < this.#limit) return;
    const { windows, isEnough } = this.#nearest();
    this.#kept = windows;
    if (isEnough) this.#bound = windows.at(-1)!.keys;
    this.#limit = Math.max(room, 2 * this.#kept.length);
  }

  /** Nearest first. */
  windows(): readonly NearWindow[] {
    return this.#nearest().windows;
  }

  /** Those that hold enough editions, with all that are as near as the last of them. */
  #nearest(): { readonly windows: NearWindow[]; readonly isEnough: boolean } {
    const ordered = this.#kept.toSorted((a, b) => compareKeys(a.keys, b.keys));
    let held = 0;
    let end = 0;
    for (const { keys, columns, at } of ordered) {
      if (held >= this.#wanted && compareKeys(keys, ordered[end - 1]!.keys) > 0) break;
      if (compareKeys(keys, this.#begin) > 0) held += columns.count[at]!;
      end++;
    }
    return { windows: ordered.slice(0, end), isEnough: held >= this.#wanted };
  }
}

export function compareKeys(a: OrderKeys, b: OrderKeys): number {
  return a[0] - b[0] || a[1] - b[1];
}
