import { hash } from 'node:crypto';

/** What is known of a key that came before. */
export interface SeenRow {
  /** Number of the row. */
  readonly number: number;
  /** The row was the same in everything. */
  readonly same: boolean;
}

/**
 * Remembers which keys have come, in 32 to 64 bytes a row: 52 bits of a digest of the key, 32 bits of that of the row,
 * and its number. That two of a million keys are taken for one has a chance of one in 9,000.
 */
export class SeenKeys {
  #keys = new Float64Array(1024);
  #digests = new Uint32Array(1024);
  #numbers = new Uint32Array(1024);
  #count = 0;

  /** What came under this key before; remembers the row if nothing did. */
  meet(key: string, digest: string, number: number): SeenRow | undefined {
    const name = Number.parseInt(hash('sha256', key, 'hex').slice(0, 13), 16) + 1;
    const short = Number.parseInt(digest.slice(0, 8), 16);
    const at = this.#placeOf(name);
    if (this.#keys[at] === name) return { number: this.#numbers[at]!, same: this.#digests[at] === short };
    this.#put(at, name, short, number);
    if (++this.#count * 2 > this.#keys.length) this.#grow();
    return undefined;
  }

  #put(at: number, name: number, digest: number, number: number): void {
    this.#keys[at] = name;
    this.#digests[at] = digest;
    this.#numbers[at] = number;
  }

  /** Where a name stands, or the free place for it: open addressing with linear steps. */
  #placeOf(name: number): number {
    let at = name % this.#keys.length;
    while (this.#keys[at] !== 0 && this.#keys[at] !== name) at = (at + 1) % this.#keys.length;
    return at;
  }

  #grow(): void {
    const [keys, digests, numbers] = [this.#keys, this.#digests, this.#numbers];
    this.#keys = new Float64Array(keys.length * 2);
    this.#digests = new Uint32Array(keys.length * 2);
    this.#numbers = new Uint32Array(keys.length * 2);
    keys.forEach((name, i) => {
      if (name !== 0) this.#put(this.#placeOf(name), name, digests[i]!, numbers[i]!);
    });
  }
}
