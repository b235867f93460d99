import { measures } from '../measures.ts';
import type { Geometry } from './geometry.ts';
import { isotonic } from './isotonic.ts';
import { packedLevels } from './packed-levels.ts';
import { type Room, roomsOf } from './rooms.ts';
import { type Row, rowsOf } from './rows-of.ts';

const rounds = 16;
const groupGap = 18;

/**
 * The level of each node, downwards from 0: in the order given, never two things on one another, every source as near the
 * middle of its copies as that allows. Levels lie on the grid, so that lines are straight or clearly bent.
 */
export function settleRows(geometry: Geometry, groups: readonly (readonly number[])[]): readonly number[] {
  const rooms = roomsOf(geometry);
  const levels: number[] = [];
  let top = 0;
  for (const group of groups) {
    const settled = settle(group, rooms, geometry);
    const up = Math.max(...group.map((node, i) => Math.max(...rooms[node]!.map(room => room.up)) - settled[i]!));
    group.forEach((node, i) => {
      levels[node] = top + toGrid(up) + settled[i]!;
    });
    top = Math.max(...group.map(node => levels[node]! + Math.max(...rooms[node]!.map(room => room.down)))) + groupGap;
  }
  return levels;
}

function settle(group: readonly number[], rooms: readonly (readonly Room[])[], geometry: Geometry): number[] {
  const rows = rowsOf(group, rooms, geometry);
  const packed = packedLevels(rows);
  const neighbours = neighboursIn(rows, geometry);
  let levels = packed;
  let best = packed;
  let least = unevenness(packed, neighbours);
  for (let round = 0; round < rounds && least > 0; round++) {
    const wishes = levels.map((level, i) => meanLevel(neighbours[i]!, levels) ?? level);
    const shifts = isotonic(wishes.map((wish, i) => wish - packed[i]!));
    levels = packed.map((level, i) => level + shifts[i]!);
    const onGrid = packed.map((level, i) => level + toGrid(shifts[i]! - shifts[0]!));
    const now = unevenness(onGrid, neighbours);
    if (now < least) [best, least] = [onGrid, now];
  }
  return rows.flatMap((row, i) => row.nodes.map(() => best[i]!));
}

/** Rows that steps join with each row, once for each step. */
function neighboursIn(rows: readonly Row[], { lanes }: Geometry): number[][] {
  const place = new Map(rows.flatMap((row, i) => row.nodes.map(node => [node, i] as const)));
  const lists: number[][] = rows.map(() => []);
  for (const { from, to } of lanes) {
    const [a, b] = [place.get(from), place.get(to)];
    if (a === undefined || b === undefined || a === b) continue;
    lists[a]!.push(b);
    lists[b]!.push(a);
  }
  return lists;
}

function meanLevel(neighbours: readonly number[], levels: readonly number[]): number | undefined {
  if (neighbours.length === 0) return undefined;
  return neighbours.reduce((sum, each) => sum + levels[each]!, 0) / neighbours.length;
}

function unevenness(levels: readonly number[], neighbours: readonly (readonly number[])[]): number {
  let sum = 0;
  neighbours.forEach((list, i) => {
    for (const each of list) sum += Math.abs(levels[each]! - levels[i]!);
  });
  return sum;
}

function toGrid(level: number): number {
  return Math.round(level / measures.grid) * measures.grid;
}
