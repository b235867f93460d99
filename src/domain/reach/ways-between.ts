import type { Conventions } from '../conventions/conventions.ts';
import type { Leg } from './composed-lag.ts';
import type { Era } from './era-grid.ts';
import { greatCircle } from './great-circle.ts';
import { hullOfLags } from './hull-of-lags.ts';
import type { DirectedRoute, RouteMap, Stop } from './route-map.ts';

/** A leg with its ends and the recorded routes that cover it. */
export interface NamedLeg extends Leg {
  readonly from: Stop;
  readonly to: Stop;
  readonly rows: readonly DirectedRoute[];
}

export interface Way {
  readonly legs: readonly NamedLeg[];
}

/**
 * The ways that are tried between two stops in an era: by land alone where both are, or may be, on one landmass, and
 * by land, sea and land over the nearest ports at each end.
 */
export function waysBetween(
  from: Stop,
  to: Stop,
  era: Era,
  map: RouteMap,
  conventions: Conventions,
): readonly [Way, ...Way[]] {
  const { within } = conventions.get('route.sameTown');
  const leg = (a: Stop, b: Stop, over: 'LAND' | 'SEA') => legBetween(a, b, over, era, within);
  const starts = map.portsNear(from).map(port => ({ port, legs: port === from ? [] : [leg(from, port, 'LAND')] }));
  const ends = map.portsNear(to).map(port => ({ port, legs: port === to ? [] : [leg(port, to, 'LAND')] }));
  const ways: Way[] = [];
  if (from.landmass === to.landmass || from.landmass === undefined || to.landmass === undefined) {
    ways.push({ legs: [leg(from, to, 'LAND')] });
  }
  for (const start of starts) {
    for (const end of ends) {
      if (start.port === end.port) continue;
      ways.push({ legs: [...start.legs, leg(start.port, end.port, 'SEA'), ...end.legs] });
    }
  }
  const [first = { legs: [leg(from, to, 'SEA')] }, ...others] = ways;
  return [first, ...others];
}

/** The recorded routes from one stop to another that are valid in an era. */
export function routesBetween(from: Stop, to: Stop, era: Era): readonly DirectedRoute[] {
  return from.leaving.filter(route => to.arriving.has(route) && era.routes.has(route.key));
}

function legBetween(from: Stop, to: Stop, over: 'LAND' | 'SEA', era: Era, town: number): NamedLeg {
  const km = greatCircle(from.coordinates, to.coordinates);
  const within = from.radius + to.radius;
  // A town that is, or may be, its own port needs no route to it.
  const rows = km <= town + within ? [] : routesBetween(from, to, era);
  return { from, to, over, km, within, rows, route: rows.length === 0 ? undefined : hullOfLags(rows) };
}
