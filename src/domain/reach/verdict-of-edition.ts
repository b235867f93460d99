import type { Conventions } from '../conventions/conventions.ts';
import { judgeEdition } from './judge-edition.ts';
import type { ReachEdition, ReachTarget } from './reach-edition-input.ts';
import { contradictory, type VerdictAndMargin } from './verdict.ts';

/** The verdict and room that `reachEdition` gives, without reasons, flags and route: for counting many. */
export function verdictOfEdition(
  edition: ReachEdition,
  target: ReachTarget,
  conventions: Conventions,
): VerdictAndMargin {
  const judged = judgeEdition(edition, target, conventions);
  return 'contradiction' in judged ? contradictory : judged.headline;
}
