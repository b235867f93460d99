/** Something level at a row: a line that comes to the node there or leaves it, or the node itself with its name. */
export interface Strip {
  readonly lo: number;
  readonly hi: number;
  /** Number of the node whose uprights it does not bar: the source of a line, the node itself for its mark and name. */
  readonly of: number;
}

/** An upright line: from the row of its source to those of all that branch off it. */
interface Upright {
  readonly x: number;
  /** Numbers of the nodes it joins, its source first. */
  readonly members: readonly number[];
}

/** The rows to be ordered: of each node what is level there, and the uprights between them. */
export interface RowProblem {
  readonly strips: readonly (readonly Strip[])[];
  readonly uprights: readonly Upright[];
}

/** How often uprights cross the lines and names of rows that they pass. `order` has the number of the node at each row. */
export function countCrossings({ strips, uprights }: RowProblem, order: readonly number[]): number {
  const row: number[] = [];
  order.forEach((node, i) => {
    row[node] = i;
  });
  let sum = 0;
  for (const { x, members } of uprights) {
    const rows = members.map(node => row[node]!);
    for (let i = Math.min(...rows) + 1; i < Math.max(...rows); i++) sum += hits(strips[order[i]!]!, members[0]!, x);
  }
  return sum;
}

/** How many strips of a row an upright of a source cuts when it passes there. */
export function hits(strips: readonly Strip[], source: number, x: number): number {
  let count = 0;
  for (const strip of strips) if (strip.of !== source && strip.lo < x && x < strip.hi) count++;
  return count;
}
