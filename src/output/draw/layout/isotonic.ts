/**
 * The values nearest to the wishes (least squares) that never fall along the list.
 * Method: pool adjacent violators (Ayer, Brunk, Ewing, Reid, Silverman, Annals of Mathematical Statistics 26, 1955). O(n).
 */
export function isotonic(wishes: readonly number[]): number[] {
  const pools: { sum: number; count: number }[] = [];
  for (const wish of wishes) {
    pools.push({ sum: wish, count: 1 });
    while (pools.length > 1 && mean(pools.at(-2)!) > mean(pools.at(-1)!)) {
      const last = pools.pop()!;
      const pool = pools.at(-1)!;
      pool.sum += last.sum;
      pool.count += last.count;
    }
  }
  return pools.flatMap(pool => Array.from({ length: pool.count }, () => mean(pool)));
}

function mean({ sum, count }: { readonly sum: number; readonly count: number }): number {
  return sum / count;
}
