import { hash } from 'node:crypto';

/** Additions of 32-bit numbers after which a sum is still exact as a double, with room to spare. */
const additionsAtOnce = 2 ** 20;

/**
 * Sum of the digests of lines, in whatever order they come: SHA-256, added modulo 2^256. Two sets of lines have the same
 * sum only if they are the same set (with repetitions).
 */
export class SumOfDigests {
  /** The sum in 32-bit places, the highest first, each with what is to be carried into the one before. */
  readonly #places = new Float64Array(8);
  #lines = 0;

  add(line: string): void {
    const digest = hash('sha256', line, 'buffer');
    for (let i = 0; i < 8; i++) this.#places[i]! += digest.readUInt32BE(4 * i);
    if (++this.#lines % additionsAtOnce === 0) this.#carry();
  }

  /** Number of lines and the first half of the sum in hexadecimal, as one word. */
  toString(): string {
    this.#carry();
    const places = [...this.#places.subarray(0, 4)].map(place => place.toString(16).padStart(8, '0'));
    return `${this.#lines}-${places.join('')}`;
  }

  #carry(): void {
    for (let i = 7; i >= 0; i--) {
      const place = this.#places[i]!;
      this.#places[i] = place % 2 ** 32;
      if (i > 0) this.#places[i - 1]! += Math.floor(place / 2 ** 32);
    }
  }
}
