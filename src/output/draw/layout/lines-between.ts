import type { DayRange } from '../../../domain/dates/day-bounds.ts';
import type { DrawnNode, DrawnStep } from '../drawing.ts';
import { measures } from '../measures.ts';

/** The level line on which a step reaches its later node. */
export interface Lane {
  readonly step: DrawnStep;
  /** Number of its upright. */
  readonly upright: number;
  /** Numbers of the nodes. */
  readonly from: number;
  readonly to: number;
  /** Where it leaves the upright, and where it ends. */
  readonly start: number;
  readonly end: number;
  readonly contrary: boolean;
}

/** The upright line on which steps leave a node: at the node itself, or round its left to what is near in time. */
export interface LaidUpright {
  readonly source: number;
  readonly way: 'onward' | 'round';
  readonly contrary: boolean;
  readonly x: number;
  readonly members: readonly number[];
}

/** A node with its place from left to right. */
interface Placed {
  readonly node: DrawnNode;
  readonly x: number;
}

/** A way out of a node that steps share: on from it, or round its left to what is near in time; contradictions apart. */
type Upright = { -readonly [K in keyof LaidUpright]: LaidUpright[K] } & { readonly number: number };

/** The lines of all steps between nodes, in the order of the steps; nodes are numbered as given. A step from a node to itself has none. */
export function linesBetween(
  spots: readonly Placed[],
  steps: readonly DrawnStep[],
): { readonly lanes: readonly Lane[]; readonly uprights: readonly LaidUpright[] } {
  const numbers = new Map(spots.map(({ node }, i) => [node.id, i]));
  const uprights = new Map<string, Upright>();
  const lanes = steps
    .filter(step => step.from !== step.to)
    .map(step => {
      const [from, to] = [numbers.get(step.from)!, numbers.get(step.to)!];
      const [source, copy] = [spots[from]!, spots[to]!];
      const contrary = step.contradiction === true || isContrary(source.node.days, copy.node.days);
      const way = Math.abs(copy.x - source.x) < measures.nearest ? 'round' : 'onward';
      const x = way === 'round' ? Math.min(source.x, copy.x) - measures.reach : source.x;
      const key = `${from} ${way} ${contrary}`;
      const upright = uprights.get(key) ?? { source: from, way, contrary, x, members: [from], number: uprights.size };
      uprights.set(key, upright);
      upright.x = Math.min(upright.x, x);
      upright.members = [...upright.members, to];
      return { step, upright, from, to, end: copy.x, contrary };
    });
  return {
    lanes: lanes.map(({ upright, ...lane }) => ({ ...lane, upright: upright.number, start: upright.x })),
    uprights: [...uprights.values()].map(({ number: _, ...upright }) => upright),
  };
}

/** The earlier node cannot have been there before the later one. */
export function isContrary(earlier: DayRange, later: DayRange): boolean {
  return earlier.lo !== undefined && later.hi !== undefined && earlier.lo > later.hi;
}
