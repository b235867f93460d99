import type { ConventionUse } from '../conventions/convention-use.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import type { AnswerFlag } from './answer-flag.ts';
import type { Lag } from './lag.ts';
import type { Outlet, ReachStay, RecordedAccess } from './reach-edition-input.ts';
import type { VerdictAndMargin } from './verdict.ts';

/** Whether an edition could have been there in time, and why. */
export interface ReachOutcome extends VerdictAndMargin {
  /** With no end assumed for the decoration; only where the object is dated by a mark. */
  readonly cautious?: VerdictAndMargin | undefined;
  /** The place of publication or sale that decides; absent: not known. */
  readonly outlet?: Outlet | undefined;
  /** The stay that decides. */
  readonly stay?: ReachStay | undefined;
  /** The access that decides or contradicts. */
  readonly access?: RecordedAccess | undefined;
  /** The whole lag of the deciding way, a bookseller's time included; absent if the dates contradict each other. */
  readonly lag?: Lag | undefined;
  /** Days on which it could have arrived: recorded days and lag, without the early start of imprint years. */
  readonly arrival: DayRange;
  readonly flags: readonly AnswerFlag[];
  readonly conventions: readonly ConventionUse[];
  readonly why: readonly Reason[];
}

/** A stable code and a sentence. */
export interface Reason {
  readonly code: ReasonCode;
  readonly message: string;
}

export type ReasonCode =
  | 'ROOM'
  | 'WAY'
  | 'PLACE_UNKNOWN'
  | 'IMPRINT_AHEAD'
  | 'STAY'
  | 'ACCESS'
  | 'MARK_WINDOW'
  | 'MARK_ANSWERS_DIFFER'
  | 'DATINGS_CONTRADICT'
  | 'OBJECT_CONTRADICTS'
  | 'STAY_CONTRADICTS'
  | 'ACCESS_CONTRADICTS';
