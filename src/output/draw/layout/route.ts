import { measures } from '../measures.ts';
import type { Geometry } from './geometry.ts';
import type { LaidUpright, Lane } from './lines-between.ts';

/** An upright with its ends, and how it is reached from its node. */
export interface RoutedUpright {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly lanes: readonly RoutedLane[];
  readonly contrary: boolean;
  readonly source: number;
}

/** A lane with its level; it leaves its upright there, or straight from its source where that has the same level. */
export interface RoutedLane extends Lane {
  readonly level: number;
  /** x of the upright as drawn. */
  readonly start: number;
}

/** Lines as drawn: levels of lanes at their node, and uprights moved apart where they would lie on one another. */
export function route(geometry: Geometry, levels: readonly number[]): readonly RoutedUpright[] {
  const ports = portLevels(geometry, levels);
  const drawn: RoutedUpright[] = [];
  geometry.uprights.forEach((upright, number) => {
    const lanes = geometry.lanes.flatMap((lane, i) => (lane.upright === number ? [{ ...lane, level: ports[i]! }] : []));
    const ends = [levels[upright.source]!, ...lanes.map(lane => lane.level)];
    const [top, bottom] = [Math.min(...ends), Math.max(...ends)];
    const x = freeColumn(upright, top, bottom, drawn);
    const { contrary, source } = upright;
    drawn.push({ x, top, bottom, contrary, source, lanes: lanes.map(lane => ({ ...lane, start: x })) });
  });
  return drawn;
}

/**
 * Lines that come to one mark lie side by side, in the order of where they come from; one from the same level is straight.
 * Where the name stands beside the mark, those from the right come in above it.
 */
function portLevels({ lanes, spots }: Geometry, levels: readonly number[]): number[] {
  const ports: number[] = [];
  const coming = Map.groupBy(lanes.keys(), i => lanes[i]!.to);
  for (const [to, numbers] of coming) {
    const above = (i: number) => spots[to]!.name.beside && lanes[i]!.start > lanes[i]!.end;
    const from = (i: number) => (above(i) ? Number.NEGATIVE_INFINITY : levels[lanes[i]!.from]!);
    const order = numbers.toSorted((a, b) => from(a) - from(b) || a - b);
    const straight = order.findIndex(i => from(i) === levels[to]);
    const turned = order.filter(above).length;
    const middle = straight >= 0 ? straight : turned > 0 ? turned : (order.length - 1) / 2;
    order.forEach((i, place) => {
      ports[i] = levels[to]! + (place - middle) * measures.portGap;
    });
  }
  return ports;
}

/** Uprights nearer than this would look like one. */
const leastApart = 4;
const shifts = { onward: [0, -4, 4, -8, 8, -12, 12], round: [0, -5, -10, -15] } as const;
/** How far an upright may be moved. */
export const mostShift = 15;

/** The column nearest to the one wished for in which no upright lies yet at these levels; the one wished for if all are taken. */
function freeColumn({ x, way }: LaidUpright, top: number, bottom: number, drawn: readonly RoutedUpright[]): number {
  const taken = (column: number) =>
    drawn.some(
      each =>
        Math.abs(each.x - column) < leastApart && each.top < bottom + leastApart && top - leastApart < each.bottom,
    );
  return x + (shifts[way].find(shift => !taken(x + shift)) ?? 0);
}
