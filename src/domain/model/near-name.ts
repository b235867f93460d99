/** The name most like what was typed, if any is like enough: for "did you mean". At most a third of it may differ. */
export function nearName(typed: string, names: readonly string[]): string | undefined {
  const wanted = typed.toLowerCase();
  let best: string | undefined;
  let least = Math.max(1, Math.floor(typed.length / 3)) + 1;
  for (const name of names) {
    const distance = editDistance(wanted, name.toLowerCase(), least);
    if (distance < least) [best, least] = [name, distance];
  }
  return best;
}

/** Insertions, deletions, changes and swaps of neighbours (optimal string alignment); `most` or more is not told apart. */
function editDistance(a: string, b: string, most: number): number {
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
