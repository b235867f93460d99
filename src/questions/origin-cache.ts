import type { Origin } from '../domain/model/row.ts';
import type { GraphStore, OriginFound } from '../store/graph-store.ts';

/** Origins remembered in each of two generations: places, publishers and authors come again and again. */
const remembered = 30_000;

export function originKey(origin: Origin): string {
  return `${origin.source}\n${origin.key}`;
}

/**
 * Which record was taken from where: asks the store once for each origin, and remembers those last used. When the young
 * generation is full it becomes the old one, and the old one is forgotten: far cheaper than to keep an exact order.
 */
export class OriginCache {
  readonly #store: GraphStore;
  #young = new Map<string, OriginFound>();
  #old = new Map<string, OriginFound>();

  constructor(store: GraphStore) {
    this.#store = store;
  }

  /** Looks up those that are not remembered, so that `get` can answer for each until the next `load`. */
  async load(origins: readonly Origin[]): Promise<void> {
    if (this.#young.size + origins.length > remembered) {
      this.#old = this.#young;
      this.#young = new Map();
    }
    const missing = new Map<string, Origin>();
    for (const origin of origins) {
      const key = originKey(origin);
      if (this.#young.has(key)) continue;
      const found = this.#old.get(key);
      if (found === undefined) missing.set(key, origin);
      else this.#young.set(key, found);
    }
    const asked = [...missing];
    const answers = await this.#store.byOrigin(asked.map(([, origin]) => origin));
    asked.forEach(([key], i) => {
      const found = answers[i];
      if (found !== undefined) this.#young.set(key, found);
    });
  }

  get(origin: Origin): OriginFound | undefined {
    return this.#young.get(originKey(origin));
  }

  set(origin: Origin, found: OriginFound): void {
    this.#young.set(originKey(origin), found);
  }
}
