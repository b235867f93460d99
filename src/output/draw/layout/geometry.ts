import type { Day } from '../../../domain/dates/day-bounds.ts';
import { compareText } from '../../../domain/text/compare.ts';
import type { Drawing, DrawnNode } from '../drawing.ts';
import { measures } from '../measures.ts';
import { type Bar, barOf } from './bar.ts';
import { type LaidUpright, type Lane, linesBetween } from './lines-between.ts';
import { type Name, nameOf } from './name-of.ts';
import { placeInTime } from './place-in-time.ts';
import { type TimeScale, timeScale } from './time-scale.ts';

/** All that is known before levels are: where things stand from left to right. */
export interface Geometry {
  readonly spots: readonly Spot[];
  readonly lanes: readonly Lane[];
  readonly uprights: readonly LaidUpright[];
  readonly scale: TimeScale | undefined;
  /** Where nodes without a date stand; absent if there is none. */
  readonly undated: number | undefined;
}

/** A node on the axis. Spots are in order of x, then of id. */
export interface Spot {
  readonly node: DrawnNode;
  readonly x: number;
  readonly name: Name;
  /** Where its name begins. */
  readonly nameX: number;
  readonly bar: Bar | undefined;
}

const undatedWidth = 120;
/** A name makes way for the ring of the node asked about, and for an arrow that comes in above it from the right. */
const ringMore = measures.ring - measures.mark;
const arrowMore = 14;

/** Where everything stands from left to right. */
export function geometry(drawing: Drawing): Geometry {
  const { nodes, steps, of } = drawing;
  const places = placeInTime(nodes, steps);
  const dated = nodes.filter(node => places.get(node.id) !== undefined);
  const start = measures.margin + measures.reach;
  const undated = dated.length < nodes.length ? start : undefined;
  const scale = timeScale(
    dated.map(node => places.get(node.id)!),
    dated.map(node => node.days),
    undated === undefined ? start : start + undatedWidth,
    axisWidth(nodes.length),
  );
  const placed = nodes
    .map(node => ({ node, x: xOf(places.get(node.id), scale, start), dated: places.get(node.id) !== undefined }))
    .sort((a, b) => a.x - b.x || compareText(a.node.id, b.node.id));
  const lines = linesBetween(placed, steps);
  const reachedFromRight = new Set(lines.lanes.filter(({ start, end }) => start > end).map(({ to }) => to));
  const spots = placed.map(({ node, x, dated }, i): Spot => {
    const name = nameOf(node, nodes.length);
    const more = (node.id === of ? ringMore : 0) + (name.beside && reachedFromRight.has(i) ? arrowMore : 0);
    const bar = dated ? barOf(node, x, scale!) : undefined;
    return { node, x, name, nameX: x + measures.nameGap + more, bar };
  });
  return { spots, scale, undated, ...lines };
}

function xOf(place: Day | undefined, scale: TimeScale | undefined, undated: number): number {
  return place === undefined ? undated : scale!.x(place);
}

function axisWidth(nodes: number): number {
  return Math.round(Math.min(1600, Math.max(600, 500 + 55 * Math.sqrt(nodes))));
}
