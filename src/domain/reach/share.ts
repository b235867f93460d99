import type { DayRange } from '../dates/day-bounds.ts';
import type { LagDays } from './verdict.ts';

/** Recorded combinations of days in time, among all; exact. */
export interface Share {
  readonly inTime: bigint;
  readonly all: bigint;
}

/**
 * How many combinations of a day of publication, a lag and a day of the object are in time, all counted alike and taken
 * as independent. Inclusion and exclusion over the upper bounds of the three. Undefined where a bound is open or a range
 * has no day. It rises when the object is dated more vaguely: no probability.
 */
export function share(published: DayRange, lag: LagDays, object: DayRange): Share | undefined {
  const sides = [sideOf(published), sideOf({ lo: lag.least, hi: lag.most }), sideOf(object)];
  if (published.lo === undefined || object.hi === undefined || sides.some(side => side === undefined)) return undefined;
  const lengths = sides.map(side => BigInt(side ?? 0));
  const total = BigInt(object.hi - published.lo - lag.least);
  let inTime = 0n;
  for (let chosen = 0; chosen < 8; chosen++) {
    const taken = lengths.filter((_, i) => (chosen >> i) & 1);
    const left = total - taken.reduce((a, b) => a + b, 0n);
    const sign = taken.length % 2 === 0 ? 1n : -1n;
    if (left >= 0n) inTime += (sign * ((left + 1n) * (left + 2n) * (left + 3n))) / 6n;
  }
  return { inTime, all: lengths.reduce((a, b) => a * b, 1n) };
}

function sideOf({ lo, hi }: DayRange): number | undefined {
  return lo === undefined || hi === undefined || hi < lo ? undefined : hi - lo + 1;
}

/**
 * What the share tends to as the one open bound is moved outward: 1 towards earlier publication or a later object, 0
 * towards an earlier object, later publication or a longer lag. Undefined for no open bound, or for open bounds that
 * draw both ways.
 */
export function shareLimit(published: DayRange, lag: LagDays, object: DayRange): 0 | 1 | undefined {
  const up = published.lo === undefined || object.hi === undefined;
  const down = published.hi === undefined || object.lo === undefined || lag.most === undefined;
  if (up === down) return undefined;
  return up ? 1 : 0;
}
