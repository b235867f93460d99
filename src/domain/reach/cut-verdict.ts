import type { reachVerdicts } from './verdict.ts';

/**
 * The verdict on an edition by the cut days of its outlets, as a place in `reachVerdicts`.
 * @param every cut day of what is in time on every reckoning
 * @param some cut day of what is in time on some
 * @param first first day for sale, -openDay or less if open
 * @param last last recorded day, openDay if open
 */
export function cutVerdict(every: number, some: number, first: number, last: number): 0 | 1 | 2 {
  if (first > some) return places.IN_NO_CASE;
  return last <= every ? places.IN_EVERY_CASE : places.IN_SOME_CASES;
}

const places = { IN_EVERY_CASE: 0, IN_SOME_CASES: 1, IN_NO_CASE: 2 } as const satisfies {
  readonly [P in 0 | 1 | 2 as (typeof reachVerdicts)[P]]: P;
};
