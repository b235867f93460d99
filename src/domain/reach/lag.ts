import type { ConventionUse } from '../conventions/convention-use.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import type { AnswerFlag } from './answer-flag.ts';
import type { LagDays } from './verdict.ts';

/** How long a book was on its way, and how that is known. */
export interface Lag extends LagDays {
  readonly route: RouteUse;
  readonly flags: readonly AnswerFlag[];
}

/** The way a lag was taken from. */
export interface RouteUse {
  readonly from?: string | undefined;
  readonly to: string;
  /** Keys of the rows used, or the legs of a composed way, in words. */
  readonly by: string;
  /** One entry a stretch of days within which the same routes are valid, ascending. */
  readonly stretches: readonly RouteStretch[];
  readonly conventions: readonly ConventionUse[];
}

export interface RouteStretch extends LagDays {
  /** Days of the window that it covers; an open end where the window is open. */
  readonly days: DayRange;
  /** Keys of the rows for the whole way; empty: composed. */
  readonly rows: readonly string[];
  /** Legs of the quickest composed way; empty where rows cover the whole way. */
  readonly legs: readonly RouteLeg[];
}

export interface RouteLeg {
  readonly from: string;
  readonly to: string;
  /** How it is reckoned where no row covers it. */
  readonly over: 'LAND' | 'SEA';
  /** Great-circle distance, rounded. */
  readonly km: number;
  /** Keys of the rows that cover the leg; empty: reckoned from its length. */
  readonly rows: readonly string[];
}
