import type { EditionCuts, OutletLimits } from './edition-cuts.ts';
import type { Limits } from './limits.ts';
import { openDay } from './open-day.ts';
import type { ReachVerdict } from './verdict.ts';

/**
 * Days of room of an edition, as its verdict has them: in every case if it is in time on every reckoning, else in some.
 * Infinite where a bound is open. The same as `editionVerdicts` gives, for editions whose verdict is known.
 * @param outlets those it may have come from
 * @param first first day for sale, -openDay or less if open
 * @param last last recorded day, openDay if open
 */
export function editionRoom(
  { reckonings }: EditionCuts,
  outlets: readonly OutletLimits[],
  verdict: Exclude<ReachVerdict, 'CONTRADICTORY'>,
  first: number,
  last: number,
): number {
  let least = always;
  let most = never;
  reckonings.forEach(({ decidesEvery, decidesSome }, i) => {
    if (verdict === 'IN_EVERY_CASE' && !decidesEvery) return;
    if (verdict === 'IN_NO_CASE' && !decidesSome) return;
    const best = bestOf(outlets, i, first <= -openDay ? never : first, last === openDay ? always : last);
    least = Math.min(least, best.every);
    most = Math.max(most, best.some);
  });
  return verdict === 'IN_EVERY_CASE' ? least : most;
}

const always = Number.POSITIVE_INFINITY;
const never = Number.NEGATIVE_INFINITY;

interface Room {
  readonly rank: number;
  readonly every: number;
  readonly some: number;
}

/** Nowhere to see it: too late, and nothing says by how much. */
const nowhere: Room = { rank: -1, every: never, some: always };

/** The way that decides a reckoning: of those of the best verdict the one with the most room. */
function bestOf(outlets: readonly OutletLimits[], reckoning: number, first: number, last: number): Room {
  let best = nowhere;
  for (const limits of outlets) {
    for (const way of limits[reckoning]!) {
      const room = roomOf(way, first, last);
      if (room.rank > best.rank || (room.rank === best.rank && hasMore(room, best))) best = room;
    }
  }
  return best;
}

function roomOf(way: Limits, first: number, last: number): Room {
  const every = Math.min(way.every - last, way.everyRoom);
  const some = Math.min(way.some - first, way.someRoom);
  return { rank: some < 0 ? 0 : every >= 0 ? 2 : 1, every, some };
}

function hasMore(a: Room, b: Room): boolean {
  if (a.rank === 2) return a.every > b.every;
  return a.some > b.some || (a.some === b.some && a.every > b.every);
}
