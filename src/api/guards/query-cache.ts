/** Texts that are longer are read anew each time: what is kept of them must not fill the memory. */
const longestText = 10_000;

/** Keeps what was made of the last texts that were asked for, and lets go of the oldest. */
export class QueryCache<T> {
  readonly #kept = new Map<string, T>();
  readonly #most: number;

  /** @param most how many texts; 0 keeps none */
  constructor(most: number) {
    this.#most = most;
  }

  get(text: string): T | undefined {
    const found = this.#kept.get(text);
    if (found === undefined) return undefined;
    this.#kept.delete(text);
    this.#kept.set(text, found);
    return found;
  }

  set(text: string, value: T): void {
    if (this.#most === 0 || text.length > longestText) return;
    this.#kept.set(text, value);
    if (this.#kept.size > this.#most) this.#kept.delete(this.#kept.keys().next().value!);
  }
}
