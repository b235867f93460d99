import type { Conventions } from '../conventions/conventions.ts';
import type { LocatedPlace } from '../conventions/located-place.ts';
import { composedLag } from './composed-lag.ts';
import type { Era, EraSpan } from './era-grid.ts';
import { hullOfLags } from './hull-of-lags.ts';
import { keysOfRoutes, keysOfWays } from './lag-keys.ts';
import { type EraLag, type RouteMap, routeMapOf, type Stop } from './route-map.ts';
import { sameTown } from './same-town.ts';
import type { LagDays } from './verdict.ts';
import { reckoningIn, routesBetween, type Way, waysBetween } from './ways-between.ts';

/** The lag over neighbouring eras. */
export type LagsOver = (span: EraSpan) => LagDays;

/**
 * The lags between two places as `lagBetween` has them, without the way: for judging many editions. Costs some
 * microseconds an era, once for two places: what is known of places is remembered by object.
 */
export function lagDays(from: LocatedPlace | undefined, to: LocatedPlace, conventions: Conventions): LagsOver {
  const town = conventions.get('route.sameTown');
  if (from !== undefined && sameTown(from, to, town.within)) return () => town;
  const eras = erasBetween(from, to, conventions);
  if (eras === undefined) return () => unknown;
  return ({ first, last }) => (first === last ? eras[first]! : hullOfLags(eras.slice(first, last + 1)));
}

/** Keys of the conventions that the lag in an era rests on, by its place in the grid: one list for what rests on the same. */
export function lagKeys(
  from: LocatedPlace | undefined,
  to: LocatedPlace,
  conventions: Conventions,
): (era: number) => readonly string[] {
  if (from !== undefined && sameTown(from, to, conventions.get('route.sameTown').within)) return () => inTown;
  const eras = erasBetween(from, to, conventions);
  return era => eras?.[era]?.keys ?? none;
}

/** What the lag within a town rests on. */
export const inTown: readonly string[] = ['route.sameTown'];
const none: readonly string[] = [];

const unknown: LagDays = { least: 0 };

/** Undefined where one of the places is not known. */
function erasBetween(
  from: LocatedPlace | undefined,
  to: LocatedPlace,
  conventions: Conventions,
): readonly EraLag[] | undefined {
  if (from?.coordinates === undefined || to.coordinates === undefined) return undefined;
  const map = routeMapOf(conventions);
  const source = map.source(from, from.coordinates);
  const goal = map.destination(to, to.coordinates);
  return map.lagsByEra(source, goal, () => lagsByEra(source, goal, map, conventions));
}

function lagsByEra(from: Stop, to: Stop, map: RouteMap, conventions: Conventions): readonly EraLag[] {
  const waysIn = waysBetween(from, to, map, conventions);
  return map.grid.map(era => lagIn(era, from, to, waysIn, conventions));
}

function lagIn(
  era: Era,
  from: Stop,
  to: Stop,
  waysIn: (era: Era) => readonly [Way, ...Way[]],
  conventions: Conventions,
): EraLag {
  const routes = routesBetween(from, to, era);
  if (routes.length > 0) return { ...hullOfLags(routes), keys: kept(keysOfRoutes(routes)) };
  const ways = waysIn(era);
  const lag = composedLag(ways, reckoningIn(era, conventions));
  return { least: lag.least, most: lag.most, keys: kept(keysOfWays(ways, lag.allowance, from, era)) };
}

/** Lists that are in use; there are few that differ. */
const lists = new Map<string, readonly string[]>();
const mostLists = 10_000;

function kept(keys: readonly string[]): readonly string[] {
  const name = keys.join();
  const known = lists.get(name);
  if (known !== undefined) return known;
  if (lists.size >= mostLists) lists.clear();
  lists.set(name, keys);
  return keys;
}
