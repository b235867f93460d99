import fc from 'fast-check';

/** Draws of a case that fast-check tries, and makes smaller where it fails. */
export interface Chance {
  /** Whole number from 0 to below the end. */
  below(end: number): number;
  /** True in so many of a hundred. */
  percent(of: number): boolean;
  pick<T>(list: readonly T[]): T;
}

export const chances: fc.Arbitrary<Chance> = fc.gen().map(draw => {
  const below = (end: number) => draw(upTo, Math.max(0, end - 1));
  return { below, percent: of => below(100) < of, pick: list => list[below(list.length)]! };
});

const upTo = (max: number) => fc.nat(max);
