import type { Conventions } from '../conventions/conventions.ts';
import { type Landmass, landmassOf } from '../conventions/landmasses.ts';
import type { Coordinates, LocatedPlace } from '../conventions/located-place.ts';
import { ports } from '../conventions/ports.ts';
import { regionContains } from '../conventions/regions.ts';
import type { RouteEnd } from '../conventions/route-conventions.ts';
import { remembered, rememberedPairs } from '../remembered.ts';
import { type Era, eraGrid } from './era-grid.ts';
import { greatCircle } from './great-circle.ts';
import type { Lag } from './lag.ts';
import { type LagRegion, lagRegionOf } from './lag-region.ts';
import type { LagDays } from './verdict.ts';

/** A recorded route in one direction. */
export interface DirectedRoute extends LagDays {
  readonly key: string;
}

/** A place or port as routes see it. */
export interface Stop {
  readonly name: string;
  readonly coordinates: Coordinates;
  readonly landmass: Landmass | undefined;
  readonly hasCountry: boolean;
  /** Kilometres by which the place may lie farther or nearer than its coordinates say. */
  readonly radius: number;
  /** Keys of the conventions that say so. */
  readonly regionBy: readonly string[];
  readonly leaving: readonly DirectedRoute[];
  readonly arriving: ReadonlySet<DirectedRoute>;
}

/** The lag of an era, and the keys of the conventions that it rests on: one list for all lags that rest on the same. */
export interface EraLag extends LagDays {
  readonly keys: readonly string[];
}

/** What lies between two stops, whatever the era. */
export interface Crossing {
  /** Great-circle distance. */
  readonly km: number;
  /** Recorded routes from the one to the other. */
  readonly routes: readonly DirectedRoute[];
}

/** The conventions about routes, made ready for many questions. */
export interface RouteMap {
  readonly grid: readonly Era[];
  /** Where ways from a place begin; remembered by object. */
  source(place: LocatedPlace, coordinates: Coordinates): Stop;
  /** Where ways to a place end; remembered by object. */
  destination(place: LocatedPlace, coordinates: Coordinates): Stop;
  /** The ports of its landmass nearest to a stop, nearest first; the stop itself where its land has none. Remembered. */
  portsNear(stop: Stop): readonly Stop[];
  /** Between two ports; remembered. */
  crossing(from: Stop, to: Stop): Crossing;
  /** Lags from one stop to another that are known already, by the eras they are for; for as long as both are in use. */
  lags(from: Stop, to: Stop): Map<number, Lag>;
  /** Lags in each era, without the way; made when first asked for, and remembered for the stops last asked about. */
  lagsByEra(from: Stop, to: Stop, make: () => readonly EraLag[]): readonly EraLag[];
}

/** The route map of a set of conventions, made once. */
export const routeMapOf: (conventions: Conventions) => RouteMap = remembered(makeRouteMap);

function makeRouteMap(conventions: Conventions): RouteMap {
  const stop = stopMaker(conventions);
  const harbours = ports.map(port => stop(port, { centre: port.coordinates, radius: 0, by: [] }, port.landmass));
  const count = conventions.get('route.ports');
  const at = (place: LocatedPlace, coordinates: Coordinates) => ({ centre: coordinates, radius: 0, by: [], place });
  return {
    grid: eraGrid(conventions),
    source: remembered((place, coordinates) =>
      stop(place, lagRegionOf(place, coordinates, conventions), landmassOf(place)),
    ),
    destination: remembered((place, coordinates) => stop(place, at(place, coordinates), landmassOf(place))),
    portsNear: remembered(place => nearest(place, harbours, count)),
    crossing: rememberedPairs(crossingOf),
    lags: rememberedPairs(() => new Map<number, Lag>()),
    lagsByEra: lagsOfLastGoals(),
  };
}

export function crossingOf(from: Stop, to: Stop): Crossing {
  return {
    km: greatCircle(from.coordinates, to.coordinates),
    routes: from.leaving.filter(route => to.arriving.has(route)),
  };
}

function stopMaker(conventions: Conventions) {
  const routes = conventions.routes.flatMap(({ key, value }) => {
    const lag = { least: value.least, most: value.most ?? undefined };
    const there = { from: value.from, to: value.to, route: { key, ...lag } };
    const back = { from: value.to, to: value.from, route: { key, ...lag } };
    return value.bothWays ? [there, back] : [there];
  });
  return (place: LocatedPlace, { centre, radius, by }: LagRegion, landmass: Landmass | undefined): Stop => ({
    name: place.name,
    coordinates: centre,
    radius,
    regionBy: by,
    landmass,
    hasCountry: place.country !== undefined,
    leaving: routes.filter(({ from }) => contains(from, place)).map(({ route }) => route),
    arriving: new Set(routes.filter(({ to }) => contains(to, place)).map(({ route }) => route)),
  });
}

/** A question asks of few goals and of thousands of sources: those of the last goals are kept. */
const goalsKept = 64;

function lagsOfLastGoals(): RouteMap['lagsByEra'] {
  const goals = new Map<Stop, WeakMap<Stop, readonly EraLag[]>>();
  return (from, to, make) => {
    const sources = goals.get(to) ?? new WeakMap<Stop, readonly EraLag[]>();
    if (!goals.has(to)) {
      goals.set(to, sources);
      if (goals.size > goalsKept) goals.delete(goals.keys().next().value!);
    }
    const known = sources.get(from) ?? make();
    sources.set(from, known);
    return known;
  };
}

function contains(end: RouteEnd, place: LocatedPlace): boolean {
  return regionContains({ ...end, source: '' }, place);
}

function nearest(from: Stop, harbours: readonly Stop[], count: number): readonly Stop[] {
  const own = harbours.filter(({ landmass }) => from.landmass === undefined || landmass === from.landmass);
  if (own.length === 0) return [from];
  return own
    .map(port => ({ port, km: greatCircle(from.coordinates, port.coordinates) }))
    .sort((a, b) => a.km - b.km)
    .slice(0, count)
    .map(({ port }) => port);
}
