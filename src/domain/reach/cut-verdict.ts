import type { CutDays } from './edition-cuts.ts';
import type { ReachVerdict } from './verdict.ts';

/**
 * The verdict on an edition by the cut days of its outlets.
 * @param first first day for sale, -openDay or less if open
 * @param last last recorded day, openDay if open
 */
export function cutVerdict(
  { every, some }: CutDays,
  first: number,
  last: number,
): Exclude<ReachVerdict, 'CONTRADICTORY'> {
  if (first > some) return 'IN_NO_CASE';
  return last <= every ? 'IN_EVERY_CASE' : 'IN_SOME_CASES';
}
