import { compareText } from '../domain/text/compare.ts';
import type { GraphStore, WindowKey } from '../store/graph-store.ts';
import { windowOfColumns } from './window-of-columns.ts';
import { windowText } from './window-text.ts';

/** Editions by window, to be held against what a store has counted. */
export class WindowCounts {
  readonly #counts = new Map<string, number>();

  add(window: WindowKey | undefined): void {
    if (window !== undefined) this.#add(windowText(window), 1);
  }

  /** What the store counts otherwise, in words. */
  async differences(store: GraphStore): Promise<readonly string[]> {
    const groups = await store.windowGroups({});
    const counted = new WindowCounts();
    for (const columns of groups.columns) {
      columns.count.forEach((count, at) => {
        counted.#add(windowText(windowOfColumns(groups, columns, at)), count);
      });
    }
    const texts = new Set([...this.#counts.keys(), ...counted.#counts.keys()]);
    return [...texts].sort(compareText).flatMap(text => {
      const [found, expected] = [counted.#counts.get(text) ?? 0, this.#counts.get(text) ?? 0];
      if (found === expected) return [];
      return [`editions with the days of publication ${text}: counted ${found}, expected ${expected}`];
    });
  }

  #add(text: string, count: number): void {
    this.#counts.set(text, (this.#counts.get(text) ?? 0) + count);
  }
}
