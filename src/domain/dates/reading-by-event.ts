import type { DayBounds, DayRange } from './day-bounds.ts';

/** What a date can be about. */
export type DatedEvent = 'made' | 'published' | 'introduced' | 'acquired' | 'seen' | 'lived' | 'ran';

/** One unknown day, somewhere in the parts. */
export interface WithinReading {
  readonly reading: 'within';
  readonly range: DayRange;
  readonly parts: readonly DayRange[];
}

/** A time that lasted: from a day in `start` (born, began) to a day in `end` (died, ended), which is not earlier. */
export interface ThroughoutReading {
  readonly reading: 'throughout';
  readonly start: DayRange;
  readonly end: DayRange;
}

/**
 * Reads the same days by what happened, not by how the date was written (a convention): a life or a run lasted
 * throughout, anything else happened on one day. So `1760/1770` for a thing made is one unknown day of eleven years.
 */
export function readForEvent(bounds: DayBounds, event: 'lived' | 'ran'): ThroughoutReading;
export function readForEvent(bounds: DayBounds, event: Exclude<DatedEvent, 'lived' | 'ran'>): WithinReading;
export function readForEvent(bounds: DayBounds, event: DatedEvent): WithinReading | ThroughoutReading;
export function readForEvent(bounds: DayBounds, event: DatedEvent): WithinReading | ThroughoutReading {
  if (event === 'lived' || event === 'ran') return { reading: 'throughout', start: bounds.start, end: bounds.end };
  return { reading: 'within', range: { lo: bounds.lo, hi: bounds.hi }, parts: bounds.parts };
}
