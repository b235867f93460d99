import type { DayRange } from '../dates/day-bounds.ts';
import type { Candidate } from './candidates.ts';
import type { ReachStay } from './reach-edition-input.ts';
import { isReversed, room, type VerdictAndMargin, verdictOfMargin } from './verdict.ts';

/** A way with its verdict. */
export interface Judged extends VerdictAndMargin {
  readonly candidate: Candidate;
}

/**
 * The best of several ways for one range of the object's days: in time by any is in time, too late is too late by all.
 * Among those of the best verdict the one with the most room decides; for too late, the nearest miss.
 *
 * Exact for days independent of each other: every way is in time the sooner, the earlier the book came out, the quicker
 * it travelled, the earlier the stay began, the later it ended and the later the object was made. So all ways are at
 * their worst at once, and one of them is in time in every case if and only if one is there.
 */
export function bestCandidate(candidates: readonly Candidate[], object: DayRange): Judged | undefined {
  let best: Judged | undefined;
  for (const candidate of candidates) {
    const { verdict, margin } = judge(candidate, object);
    const judged = { verdict, margin, candidate };
    if (best === undefined || isBetter(judged, best)) best = judged;
  }
  return best;
}

/** Whether a stay ended, on every reckoning, before it began. */
export function stayContradicts({ from, to }: ReachStay): boolean {
  if (from !== undefined && isReversed(from)) return true;
  if (to !== undefined && isReversed(to)) return true;
  return from !== undefined && to !== undefined && isReversed({ lo: from.lo, hi: to.hi });
}

function judge({ arrived, stay }: Candidate, object: DayRange): VerdictAndMargin {
  let every = room(object.lo, arrived.hi);
  let some = room(object.hi, arrived.lo);
  const { from, to } = stayInOrder(stay);
  if (to !== undefined) {
    every = leastOfBoth(every, room(to.lo, arrived.hi));
    some = leastKnown(some, room(to.hi, arrived.lo));
  }
  if (from !== undefined) {
    every = leastOfBoth(every, room(object.lo, from.hi));
    some = leastKnown(some, room(object.hi, from.lo));
  }
  return verdictOfMargin({ every, some });
}

/** A stay began no later than it ended, which narrows both. */
export function stayInOrder(stay: ReachStay): Pick<ReachStay, 'from' | 'to'> {
  const { from, to } = stay;
  if (from === undefined || to === undefined) return stay;
  const began = { lo: from.lo, hi: from.hi === undefined || lessThan(to.hi, from.hi) ? to.hi : from.hi };
  const ended = { lo: to.lo === undefined || lessThan(to.lo, from.lo) ? from.lo : to.lo, hi: to.hi };
  return { from: began, to: ended };
}

function lessThan(a: number | undefined, b: number | undefined): boolean {
  return a !== undefined && b !== undefined && a < b;
}

/** Both must be known for the whole to be. */
function leastOfBoth(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? undefined : Math.min(a, b);
}

function leastKnown(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? (a ?? b) : Math.min(a, b);
}

const ranks = { IN_EVERY_CASE: 2, IN_SOME_CASES: 1, IN_NO_CASE: 0, CONTRADICTORY: -1 } as const;

function isBetter(a: Judged, b: Judged): boolean {
  if (a.verdict !== b.verdict) return ranks[a.verdict] > ranks[b.verdict];
  const every = (a.margin.every ?? -Infinity) - (b.margin.every ?? -Infinity);
  const some = (a.margin.some ?? Infinity) - (b.margin.some ?? Infinity);
  if (a.verdict === 'IN_EVERY_CASE') return every > 0;
  return some > 0 || (!(some < 0) && every > 0);
}
