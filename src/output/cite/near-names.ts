/** Names of a list that differ from what was typed by at most a third of its letters, or begin alike; nearest first. */
export function nearNames(typed: string, names: readonly string[]): readonly string[] {
  const wanted = typed.toLowerCase();
  const most = Math.max(1, Math.floor(wanted.length / 3));
  return names
    .map(name => ({ name, distance: name.startsWith(wanted.slice(0, 3)) ? 0.5 : distance(wanted, name) }))
    .filter(near => near.distance <= most)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, 4)
    .map(near => near.name);
}

/** Levenshtein distance. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      next.push(Math.min(next[j - 1]! + 1, row[j]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    }
    row = next;
  }
  return row[b.length]!;
}
