import type { Conventions } from '../conventions/conventions.ts';
import type { Leg, Reckoning } from './composed-lag.ts';
import type { Era } from './era-grid.ts';
import { hullOfLags } from './hull-of-lags.ts';
import { type Crossing, crossingOf, type DirectedRoute, type RouteMap, type Stop } from './route-map.ts';

/** A leg with its ends and the recorded routes that cover it. */
export interface NamedLeg extends Leg {
  readonly from: Stop;
  readonly to: Stop;
  readonly rows: readonly DirectedRoute[];
}

export interface Way {
  readonly legs: readonly NamedLeg[];
}

type Ways = readonly [Way, ...Way[]];

/**
 * The ways that are tried between two stops in an era: by land alone where both are, or may be, on one landmass, and
 * by land, sea and land over the nearest ports at each end. Worked once for all eras in which the same routes cover the
 * same legs.
 */
export function waysBetween(from: Stop, to: Stop, map: RouteMap, conventions: Conventions): (era: Era) => Ways {
  const { within } = conventions.get('route.sameTown');
  const tried = crossingsTried(from, to, map, within);
  const keys = new Set(tried.flatMap(crossings => crossings.flatMap(({ routes }) => routes.map(({ key }) => key))));
  const known = new Map<string, Ways>();
  return era => {
    const name = [...keys].filter(key => era.routes.has(key)).join();
    const ways = known.get(name) ?? waysIn(era, tried);
    known.set(name, ways);
    return ways;
  };
}

/** The recorded routes from one stop to another that are valid in an era. */
export function routesBetween(from: Stop, to: Stop, era: Era): readonly DirectedRoute[] {
  return from.leaving.filter(route => to.arriving.has(route) && era.routes.has(route.key));
}

/** How legs without a recorded route are reckoned in an era. */
export function reckoningIn({ speeds }: Era, conventions: Conventions): Reckoning {
  return {
    speeds,
    detour: { land: conventions.get('route.detour.land'), sea: conventions.get('route.detour.sea') },
    orderAllowance: conventions.get('route.orderAllowance'),
  };
}

interface Tried extends Crossing {
  readonly from: Stop;
  readonly to: Stop;
  readonly over: 'LAND' | 'SEA';
}

/** Legs way by way. */
function crossingsTried(from: Stop, to: Stop, map: RouteMap, town: number): readonly (readonly Tried[])[] {
  const leg = (a: Stop, b: Stop, over: Tried['over'], crossing = crossingOf(a, b)): Tried => {
    // A town that is, or may be, its own port needs no route to it.
    const isOne = crossing.km <= town + a.radius + b.radius;
    return { from: a, to: b, over, km: crossing.km, routes: isOne ? [] : crossing.routes };
  };
  const starts = map.portsNear(from).map(port => ({ port, legs: port === from ? [] : [leg(from, port, 'LAND')] }));
  const ends = map.portsNear(to).map(port => ({ port, legs: port === to ? [] : [leg(port, to, 'LAND')] }));
  const ways: Tried[][] = [];
  if (from.landmass === to.landmass || from.landmass === undefined || to.landmass === undefined) {
    ways.push([leg(from, to, 'LAND')]);
  }
  for (const start of starts) {
    for (const end of ends) {
      if (start.port === end.port) continue;
      const between = start.port === from || end.port === to ? undefined : map.crossing(start.port, end.port);
      ways.push([...start.legs, leg(start.port, end.port, 'SEA', between), ...end.legs]);
    }
  }
  return ways.length > 0 ? ways : [[leg(from, to, 'SEA')]];
}

function waysIn(era: Era, tried: readonly (readonly Tried[])[]): Ways {
  const legs = new Map<Tried, NamedLeg>();
  const legIn = (each: Tried): NamedLeg => {
    const known = legs.get(each);
    if (known !== undefined) return known;
    const rows = each.routes.filter(({ key }) => era.routes.has(key));
    const within = each.from.radius + each.to.radius;
    const leg = { ...each, within, rows, route: rows.length === 0 ? undefined : hullOfLags(rows) };
    legs.set(each, leg);
    return leg;
  };
  const [first, ...others] = tried.map(way => ({ legs: way.map(legIn) }));
  return [first!, ...others];
}
