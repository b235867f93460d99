/** Members of which some are known to be alike or reversed to each other. */
export interface ParityParts {
  /** The same number for all members of a part. */
  of(member: number): number;
  /** Joins two members; false, and nothing is changed, if they are known to be the other way to each other. */
  join(one: number, other: number, reversed: boolean): boolean;
}

/** Every number from 0 to before `size` in a part of its own. Union-find by size, each member with its parity to the next. */
export function parityParts(size: number): ParityParts {
  const parent = Int32Array.from({ length: size }, (_, i) => i);
  const parity = new Uint8Array(size);
  const sizes = new Int32Array(size).fill(1);
  /** Halves the way, so that parities stay right: each member on it is hung on the next but one. */
  const of = (member: number) => {
    let at = member;
    while (parent[at] !== at) {
      const next = parent[at]!;
      parity[at]! ^= parity[next]!;
      parent[at] = parent[next]!;
      at = parent[at]!;
    }
    return at;
  };
  const toTop = (member: number) => {
    let turned = 0;
    for (let at = member; parent[at] !== at; at = parent[at]!) turned ^= parity[at]!;
    return turned;
  };
  return {
    of,
    join: (one, other, reversed) => {
      const [a, b] = [of(one), of(other)];
      const turned = toTop(one) ^ toTop(other) ^ Number(reversed);
      if (a === b) return turned === 0;
      const [low, high] = sizes[a]! < sizes[b]! ? [a, b] : [b, a];
      parent[low] = high;
      parity[low] = turned;
      sizes[high]! += sizes[low]!;
      return true;
    },
  };
}
