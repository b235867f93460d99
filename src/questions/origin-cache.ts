import type { Origin } from '../domain/model/row.ts';
import type { GraphStore, OriginFound } from '../store/graph-store.ts';

/** Origins remembered in each of two generations: places, publishers and authors come again and again. */
const remembered = 30_000;

export function originKey(origin: Origin): string {
  return `${origin.source}\n${origin.key}`;
}

/** What is known, by source and key. */
class Generation {
  readonly #bySource = new Map<string, Map<string, OriginFound>>();
  size = 0;

  get({ source, key }: Origin): OriginFound | undefined {
    return this.#bySource.get(source)?.get(key);
  }

  set({ source, key }: Origin, found: OriginFound): void {
    const keys = this.#bySource.get(source) ?? new Map<string, OriginFound>();
    this.#bySource.set(source, keys);
    keys.set(key, found);
    this.size++;
  }
}

/**
 * Which record was taken from where: asks the store once for each origin, and remembers those last used. When the young
 * generation is full it becomes the old one, and the old one is forgotten: far cheaper than to keep an exact order.
 */
export class OriginCache {
  readonly #store: GraphStore;
  #young = new Generation();
  #old = new Generation();

  constructor(store: GraphStore) {
    this.#store = store;
  }

  /** Looks up those that are not remembered, so that `get` can answer for each until the next `load`. */
  async load(origins: readonly Origin[]): Promise<void> {
    if (this.#young.size + origins.length > remembered) {
      this.#old = this.#young;
      this.#young = new Generation();
    }
    const missing = new Map<string, Origin>();
    for (const origin of origins) {
      if (this.#young.get(origin) !== undefined) continue;
      const found = this.#old.get(origin);
      if (found === undefined) missing.set(originKey(origin), origin);
      else this.#young.set(origin, found);
    }
    const asked = [...missing.values()];
    const answers = await this.#store.byOrigin(asked);
    asked.forEach((origin, i) => {
      const found = answers[i];
      if (found !== undefined) this.#young.set(origin, found);
    });
  }

  get(origin: Origin): OriginFound | undefined {
    return this.#young.get(origin);
  }

  set(origin: Origin, found: OriginFound): void {
    this.#young.set(origin, found);
  }
}
