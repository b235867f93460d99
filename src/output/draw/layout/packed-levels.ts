import { measures } from '../measures.ts';
import type { Room } from './rooms.ts';
import type { Row } from './rows-of.ts';

/** The least levels that never fall along the order and leave each thing its room. Any that grow from these do so too. */
export function packedLevels(rows: readonly Row[]): number[] {
  const levels: number[] = [];
  for (const [i, own] of rows.entries()) {
    let level = levels[i - 1] ?? 0;
    for (let above = 0; above < i; above++) {
      const least = distance(rows[above]!.rooms, own.rooms);
      if (least !== undefined) level = Math.max(level, levels[above]! + least);
    }
    levels.push(level);
  }
  return levels;
}

/** How far apart two levels must be, on the grid; undefined if the two can stand beside each other. */
function distance(above: readonly Room[], below: readonly Room[]): number | undefined {
  let most: number | undefined;
  for (const a of above) {
    for (const b of below) {
      if (a.lo < b.hi && b.lo < a.hi) most = Math.max(most ?? 0, a.down + b.up);
    }
  }
  return most === undefined ? undefined : Math.ceil(most / measures.grid) * measures.grid;
}
