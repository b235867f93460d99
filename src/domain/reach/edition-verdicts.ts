import type { Conventions } from '../conventions/conventions.ts';
import { eraSpan } from './era-grid.ts';
import { editionJudge } from './judge-edition.ts';
import type { Lag } from './lag.ts';
import type { lagBetween } from './lag-between.ts';
import { lagDays } from './lag-days.ts';
import type { ReachEdition, ReachTarget } from './reach-edition-input.ts';
import { routeMapOf } from './route-map.ts';
import { contradictory, type VerdictAndMargin } from './verdict.ts';

/** The verdict and room that `reachEdition` gives, without reasons, flags and route: for judging many. */
export function editionVerdicts(
  target: ReachTarget,
  conventions: Conventions,
): (edition: ReachEdition) => VerdictAndMargin {
  const judge = editionJudge(target, conventions, lagAlone);
  return edition => {
    const judged = judge(edition);
    if ('contradiction' in judged) return contradictory;
    // Not the way that decides: kept for many editions it would hold on to much.
    const { verdict, margin } = judged.headline;
    return { verdict, margin };
  };
}

/** A lag without the way that it was taken from. */
function lagAlone(...[from, to, window, conventions]: Parameters<typeof lagBetween>): Lag {
  const { least, most } = lagDays(from, to, conventions)(eraSpan(routeMapOf(conventions).grid, window));
  return { least, most, route: noRoute, flags: [] };
}

const noRoute: Lag['route'] = { to: '', by: '', stretches: [], conventions: [] };
