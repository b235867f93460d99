import { countCrossings, type RowProblem } from './row-problem.ts';

const roundsWithoutGain = 6;

/**
 * Sweeps to and fro: nodes are ordered by the mean row of their sources, then of their copies, and so on; the best order
 * met is given, which may be the first.
 * Method: barycentre heuristic (Sugiyama, Tagawa, Toda, IEEE Transactions on Systems, Man, and Cybernetics 11, 1981).
 */
export function sweepRows(problem: RowProblem, first: readonly number[]): readonly number[] {
  const [sources, copies] = neighboursOf(problem);
  let order = first;
  let best = first;
  let least = countCrossings(problem, first);
  for (let round = 0, since = 0; since < roundsWithoutGain && least > 0; round++, since++) {
    order = byMeanRow(order, round % 2 === 0 ? sources : copies);
    const crossings = countCrossings(problem, order);
    if (crossings < least) [best, least, since] = [order, crossings, 0];
  }
  return best;
}

/** The first member of an upright is its source. */
function neighboursOf({ strips, uprights }: RowProblem): readonly [number[][], number[][]] {
  const sources: number[][] = strips.map(() => []);
  const copies: number[][] = strips.map(() => []);
  for (const { members } of uprights) {
    const [source, ...rest] = members;
    for (const copy of rest) {
      sources[copy]!.push(source!);
      copies[source!]!.push(copy);
    }
  }
  return [sources, copies];
}

function byMeanRow(order: readonly number[], neighbours: readonly (readonly number[])[]): number[] {
  const row: number[] = [];
  order.forEach((node, i) => {
    row[node] = i;
  });
  const mean = (node: number): number => {
    const rows = neighbours[node]!;
    return rows.length === 0 ? row[node]! : rows.reduce((sum, each) => sum + row[each]!, 0) / rows.length;
  };
  return order
    .map(node => ({ node, mean: mean(node) }))
    .sort((a, b) => a.mean - b.mean || row[a.node]! - row[b.node]!)
    .map(({ node }) => node);
}
