import { measures } from '../measures.ts';
import type { Geometry } from './geometry.ts';
import type { RowProblem, Strip } from './row-problem.ts';

/** What is level at each row and what stands upright between them. */
export function rowProblemOf({ spots, lanes, uprights }: Geometry): RowProblem {
  const strips: Strip[][] = spots.map(({ x, nameX, name }, i) => [
    { lo: x - measures.mark - 1, hi: nameX + name.width, of: i },
  ]);
  // Another upright where a lane begins would lie on that of the lane, or be moved across it.
  for (const { from, to, start, end } of lanes) {
    const begin = start < end ? start - 4 : start + 4;
    strips[to]!.push({ lo: Math.min(begin, end), hi: Math.max(begin, end), of: from });
  }
  for (const { source, way, x } of uprights)
    if (way === 'round') strips[source]!.push({ lo: x - 4, hi: spots[source]!.x, of: source });
  return { strips, uprights };
}
