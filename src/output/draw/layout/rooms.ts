import { measures } from '../measures.ts';
import type { Geometry, Spot } from './geometry.ts';
import type { Lane } from './lines-between.ts';
import { nameDepth } from './name-of.ts';
import { mostShift } from './route.ts';

/** Room that something takes around the level of its node. */
export interface Room {
  readonly lo: number;
  readonly hi: number;
  readonly up: number;
  readonly down: number;
}

/**
 * Rooms of each node: of its mark with its days, of its name, then of each line that comes to it or goes round its left.
 * Lines that come in beside the first may do so above its level or below, where they move the bar and the name down.
 */
export function roomsOf({ spots, lanes, uprights }: Geometry): readonly (readonly Room[])[] {
  const coming: Lane[][] = spots.map(() => []);
  for (const lane of lanes) coming[lane.to]!.push(lane);
  const rooms = spots.map((spot, i) => {
    const turned = spot.name.beside && coming[i]!.some(({ start, end }) => start > end);
    const ports = Math.max(0, coming[i]!.length - (turned ? 0 : 1)) * measures.portGap;
    return [markRoom(spot, ports), nameRoom(spot, ports), ...coming[i]!.map(lane => laneRoom(lane, ports))];
  });
  const round = measures.shoulder + measures.lineRoom;
  for (const { source, way, x } of uprights)
    if (way === 'round') rooms[source]!.push({ lo: x - mostShift, hi: spots[source]!.x, up: round, down: round });
  return rooms;
}

function markRoom({ x, bar }: Spot, ports: number): Room {
  const reach = measures.mark + 3;
  const [from, to] = [bar?.from ?? x, bar?.to ?? x];
  const lo = Math.min(x - reach, bar?.left === 'beyond' ? from - 6 : from);
  const hi = Math.max(x + reach, bar?.right === 'beyond' ? to + 6 : to);
  return { lo, hi, up: reach, down: reach + 4 + ports };
}

function nameRoom({ x, nameX, name, node }: Spot, ports: number): Room {
  const down = nameDepth(name, node.plates?.length ?? 0) + ports;
  return { lo: x, hi: nameX + name.width + 8, up: name.beside ? 8 : 0, down };
}

/** An upright may be moved away from another, and its lanes with it. */
function laneRoom({ start, end }: Lane, ports: number): Room {
  const room = measures.lineRoom + ports;
  return { lo: Math.min(start - mostShift, end), hi: Math.max(start + mostShift, end), up: room, down: room };
}
