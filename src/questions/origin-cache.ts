import type { Origin } from '../domain/model/row.ts';
import { copied } from '../domain/text/copied.ts';
import type { OriginFound } from '../store/graph-store.ts';

/** Origins remembered in each of two generations: places, publishers and authors come again and again. */
const remembered = 20_000;

function originKey(origin: Origin): string {
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
 * Which record was taken from where: those last used are remembered. When the young generation is full it becomes the old
 * one, and the old one is forgotten: far cheaper than to keep an exact order.
 */
export class OriginCache {
  #young = new Generation();
  #old = new Generation();

  /** Those, each once, that are not remembered. What is, is so until `missing` has been asked for twice more. */
  missing(origins: readonly Origin[]): readonly Origin[] {
    if (this.#young.size + origins.length > remembered) {
      this.#old = this.#young;
      this.#young = new Generation();
    }
    const missing = new Map<string, Origin>();
    for (const origin of origins) {
      if (this.#young.get(origin) !== undefined) continue;
      const found = this.#old.get(origin);
      if (found === undefined) missing.set(originKey(origin), origin);
      else this.set(origin, found);
    }
    return [...missing.values()];
  }

  get(origin: Origin): OriginFound | undefined {
    return this.#young.get(origin) ?? this.#old.get(origin);
  }

  set({ source, key }: Origin, found: OriginFound): void {
    // The key is a part of the file, which would be kept whole for it.
    this.#young.set({ source, key: copied(key) }, found);
  }
}
