import type { DayRange } from '../dates/day-bounds.ts';
import { commonRanges, mergeRanges } from '../dates/day-ranges.ts';
import type { LinkedDays } from './dates-network.ts';
import { type RecordedDomain, recordedDomain } from './recorded-domain.ts';

/**
 * The days of a variable as an answer shows them: those left by all claims, within those recorded. Only where these have
 * no day in common does the early start of imprint years show.
 */
export function linkedDays(domain: RecordedDomain, first: number, last: number): LinkedDays {
  const [bound, other] = domain.bounds;
  if (other === undefined && (bound === undefined || (bound.recorded === bound.days && !domain.gaps))) {
    const linked = openRange(first, last);
    return { recorded: openRange(domain.first, domain.last), linked, parts: [linked], contradictory: false };
  }
  const shown = recordedDomain(domain.bounds.map(({ recorded }) => ({ days: recorded, recorded })));
  const within = { first: Math.max(first, shown.first), last: Math.min(last, shown.last) };
  const linked = within.first <= within.last ? openRange(within.first, within.last) : openRange(first, last);
  return {
    recorded: openRange(shown.first, shown.last),
    linked,
    parts: commonRanges(commonDays(domain, within.first <= within.last), [linked]),
    contradictory: false,
  };
}

/** The days of a variable among dates that contradict each other: as recorded. */
export function contradictoryDays(domain: RecordedDomain): LinkedDays {
  const { first, last } = recordedDomain(domain.bounds.map(({ recorded }) => ({ days: recorded, recorded })));
  const recorded = openRange(first, last);
  return { recorded, linked: recorded, parts: commonDays(domain, true), contradictory: true };
}

/** The days that are left in one case or another. */
export function daysInSomeCase(cases: readonly LinkedDays[]): LinkedDays {
  const linked = mergedHull(cases.map(each => each.linked));
  return { ...cases[0]!, linked, parts: mergeRanges(cases.flatMap(({ parts }) => parts)) };
}

function mergedHull(ranges: readonly DayRange[]): DayRange {
  return openRange(
    Math.min(...ranges.map(({ lo = -Infinity }) => lo)),
    Math.max(...ranges.map(({ hi = Infinity }) => hi)),
  );
}

function commonDays({ bounds }: RecordedDomain, asRecorded: boolean): readonly DayRange[] {
  return bounds.reduce<readonly DayRange[]>(
    (days, bound) => commonRanges(days, asRecorded ? bound.recorded : bound.days),
    [{}],
  );
}

function openRange(first: number, last: number): DayRange {
  return { ...(first === -Infinity ? {} : { lo: first }), ...(last === Infinity ? {} : { hi: last }) };
}
