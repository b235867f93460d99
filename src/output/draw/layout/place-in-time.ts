import type { Day } from '../../../domain/dates/day-bounds.ts';
import type { DrawnNode, DrawnStep } from '../drawing.ts';

/**
 * The day at which each node is drawn, always one of its days: the estimate, else the middle. Where one end is open it is
 * the known end, moved past the sources (or before the copies) that have a day; without any day it is undefined.
 */
export function placeInTime(
  nodes: readonly DrawnNode[],
  steps: readonly DrawnStep[],
): ReadonlyMap<string, Day | undefined> {
  const places = new Map(nodes.map(node => [node.id, ownPlace(node)]));
  const free = new Map(nodes.filter(halfOpen).map(node => [node.id, node]));
  // Each round settles at least one more step of a way; cycles end with the count.
  for (let round = 0; round < free.size; round++) {
    let moved = false;
    for (const { from, to } of steps) {
      moved = moveEarlier(free.get(from), places, places.get(to)) || moved;
      moved = moveLater(free.get(to), places, places.get(from)) || moved;
    }
    if (!moved) break;
  }
  return places;
}

function ownPlace({ estimate, days: { lo, hi } }: DrawnNode): Day | undefined {
  if (estimate !== undefined) return estimate;
  return lo !== undefined && hi !== undefined ? (lo + hi) / 2 : (lo ?? hi);
}

function halfOpen({ estimate, days: { lo, hi } }: DrawnNode): boolean {
  return estimate === undefined && (lo === undefined) !== (hi === undefined);
}

function moveEarlier(node: DrawnNode | undefined, places: Map<string, Day | undefined>, copy: Day | undefined) {
  if (node?.days.hi === undefined || copy === undefined || places.get(node.id)! <= copy) return false;
  places.set(node.id, copy);
  return true;
}

function moveLater(node: DrawnNode | undefined, places: Map<string, Day | undefined>, source: Day | undefined) {
  if (node?.days.lo === undefined || source === undefined || places.get(node.id)! >= source) return false;
  places.set(node.id, source);
  return true;
}
