import { measures } from '../measures.ts';
import type { Geometry } from './geometry.ts';
import type { Lane } from './lines-between.ts';
import type { Room } from './rooms.ts';

/** Nodes on one level, and the room of all of them. */
export interface Row {
  readonly nodes: number[];
  readonly rooms: Room[];
}

/**
 * Nodes beside each other in the order share a level where each was copied from the one on its left, and nothing else would
 * then lie on another.
 */
export function rowsOf(group: readonly number[], rooms: readonly (readonly Room[])[], geometry: Geometry): Row[] {
  // A name beside its mark leaves no way on.
  const lanes = geometry.spots[0]!.name.beside ? [] : geometry.lanes.filter(isForward(geometry));
  const joins = new Set(lanes.map(({ from, to }) => `${from} ${to}`));
  const rows: Row[] = [];
  for (const node of group) {
    const row = rows.at(-1);
    // Spots are numbered from left to right.
    const [first, last] = row === undefined ? [node, node] : [Math.min(...row.nodes), Math.max(...row.nodes)];
    const joined = joins.has(`${last} ${node}`) || joins.has(`${node} ${first}`);
    if (joined && row!.nodes.every(other => besideEachOther(rooms[other]!, rooms[node]!))) {
      row!.nodes.push(node);
      row!.rooms.push(...rooms[node]!);
    } else rows.push({ nodes: [node], rooms: [...rooms[node]!] });
  }
  return rows;
}

function isForward({ spots, uprights }: Geometry): (lane: Lane) => boolean {
  return ({ from, to, upright }) => uprights[upright]!.way === 'onward' && spots[from]!.x < spots[to]!.x;
}

/**
 * Mark and name (the first two rooms) of each lie apart from those of the other, of the lines of the right one only that
 * which joins them reaches the left one, and none comes to the left one from the right.
 */
function besideEachOther(a: readonly Room[], b: readonly Room[]): boolean {
  const clear = a.slice(0, 2).every(one => b.slice(0, 2).every(other => apart(one, other)));
  const [left, right] = a[0]!.lo < b[0]!.lo ? [a, b] : [b, a];
  // The room of a name begins at the middle of its mark.
  const fromRight = left.slice(2).some(line => line.hi > left[1]!.lo);
  const reaches = (line: Room) => left.slice(0, 2).some(own => line.lo < own.hi && own.lo < line.hi);
  const joining = right.slice(2).filter(reaches);
  return clear && !fromRight && joining.length <= 1;
}

/** With room for an arrow and a sign between them. */
function apart(a: Room, b: Room): boolean {
  return a.hi + measures.nearest < b.lo || b.hi + measures.nearest < a.lo;
}
