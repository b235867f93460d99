/** Sets of numbers that grow together. */
export interface ConnectedParts {
  /** The same number for all members of a part. */
  of(member: number): number;
  join(one: number, other: number): void;
}

/** Every number from 0 to before `size` in a part of its own. Union-find with path halving. */
export function connectedParts(size: number): ConnectedParts {
  const parent = Int32Array.from({ length: size }, (_, i) => i);
  const of = (member: number) => {
    let at = member;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at]!]!;
      at = parent[at]!;
    }
    return at;
  };
  return {
    of,
    join: (one, other) => {
      const [a, b] = [of(one), of(other)];
      parent[Math.max(a, b)] = Math.min(a, b);
    },
  };
}
