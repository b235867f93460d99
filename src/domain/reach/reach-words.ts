import type { ReachVerdict } from './verdict.ts';

/** What the reader reads for each verdict; beside it: "in time" is not "was there". */
export const reachWords: Readonly<Record<ReachVerdict, string>> = {
  IN_EVERY_CASE: 'in time on every reckoning',
  IN_SOME_CASES: 'in time on some reckonings',
  IN_NO_CASE: 'too late on every reckoning',
  CONTRADICTORY: 'the dates contradict each other',
};
