import type { ReachVerdict } from './questions.ts';

/** What a person reads. Beside it always: "in time" is not "was there". */
export const verdictWords: Readonly<Record<ReachVerdict, string>> = {
  IN_EVERY_CASE: 'in time on every reckoning',
  IN_SOME_CASES: 'in time on some reckonings',
  IN_NO_CASE: 'too late on every reckoning',
  CONTRADICTORY: 'the dates contradict each other',
};
