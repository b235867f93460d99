import { firstOrder } from './first-order.ts';
import type { Geometry } from './geometry.ts';
import { countCrossings, type RowProblem } from './row-problem.ts';
import { rowProblemOf } from './row-problem-of.ts';
import { siftRows } from './sift-rows.ts';
import { sweepRows } from './sweep-rows.ts';

/**
 * Nodes from top to bottom with few crossings, in groups that steps join.
 * @param exchanges of neighbouring rows that may be tried
 */
export function orderRows(geometry: Geometry, exchanges: number): readonly (readonly number[])[] {
  const whole = rowProblemOf(geometry);
  return firstOrder(geometry.spots.length, geometry.lanes).map(group => {
    const problem = within(whole, group);
    const first = group.map((_, i) => i);
    const share = Math.ceil((exchanges * group.length) / geometry.spots.length);
    return fewCrossings(problem, first, share).map(i => group[i]!);
  });
}

function fewCrossings(problem: RowProblem, first: readonly number[], exchanges: number): readonly number[] {
  if (first.length < 3) return first;
  return [first, sweepRows(problem, first)]
    .map(order => siftRows(problem, order, exchanges / 2))
    .reduce((best, order) => (countCrossings(problem, order) < countCrossings(problem, best) ? order : best));
}

/** The problem of one group, its nodes and uprights numbered anew. */
function within({ strips, uprights }: RowProblem, group: readonly number[]): RowProblem {
  const number = new Map(group.map((node, i) => [node, i]));
  return {
    strips: group.map(node => strips[node]!.map(strip => ({ ...strip, of: number.get(strip.of)! }))),
    uprights: uprights
      .filter(({ members }) => number.has(members[0]!))
      .map(({ x, members }) => ({ x, members: members.map(node => number.get(node)!) })),
  };
}
