/**
 * Insertions, deletions, changes and swaps of neighbours that make one text the other (optimal string alignment).
 * From `most` on it is not told how many: the answer is then `most` or more. Cost: product of the lengths.
 */
export function editDistance(a: string, b: string, most = Number.POSITIVE_INFINITY): number {
  if (Math.abs(a.length - b.length) >= most) return most;
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      row[j] = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        row[j] = Math.min(row[j]!, before[j - 2]! + 1);
    }
    [before, above] = [above, row];
  }
  return above[b.length]!;
}
