import type { DayRange } from '../dates/day-bounds.ts';
import type { AnswerFlag } from './answer-flag.ts';

/** Which shift towards an earlier day the first day for sale takes: none for OTHER. */
export type PublishedClass = 'IMPRINT' | 'ANNUAL' | 'OTHER';

/** When an edition was first for sale, as its counted datings say. */
export interface PublishedWindow {
  /** Days recorded: disjoint, ascending; `[{}]` if nothing bounds them, empty if the datings have no day in common. */
  readonly recorded: readonly DayRange[];
  /** The same with the early start of imprint years: what verdicts use. Empty: the datings contradict each other. */
  readonly reckoned: readonly DayRange[];
  readonly class: PublishedClass;
  readonly flags: readonly AnswerFlag[];
}
