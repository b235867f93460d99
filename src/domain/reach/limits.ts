import type { DayRange } from '../dates/day-bounds.ts';
import { stayInOrder } from './best-candidate.ts';
import type { ReachStay } from './reach-edition-input.ts';
import type { LagDays } from './verdict.ts';

/**
 * What one way, one stay and one range of the object's days ask of an edition. Its room in every case is
 * min(every - last day, everyRoom), in some min(some - first day for sale, someRoom); infinite where nothing bounds it,
 * minus infinity where an open end lets no room in every case be told.
 */
export interface Limits {
  readonly every: number;
  readonly everyRoom: number;
  readonly some: number;
  readonly someRoom: number;
}

const never = Number.NEGATIVE_INFINITY;
const always = Number.POSITIVE_INFINITY;

export function limitsOf({ least, most }: LagDays, stay: ReachStay, object: DayRange): Limits {
  const { from, to } = stayInOrder(stay);
  const seenFrom = Math.min(object.lo ?? never, to === undefined ? always : (to.lo ?? never));
  const seenUntil = Math.min(object.hi ?? always, to?.hi ?? always);
  return {
    every: most === undefined ? never : seenFrom - most,
    everyRoom: from === undefined ? always : (object.lo ?? never) - (from.hi ?? always),
    some: seenUntil - least,
    someRoom: from === undefined ? always : (object.hi ?? always) - (from.lo ?? never),
  };
}
