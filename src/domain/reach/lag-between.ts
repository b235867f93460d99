import type { Conventions } from '../conventions/conventions.ts';
import type { LocatedPlace } from '../conventions/located-place.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import type { AnswerFlag } from './answer-flag.ts';
import { composedLag } from './composed-lag.ts';
import { type Era, type EraSpan, eraSpan } from './era-grid.ts';
import { hullOfLags } from './hull-of-lags.ts';
import type { Lag, RouteLeg, RouteStretch } from './lag.ts';
import { keysOfRoutes, keysOfWays } from './lag-keys.ts';
import { type RouteMap, routeMapOf, type Stop } from './route-map.ts';
import { sameTown } from './same-town.ts';
import { type NamedLeg, reckoningIn, routesBetween, waysBetween } from './ways-between.ts';

/**
 * How long a book first for sale on some day of `window` may have been on its way. Recorded routes valid on days of the
 * window are taken together (least of the least, greatest of the greatest); days that none covers take a way composed
 * over ports, reckoned from its length where no route covers a leg (flag ASSUMED). Within one town its own row alone
 * holds. Without coordinates of both places: 0 days to open (flag PLACE_UNKNOWN).
 *
 * Costs some 0.1 ms a stretch of days within which the same routes are valid, once for two places: what is known of
 * places is remembered by object, so pass the same object for the same place.
 * @param window recorded days, without the early start of imprint years; not reversed
 */
export function lagBetween(
  from: LocatedPlace | undefined,
  to: LocatedPlace,
  window: DayRange,
  conventions: Conventions,
): Lag {
  const { least, most, route, flags } = lagOverEras(from, to, window, conventions);
  return { least, most, route: { ...route, stretches: clip(route.stretches, window) }, flags };
}

/**
 * The same lag, with the stretches of its route not cut to the window: one object for all windows within the same
 * stretches, so that asking again costs next to nothing.
 */
function lagOverEras(
  from: LocatedPlace | undefined,
  to: LocatedPlace,
  window: DayRange,
  conventions: Conventions,
): Lag {
  if (from !== undefined && sameTown(from, to, conventions.get('route.sameTown').within)) {
    return lagInTown(from, to, window, conventions);
  }
  if (from?.coordinates === undefined || to.coordinates === undefined) return unknownLag(from, to, window);
  const map = routeMapOf(conventions);
  const source = map.source(from, from.coordinates);
  const goal = map.destination(to, to.coordinates);
  return lagOfEras(source, goal, eraSpan(map.grid, window), map, conventions);
}

/** The lag over whole eras: the same for every window that touches them. Remembered by the two stops. */
function lagOfEras(from: Stop, to: Stop, span: EraSpan, map: RouteMap, conventions: Conventions): Lag {
  const known = map.lags(from, to);
  const name = span.first * map.grid.length + span.last;
  const before = known.get(name);
  if (before !== undefined) return before;
  const waysIn = waysBetween(from, to, map, conventions);
  const parts = map.grid.slice(span.first, span.last + 1).map(era => lagInEra(from, to, era, waysIn, conventions));
  const stretches = joinEqual(parts.map(({ stretch }) => stretch));
  const flags = new Set<AnswerFlag>(parts.flatMap(part => part.flags));
  if (!from.hasCountry || !to.hasCountry) flags.add('REGION_UNKNOWN');
  const lag = {
    ...hullOfLags(stretches),
    route: {
      from: from.name,
      to: to.name,
      by: [...new Set(stretches.map(inWords))].join('; '),
      stretches,
      conventions: conventions.uses(parts.flatMap(part => part.keys)),
    },
    flags: [...flags],
  };
  known.set(name, lag);
  return lag;
}

/** The lag from a publisher to a buyer in the same town. */
export function lagInTown(from: LocatedPlace, to: LocatedPlace, window: DayRange, conventions: Conventions): Lag {
  const { least, most } = conventions.get('route.sameTown');
  const stretches = [{ days: window, least, most, rows: ['route.sameTown'], legs: [] }];
  const conventionsUsed = [conventions.use('route.sameTown')];
  const route = { from: from.name, to: to.name, by: 'same town', stretches, conventions: conventionsUsed };
  return { least, most, route, flags: [] };
}

function unknownLag(from: LocatedPlace | undefined, to: LocatedPlace, window: DayRange): Lag {
  const stretches = [{ days: window, least: 0, rows: [], legs: [] }];
  const route = { from: from?.name, to: to.name, by: 'way not known', stretches, conventions: [] };
  return { least: 0, route, flags: ['PLACE_UNKNOWN'] };
}

interface EraPart {
  readonly stretch: RouteStretch;
  readonly keys: readonly string[];
  readonly flags: readonly AnswerFlag[];
}

function lagInEra(
  from: Stop,
  to: Stop,
  era: Era,
  waysIn: ReturnType<typeof waysBetween>,
  conventions: Conventions,
): EraPart {
  const routes = routesBetween(from, to, era);
  if (routes.length > 0) {
    const rows = [...new Set(routes.map(({ key }) => key))];
    return {
      stretch: { days: era.days, ...hullOfLags(routes), rows, legs: [] },
      keys: keysOfRoutes(routes),
      flags: [],
    };
  }
  const ways = waysIn(era);
  const lag = composedLag(ways, reckoningIn(era, conventions));
  // A town that is its own port is no leg of the way.
  const legs = lag.quickest.legs.filter(({ from: a, to: b }) => a.name !== b.name).map(legSeen);
  const stretch = { days: era.days, least: lag.least, most: lag.most, rows: [], legs };
  const assumed = [...lag.quickest.legs, ...lag.surest.legs].some(({ route }) => route === undefined);
  return { stretch, keys: keysOfWays(ways, lag.allowance, from, era), flags: assumed ? ['ASSUMED'] : [] };
}

function legSeen({ from, to, over, km, rows }: NamedLeg): RouteLeg {
  return { from: from.name, to: to.name, over, km: Math.round(km), rows: [...new Set(rows.map(({ key }) => key))] };
}

/** Neighbouring stretches that say the same, as one. */
function joinEqual(stretches: readonly RouteStretch[]): readonly RouteStretch[] {
  const joined: RouteStretch[] = [];
  for (const next of stretches) {
    const last = joined.at(-1);
    const same = last?.least === next.least && last.most === next.most && inWords(last) === inWords(next);
    if (last !== undefined && same)
      joined[joined.length - 1] = { ...last, days: { lo: last.days.lo, hi: next.days.hi } };
    else joined.push(next);
  }
  return joined;
}

function clip(stretches: readonly RouteStretch[], { lo, hi }: DayRange): readonly RouteStretch[] {
  return stretches.map((stretch, at) => {
    const first = at === 0 ? lo : stretch.days.lo;
    return { ...stretch, days: { lo: first, hi: at === stretches.length - 1 ? hi : stretch.days.hi } };
  });
}

function inWords({ rows, legs }: RouteStretch): string {
  if (rows.length > 0) return rows.join(', ');
  const first = legs[0]?.from ?? '';
  return legs.reduce((words, leg) => `${words} ${howInWords(leg)} to ${leg.to}`, first);
}

function howInWords({ over, rows }: RouteLeg): string {
  if (rows.length > 0) return `by ${rows.join(', ')}`;
  return over === 'LAND' ? 'by land' : 'by sea';
}
