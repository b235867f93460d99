import type { Conventions } from '../conventions/conventions.ts';
import type { EraSpan } from './era-grid.ts';
import { lagDays } from './lag-days.ts';
import { type Limits, limitsOf } from './limits.ts';
import { outletDays } from './outlet-lag.ts';
import type { Outlet, ReachTarget } from './reach-edition-input.ts';
import { type Reckoning, reckoningsOf } from './reckonings.ts';
import { targetCases } from './target-cases.ts';

/**
 * The days that decide on all editions of the same outlets whose recorded days touch the same eras, however many there
 * are: in time on every reckoning if the last day is `every` or before, too late on every reckoning if the first day for
 * sale is after `some`, else in time on some. -Infinity: no day is.
 */
export interface CutDays {
  readonly every: number;
  readonly some: number;
}

export interface EditionCuts {
  readonly reckonings: readonly Reckoning[];
  /** Room is told from the cut days alone: there is one reckoning, and no stay begins or ends. */
  readonly plain: boolean;
  /** What follows from one outlet, for each span of eras. A span is worked anew each time. */
  ofOutlet(outlet: Outlet): (span: EraSpan) => OutletCuts;
  /** What the ways from one outlet ask, for each reckoning: what the room of an edition is told from. */
  limitsOf(outlet: Outlet): (span: EraSpan) => OutletLimits;
  /** For editions that came from any of some outlets, one at least. */
  joined(outlets: readonly OutletCuts[]): CutDays;
}

/** Cut days for each reckoning. */
export type OutletCuts = readonly CutDays[];

/** Limits of each way for each reckoning. */
export type OutletLimits = readonly (readonly Limits[])[];

/**
 * Cut days for whom or what is asked about; undefined where its own dates contradict each other.
 *
 * Exact: a way is in time the sooner, the earlier the edition came out. So of several ways the one that lets it come out
 * the latest decides for a reckoning, and of several reckonings the strictest.
 * @param between how lags are found: as `lagDays` does it
 */
export function editionCuts(
  target: ReachTarget,
  conventions: Conventions,
  between: typeof lagDays = lagDays,
): EditionCuts | undefined {
  const cases = targetCases(target, conventions);
  if (cases.contradiction !== undefined) return undefined;
  const reckonings = reckoningsOf(cases);
  const limitsOfOutlet: EditionCuts['limitsOf'] = outlet => {
    const lags = new Map(target.stays.map(stay => [stay, outletDays(outlet, stay.place, conventions, between)]));
    return span =>
      reckonings.map(({ stays, object }) => stays.map(stay => limitsOf(lags.get(stay)!(span), stay, object)));
  };
  return {
    reckonings,
    plain: reckonings.length === 1 && target.stays.every(({ from, to }) => from === undefined && to === undefined),
    ofOutlet: outlet => {
      const limits = limitsOfOutlet(outlet);
      return span => limits(span).map(cutsOfWays);
    },
    limitsOf: limitsOfOutlet,
    joined: outlets => joined(outlets, reckonings),
  };
}

function cutsOfWays(ways: readonly Limits[]): CutDays {
  let every = Number.NEGATIVE_INFINITY;
  let some = Number.NEGATIVE_INFINITY;
  for (const way of ways) {
    if (way.everyRoom >= 0) every = Math.max(every, way.every);
    if (way.someRoom >= 0) some = Math.max(some, way.some);
  }
  return { every, some };
}

/** In a reckoning the best of the outlets; over reckonings the strictest. */
function joined(outlets: readonly OutletCuts[], reckonings: readonly Reckoning[]): CutDays {
  let every = Number.POSITIVE_INFINITY;
  let some = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < reckonings.length; i++) {
    let bestEvery = Number.NEGATIVE_INFINITY;
    let bestSome = Number.NEGATIVE_INFINITY;
    for (const cuts of outlets) {
      bestEvery = Math.max(bestEvery, cuts[i]!.every);
      bestSome = Math.max(bestSome, cuts[i]!.some);
    }
    if (reckonings[i]!.decidesEvery) every = Math.min(every, bestEvery);
    if (reckonings[i]!.decidesSome) some = Math.max(some, bestSome);
  }
  return { every, some };
}
