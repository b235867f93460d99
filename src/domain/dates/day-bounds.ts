/**
 * Days are integers: days since 1970-01-01, proleptic Gregorian calendar, astronomical years (0 = 1 BC).
 * `undefined` is an open end: there are no sentinels outside typed arrays and adapters.
 */
export type Day = number;

/** Inclusive range of days; an absent end is open. */
export interface DayRange {
  readonly lo?: Day | undefined;
  readonly hi?: Day | undefined;
}

/** What a date expression allows, as days. */
export interface DayBounds extends DayRange {
  readonly kind: 'date' | 'datetime' | 'interval' | 'oneOf' | 'allOf';
  /** Bounds of the beginning and of the end (equal to the hull unless kind is interval or allOf). */
  readonly start: DayRange;
  readonly end: DayRange;
  /**
   * Disjoint ranges of the days allowed, ascending, no two adjacent: 1 to 400. One range if `convex`; one that is the
   * hull, and `convex` false, where there would be more than 400. `[{}]` beyond the calendar.
   */
  readonly parts: readonly DayRange[];
  readonly convex: boolean;
  /** The end was written as unknown (empty) as opposed to open (`..`). */
  readonly loUnknown: boolean;
  readonly hiUnknown: boolean;
  readonly uncertain: boolean;
  readonly approximate: boolean;
  readonly level: 0 | 1 | 2;
  /** The hull before slack was added, for display: the same as `lo` and `hi` if there was none. */
  readonly loRaw?: Day | undefined;
  readonly hiRaw?: Day | undefined;
  /** The year lies beyond ±200,000: there are no day bounds, only years. */
  readonly beyondCalendar: boolean;
  readonly yearLo?: number | undefined;
  readonly yearHi?: number | undefined;
}
