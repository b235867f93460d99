import type { Conventions } from '../conventions/conventions.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import { hullOf } from '../dates/day-ranges.ts';
import type { Lag } from './lag.ts';
import type { lagBetween } from './lag-between.ts';
import { outletLag, usableOutlets } from './outlet-lag.ts';
import type { PublishedWindow } from './published-window.ts';
import type { Outlet, ReachEdition, ReachStay, RecordedAccess } from './reach-edition-input.ts';
import { sameTown } from './same-town.ts';
import { isReversed, laterBy } from './verdict.ts';

/** One way in which an edition may have been seen: from an outlet, at a stay. */
export interface Candidate {
  readonly outlet: Outlet;
  readonly stay: ReachStay;
  readonly lag: Lag;
  /** Days on which it may have arrived, as verdicts reckon them. */
  readonly arrived: DayRange;
  /** Recorded days of publication that it rests on. */
  readonly recorded: DayRange;
  readonly access?: RecordedAccess | undefined;
}

type Way = Omit<Candidate, 'access'>;

/** What follows from one range of the days of publication. */
export interface PartCandidates {
  readonly candidates: readonly Candidate[];
  /** By this way an access was before anything can have arrived: no case at all. */
  readonly contradiction?: Candidate | undefined;
}

/**
 * All ways for each range of the reckoned days, in their order.
 * @param between how the lag between places is found: as `lagBetween` does it
 */
export function candidatesOf(
  edition: ReachEdition,
  stays: readonly ReachStay[],
  conventions: Conventions,
  between: typeof lagBetween,
): readonly PartCandidates[] {
  const { within } = conventions.get('route.sameTown');
  const outlets = usableOutlets(edition.outlets);
  return edition.published.reckoned.map(part => {
    const recorded = recordedWithin(edition.published, part);
    const ways: Way[] = [];
    for (const stay of stays) {
      for (const outlet of outlets) {
        const lag = outletLag(outlet, stay.place, recorded, conventions, between);
        ways.push({ outlet, stay, lag, recorded, arrived: arrival(part, lag) });
      }
    }
    if (edition.accesses === undefined || edition.accesses.length === 0) return { candidates: ways };
    const known = edition.accesses.map(access => knownBy(access, ways, within));
    return {
      candidates: [...ways, ...known.flat()],
      contradiction: known.flat().find(({ arrived }) => isReversed(arrived)),
    };
  });
}

/** Days on which it may have arrived from the recorded days alone. */
export function shownArrival({ recorded, lag, access }: Candidate): DayRange {
  const { lo, hi } = arrival(recorded, lag);
  return { lo, hi: access?.when.hi ?? hi };
}

/** The routes of the recorded days count, not those of the days before an imprint year. */
function recordedWithin({ recorded, reckoned }: PublishedWindow, part: DayRange): DayRange {
  if (recorded.length === 1 && reckoned.length === 1) return recorded[0]!;
  const inside = recorded.filter(
    ({ lo, hi }) =>
      (hi === undefined || part.lo === undefined || hi >= part.lo) &&
      (lo === undefined || part.hi === undefined || lo <= part.hi),
  );
  return inside.length === 0 ? part : hullOf(inside);
}

function arrival({ lo, hi }: DayRange, { least, most }: Lag): DayRange {
  return { lo: laterBy(lo, least), hi: laterBy(hi, most) };
}

/**
 * Arrived by the day of the access at the latest: at each stay where it was, from the outlet that is quickest there;
 * where those asked about had it themselves, wherever they were.
 */
function knownBy(access: RecordedAccess, ways: readonly Way[], within: number): readonly Candidate[] {
  if (access.byAsked === true) {
    const way = quickest(ways);
    return way === undefined ? [] : [known(access, { ...way, stay: { place: way.stay.place } })];
  }
  const { at } = access;
  if (at === undefined) return [];
  const there = ways.filter(({ stay }) => sameTown(at, stay.place, within));
  return [...Map.groupBy(there, ({ stay }) => stay).values()].flatMap(each => {
    const way = quickest(each);
    return way === undefined ? [] : [known(access, way)];
  });
}

function known(access: RecordedAccess, way: Way): Candidate {
  const { lo, hi } = way.arrived;
  return { ...way, access, arrived: { lo, hi: access.when.hi ?? hi } };
}

function quickest(ways: readonly Way[]): Way | undefined {
  let found = ways[0];
  for (const way of ways) if (found !== undefined && way.lag.least < found.lag.least) found = way;
  return found;
}
