/** Places, each one binary digit, and how many of them an id has: of ten million ids, few others seem to have been seen. */
const [places, placesOfId] = [2 ** 27, 4];

/**
 * Ids that came by, in the same memory however many there are (16 MB, as a Bloom filter). An id that was not seen may seem
 * to have been; never the other way.
 */
export class SeenIds {
  readonly #words = new Uint32Array(places / 32);

  add(id: string): void {
    for (const place of placesOf(id)) this.#words[place >>> 5]! |= 1 << (place & 31);
  }

  /** False: it was certainly not seen. */
  mayHave(id: string): boolean {
    return placesOf(id).every(place => (this.#words[place >>> 5]! & (1 << (place & 31))) !== 0);
  }
}

function placesOf(id: string): readonly number[] {
  let [a, b] = [0x811c9dc5, 0x9e3779b9];
  for (let i = 0; i < id.length; i++) {
    const sign = id.charCodeAt(i);
    a = Math.imul(a ^ sign, 0x01000193);
    b = Math.imul(b ^ sign, 0x85ebca6b) ^ (b >>> 13);
  }
  a ^= a >>> 15;
  return Array.from({ length: placesOfId }, (_, i) => (a + Math.imul(i, b | 1)) & (places - 1));
}
