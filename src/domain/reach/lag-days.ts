import type { Conventions } from '../conventions/conventions.ts';
import type { LocatedPlace } from '../conventions/located-place.ts';
import { composedLag } from './composed-lag.ts';
import type { Era, EraSpan } from './era-grid.ts';
import { hullOfLags } from './hull-of-lags.ts';
import { type RouteMap, routeMapOf, type Stop } from './route-map.ts';
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
  if (from?.coordinates === undefined || to.coordinates === undefined) return () => unknown;
  const map = routeMapOf(conventions);
  const source = map.source(from, from.coordinates);
  const goal = map.destination(to, to.coordinates);
  const eras = map.lagsByEra(source, goal, () => lagsByEra(source, goal, map, conventions));
  return ({ first, last }) => (first === last ? eras[first]! : hullOfLags(eras.slice(first, last + 1)));
}

const unknown: LagDays = { least: 0 };

function lagsByEra(from: Stop, to: Stop, map: RouteMap, conventions: Conventions): readonly LagDays[] {
  const waysIn = waysBetween(from, to, map, conventions);
  return map.grid.map(era => lagIn(era, from, to, waysIn, conventions));
}

function lagIn(
  era: Era,
  from: Stop,
  to: Stop,
  waysIn: (era: Era) => readonly [Way, ...Way[]],
  conventions: Conventions,
): LagDays {
  const routes = routesBetween(from, to, era);
  if (routes.length > 0) return hullOfLags(routes);
  const { least, most } = composedLag(waysIn(era), reckoningIn(era, conventions));
  return { least, most };
}
