import type { DayRange } from '../dates/day-bounds.ts';
import type { ReachStay } from './reach-edition-input.ts';
import type { TargetCases } from './target-cases.ts';

/** One possibility on the side of the target: stays that are true together, and days on which the object was made. */
export interface Reckoning {
  readonly stays: readonly ReachStay[];
  readonly object: DayRange;
  /** What is in time in every case must be so in this one. */
  readonly decidesEvery: boolean;
  /** What is too late must be so in this one. */
  readonly decidesSome: boolean;
}

/** Every case of the stays with every range of days; where not every case was tried, the strictest and the loosest. */
export function reckoningsOf({ cases: { cases, exact }, days }: TargetCases): readonly Reckoning[] {
  return cases.flatMap((stays, i) =>
    days.map(({ headline }) => ({
      stays,
      object: headline,
      decidesEvery: exact || i === 0,
      decidesSome: exact || i > 0,
    })),
  );
}
