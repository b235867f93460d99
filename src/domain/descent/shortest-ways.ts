import type { HandednessGraph, HandednessStep } from './handedness-graph.ts';
import type { HandednessLink } from './handedness-link.ts';

/** Fewest links to a record, seen the same way or in reverse; undefined if none lead there so. */
export type ShortestWays = (to: number, reversed: boolean) => readonly HandednessLink[] | undefined;

export interface WayLimits {
  /** Links not to be taken. */
  readonly without?: ReadonlySet<HandednessLink> | undefined;
  /** Links at most. */
  readonly most?: number | undefined;
}

/** Breadth first over each record as seen from `from` in the same direction and in reverse. Linear in the part around it. */
export function shortestWays(
  graph: HandednessGraph,
  from: number,
  { without, most = Infinity }: WayLimits = {},
): ShortestWays {
  const before = new Map<number, { readonly step: HandednessStep; readonly at: number } | undefined>();
  before.set(2 * from, undefined);
  let layer: readonly number[] = [2 * from];
  for (let links = 0; links < most && layer.length > 0; links += 1) {
    const next: number[] = [];
    for (const at of layer) {
      for (const step of graph.around(Math.floor(at / 2))) {
        const reached = 2 * step.to + ((at % 2) ^ Number(step.reversed));
        if (before.has(reached) || without?.has(step.link) === true) continue;
        before.set(reached, { step, at });
        next.push(reached);
      }
    }
    layer = next;
  }
  return (to, reversed) => {
    const end = 2 * to + Number(reversed);
    if (!before.has(end)) return undefined;
    const way: HandednessLink[] = [];
    for (let last = before.get(end); last !== undefined; last = before.get(last.at)) way.push(last.step.link);
    return way.reverse();
  };
}
