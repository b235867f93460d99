import type { LocatedPlace } from '../conventions/located-place.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import type { AnswerFlag } from './answer-flag.ts';
import type { PublishedWindow } from './published-window.ts';

/** What is recorded of one edition, under the basis of the question. */
export interface ReachEdition {
  readonly published: PublishedWindow;
  /** Places from which it may have come, alternatives; none: its place is not known. */
  readonly outlets: readonly Outlet[];
  readonly accesses?: readonly RecordedAccess[];
}

export interface Outlet {
  /** Publishers and printers are PUBLISHER; a BOOKSELLER has it a while later at his own place. */
  readonly kind: 'PUBLISHER' | 'BOOKSELLER';
  readonly place?: LocatedPlace | undefined;
  /** A false place is no place of publication. */
  readonly fictitious?: boolean | undefined;
  /** Id of the claim. */
  readonly claim?: string | undefined;
}

/**
 * The edition was owned, borrowed, on sale or seen: it had arrived by then. One that is neither at a place nor of those
 * asked about says nothing of the question.
 */
export interface RecordedAccess {
  readonly when: DayRange;
  /** Where. */
  readonly at?: LocatedPlace | undefined;
  /** Those asked about had it themselves, wherever they were. */
  readonly byAsked?: boolean | undefined;
  readonly claim?: string | undefined;
}

/** Whom or what is asked about, and the day of the object. */
export interface ReachTarget {
  /** Alternatives: one of them is true. None: the datings of the object contradict each other. */
  readonly objectDay: readonly ObjectDay[];
  /** Where a copy could be seen, alternatives; a place or workshop is one stay without ends. */
  readonly stays: readonly ReachStay[];
  /** Remarks on the dates of the object, carried into the answer. */
  readonly flags?: readonly AnswerFlag[] | undefined;
}

export interface ObjectDay {
  readonly headline: DayRange;
  /** With no end assumed for the decoration of a piece dated by a mark. */
  readonly cautious?: DayRange | undefined;
}

export interface ReachStay {
  readonly place: LocatedPlace;
  /** Bounds of its beginning: `{}` if not known, absent if there was none (the place itself is asked about). */
  readonly from?: DayRange | undefined;
  /** Bounds of its end: `{}` if not known, absent if there was none. */
  readonly to?: DayRange | undefined;
  readonly claim?: string | undefined;
  /** Id of a group of alternatives: exactly one of its stays is true, or none of them where the group is open. */
  readonly group?: { readonly id: string; readonly open: boolean } | undefined;
}
