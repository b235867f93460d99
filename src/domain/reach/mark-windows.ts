import type { Conventions } from '../conventions/conventions.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import type { ObjectDay } from './reach-edition-input.ts';

/**
 * When a piece dated by a mark alone was decorated: within `decoratedWithin` years of it, and, cautiously, any time
 * after. A mark dates the body, not the decoration. One answer for each alternative that the mark leaves.
 */
export function markWindows(mark: readonly DayRange[], conventions: Conventions): readonly ObjectDay[] {
  const days = Math.ceil(365.25 * conventions.get('decoratedWithin'));
  return mark.map(({ lo, hi }) => ({
    headline: { lo, hi: hi === undefined ? undefined : hi + days },
    cautious: { lo },
  }));
}
