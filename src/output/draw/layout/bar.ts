import type { DrawnNode } from '../drawing.ts';
import { measures } from '../measures.ts';
import type { TimeScale } from './time-scale.ts';

/** The days of a node on the axis. */
export interface Bar {
  readonly from: number;
  readonly to: number;
  readonly left: BarEnd;
  readonly right: BarEnd;
  /** What is said of it contradicts itself, as where its beginning lies after its end. */
  readonly contrary: boolean;
}

/** Closed, open (it fades), or running on beyond the drawing. */
export type BarEnd = 'closed' | 'open' | 'beyond';

export function barOf({ days: { lo, hi }, contradiction }: DrawnNode, x: number, scale: TimeScale): Bar {
  const reversed = lo !== undefined && hi !== undefined && lo > hi;
  const [first, last] = reversed ? [hi, lo] : [lo, hi];
  const left: BarEnd = first === undefined ? 'open' : first < scale.first ? 'beyond' : 'closed';
  const right: BarEnd = last === undefined ? 'open' : last > scale.last ? 'beyond' : 'closed';
  return {
    from: first === undefined ? x - measures.fade : scale.x(Math.max(first, scale.first)),
    to: last === undefined ? x + measures.fade : scale.x(Math.min(last, scale.last)),
    left,
    right,
    contrary: reversed || contradiction === true,
  };
}
