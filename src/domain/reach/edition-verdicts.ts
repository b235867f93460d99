import type { Conventions } from '../conventions/conventions.ts';
import { editionJudge } from './judge-edition.ts';
import { lagOverEras } from './lag-between.ts';
import type { ReachEdition, ReachTarget } from './reach-edition-input.ts';
import { contradictory, type VerdictAndMargin } from './verdict.ts';

/** The verdict and room that `reachEdition` gives, without reasons, flags and route: for judging many. */
export function editionVerdicts(
  target: ReachTarget,
  conventions: Conventions,
): (edition: ReachEdition) => VerdictAndMargin {
  const judge = editionJudge(target, conventions, lagOverEras);
  return edition => {
    const judged = judge(edition);
    if ('contradiction' in judged) return contradictory;
    // Not the way that decides: kept for many editions it would hold on to much.
    const { verdict, margin } = judged.headline;
    return { verdict, margin };
  };
}
