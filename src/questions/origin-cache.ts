import type { Origin } from '../domain/model/row.ts';
import type { GraphStore, OriginFound } from '../store/graph-store.ts';

/** Origins remembered at once: places, publishers and authors come again and again. */
const remembered = 60_000;

export function originKey(origin: Origin): string {
  return `${origin.source}\n${origin.key}`;
}

/** Which record was taken from where: asks the store once for each origin, and remembers the last ones used. */
export class OriginCache {
  readonly #store: GraphStore;
  readonly #found = new Map<string, OriginFound>();

  constructor(store: GraphStore) {
    this.#store = store;
  }

  /** Looks up those that are not remembered, so that `get` can answer for each. */
  async load(origins: readonly Origin[]): Promise<void> {
    const missing = new Map<string, Origin>();
    for (const origin of origins) {
      const key = originKey(origin);
      const found = this.#found.get(key);
      if (found === undefined) missing.set(key, origin);
      else this.#remember(key, found);
    }
    this.#forget(missing.size);
    const asked = [...missing.entries()];
    const answers = await this.#store.byOrigin(asked.map(([, origin]) => origin));
    asked.forEach(([key], i) => {
      const found = answers[i];
      if (found !== undefined) this.#remember(key, found);
    });
  }

  get(origin: Origin): OriginFound | undefined {
    return this.#found.get(originKey(origin));
  }

  set(origin: Origin, found: OriginFound): void {
    this.#remember(originKey(origin), found);
  }

  #remember(key: string, found: OriginFound): void {
    this.#found.delete(key);
    this.#found.set(key, found);
  }

  /** Forgets the longest unused, before new ones come: never one that was just asked for. */
  #forget(room: number): void {
    const surplus = this.#found.size + room - remembered;
    if (surplus <= 0) return;
    const keys = this.#found.keys();
    for (let i = 0; i < surplus; i++) this.#found.delete(keys.next().value!);
  }
}
