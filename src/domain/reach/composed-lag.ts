import type { EraSpeeds } from '../conventions/fallback-conventions.ts';
import type { LagDays } from './verdict.ts';

/** One leg of a way: over a recorded route, or reckoned from its length. */
export interface Leg {
  readonly over: 'LAND' | 'SEA';
  /** Great-circle distance in km. */
  readonly km: number;
  /** Kilometres by which it may be shorter or longer; 0 if absent. */
  readonly within?: number | undefined;
  /** The hull of the recorded routes that cover it; absent: none. */
  readonly route?: LagDays | undefined;
}

export interface Reckoning {
  readonly speeds: Pick<EraSpeeds, 'land' | 'sea'>;
  readonly detour: { readonly land: number; readonly sea: number };
  /** Days for agents and orders where the longest leg has no recorded route. */
  readonly orderAllowance: number;
}

/** The lag of several possible ways together: `least` by the quickest of them, `most` by the surest. */
export interface ComposedLag<W> extends LagDays {
  readonly quickest: W;
  readonly surest: W;
  /** Whether the allowance for orders is in `most`. */
  readonly allowance: boolean;
}

/**
 * The least lag of any of the ways, and the least of their greatest lags, where ways whose longest leg has a recorded
 * route come first. Days are summed before they are rounded, down for the least and up for the greatest.
 */
export function composedLag<W extends { readonly legs: readonly Leg[] }>(
  ways: readonly [W, ...W[]],
  reckoning: Reckoning,
): ComposedLag<W> {
  let quickest = ways[0];
  let least = Number.POSITIVE_INFINITY;
  let surest: Surest<W> | undefined;
  for (const way of ways) {
    const days = leastOf(way.legs, reckoning);
    if (days < least) [least, quickest] = [days, way];
    const recorded = longest(way.legs)?.route !== undefined;
    const trial = { way, recorded, most: mostOf(way.legs, recorded, reckoning) };
    if (surest === undefined || isSurer(trial, surest)) surest = trial;
  }
  return { least, most: surest?.most, quickest, surest: surest?.way ?? quickest, allowance: surest?.recorded !== true };
}

function leastOf(legs: readonly Leg[], { speeds }: Reckoning): number {
  let recorded = 0;
  let reckoned = 0;
  for (const { over, km, within = 0, route } of legs) {
    if (route !== undefined) recorded += route.least;
    else reckoned += Math.max(0, km - within) / (over === 'LAND' ? speeds.land : speeds.sea).fast;
  }
  return recorded + Math.floor(reckoned);
}

function mostOf(legs: readonly Leg[], longestIsRecorded: boolean, reckoning: Reckoning): number | undefined {
  const { speeds, detour, orderAllowance } = reckoning;
  let recorded = longestIsRecorded ? 0 : orderAllowance;
  let reckoned = 0;
  for (const { over, km, within = 0, route } of legs) {
    if (route === undefined) {
      const [factor, speed] = over === 'LAND' ? [detour.land, speeds.land] : [detour.sea, speeds.sea];
      reckoned += (factor * (km + within)) / speed.slow;
    } else {
      if (route.most === undefined) return undefined;
      recorded += route.most;
    }
  }
  return recorded + Math.ceil(reckoned);
}

function longest(legs: readonly Leg[]): Leg | undefined {
  let found = legs[0];
  for (const leg of legs) if (found !== undefined && leg.km > found.km) found = leg;
  return found;
}

interface Surest<W> {
  readonly way: W;
  readonly recorded: boolean;
  readonly most: number | undefined;
}

function isSurer<W>(a: Surest<W>, b: Surest<W>): boolean {
  if (a.recorded !== b.recorded) return a.recorded;
  return a.most !== undefined && (b.most === undefined || a.most < b.most);
}
