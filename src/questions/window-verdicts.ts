import type { Conventions } from '../domain/conventions/conventions.ts';
import { cutVerdict } from '../domain/reach/cut-verdict.ts';
import { type CutDays, type EditionCuts, editionCuts, type OutletCuts } from '../domain/reach/edition-cuts.ts';
import { editionRoom } from '../domain/reach/edition-room.ts';
import { editionVerdicts } from '../domain/reach/edition-verdicts.ts';
import { eraIndex, eraStarts } from '../domain/reach/era-grid.ts';
import { openDay } from '../domain/reach/open-day.ts';
import { usableOutlets } from '../domain/reach/outlet-lag.ts';
import { aheadKey, publishedClasses } from '../domain/reach/published-window.ts';
import type { Outlet } from '../domain/reach/reach-edition-input.ts';
import { routeMapOf } from '../domain/reach/route-map.ts';
import type { ReachVerdict, VerdictAndMargin } from '../domain/reach/verdict.ts';
import type { WindowColumns, WindowGroups } from '../store/graph-store.ts';
import { detailedEditions } from './detailed-editions.ts';
import { profileOutlets } from './profile-outlets.ts';
import type { TargetFound } from './reach-target.ts';
import type { WindowPlaces } from './window-places.ts';

/** In the order in which they are shown. */
export const reachVerdicts = [
  'IN_EVERY_CASE',
  'IN_SOME_CASES',
  'IN_NO_CASE',
  'CONTRADICTORY',
] as const satisfies readonly ReachVerdict[];

const contradicted = reachVerdicts.indexOf('CONTRADICTORY');

/** Verdicts on windows of a store, by their places in columns. */
export interface WindowVerdicts {
  /** Place of the verdict in `reachVerdicts`. */
  verdict(columns: WindowColumns, at: number): number;
  /** Days of room by which editions of that verdict are ordered; Infinity where a bound is open. */
  room(columns: WindowColumns, at: number, verdict: number): number;
}

/** Cut days of a profile in a span of eras. */
interface ProfileCuts extends CutDays {
  readonly outlets: readonly OutletCuts[];
}

/**
 * Verdicts by cut days, which are worked once for each profile and span of eras; windows with a detail that cut days do
 * not decide are judged one by one, equal ones together.
 */
export function windowVerdicts(
  groups: WindowGroups,
  found: TargetFound,
  named: WindowPlaces,
  conventions: Conventions,
): WindowVerdicts {
  const cuts = editionCuts(found.target, conventions);
  if (cuts === undefined) return { verdict: () => contradicted, room: () => Number.POSITIVE_INFINITY };
  const starts = eraStarts(routeMapOf(conventions).grid);
  const ahead = publishedClasses.map(kind => (kind === 'OTHER' ? 0 : conventions.get(aheadKey(kind))));
  const cutsOf = profileCuts(groups, named, cuts, starts.length + 1);
  const detailed = detailedEditions(groups, found.asked, named, conventions);
  const verdictOn = editionVerdicts(found.target, conventions);
  const judged = new Map<string, VerdictAndMargin>();

  const judge = (columns: WindowColumns, at: number): VerdictAndMargin => {
    const [profile, dateClass, detail] = [columns.profile[at]!, columns.dateClass[at]!, columns.detail[at]!];
    const name = `${profile} ${dateClass} ${detail}`;
    const known = judged.get(name) ?? verdictOn(detailed.edition(profile, dateClass, detail));
    judged.set(name, known);
    return known;
  };
  const isDecidedByCuts = ({ detail, dateClass, first, last }: WindowColumns, at: number): boolean =>
    detail[at] === 0 || detailed.isAsItsEnds(detail[at]!, dateClass[at]!, first[at]!, last[at]!);
  const cutsAt = ({ profile, first, last }: WindowColumns, at: number): ProfileCuts => {
    const era = eraIndex(starts, first[at]!);
    const until = last[at]!;
    const isWithin = era === starts.length || until < starts[era]!;
    return cutsOf(profile[at]!, era, isWithin ? era : eraIndex(starts, until));
  };

  return {
    verdict: (columns, at) => {
      if (!isDecidedByCuts(columns, at)) return reachVerdicts.indexOf(judge(columns, at).verdict);
      const [first, last] = [columns.first[at]!, columns.last[at]!];
      if (first > last) return contradicted;
      return reachVerdicts.indexOf(cutVerdict(cutsAt(columns, at), first - ahead[columns.dateClass[at]!]!, last));
    },
    room: (columns, at, verdict) => {
      if (verdict === contradicted) return Number.POSITIVE_INFINITY;
      const name = reachVerdicts[verdict] as Exclude<ReachVerdict, 'CONTRADICTORY'>;
      if (!isDecidedByCuts(columns, at)) {
        const { every, some } = judge(columns, at).margin;
        return (name === 'IN_EVERY_CASE' ? every : some) ?? Number.POSITIVE_INFINITY;
      }
      const found = cutsAt(columns, at);
      const first = columns.first[at]! - ahead[columns.dateClass[at]!]!;
      if (!cuts.plain) return editionRoom(cuts, found.outlets, name, first, columns.last[at]!);
      if (name === 'IN_EVERY_CASE') return found.every - columns.last[at]!;
      return first <= -openDay ? Number.POSITIVE_INFINITY : found.some - first;
    },
  };
}

/** Cut days of profiles, remembered for the question. */
function profileCuts(
  groups: WindowGroups,
  { places }: WindowPlaces,
  cuts: EditionCuts,
  eras: number,
): (profile: number, first: number, last: number) => ProfileCuts {
  const { outlets, ofProfile } = profileOutlets(groups);
  const located: readonly Outlet[] = outlets.map(({ kind, place }) => ({ kind, place: places.get(place) }));
  const [unknown] = usableOutlets([]);
  const ofOutlets = new Map<number, OutletCuts>();
  const ofProfiles = new Map<number, ProfileCuts>();
  const outletCuts = (outlet: number, first: number, last: number): OutletCuts => {
    const name = ((outlet + 1) * eras + first) * eras + last;
    const known = ofOutlets.get(name) ?? cuts.ofOutlet(located[outlet] ?? unknown!, { first, last });
    ofOutlets.set(name, known);
    return known;
  };
  let [lastName, lastCuts]: [number, ProfileCuts | undefined] = [-1, undefined];
  return (profile, first, last) => {
    const name = (profile * eras + first) * eras + last;
    // Windows of a profile stand together.
    if (name === lastName) return lastCuts!;
    let found = ofProfiles.get(name);
    if (found === undefined) {
      const numbers = ofProfile[profile]!.length === 0 ? [-1] : ofProfile[profile]!;
      const each = numbers.map(outlet => outletCuts(outlet, first, last));
      found = { ...cuts.joined(each), outlets: each };
      ofProfiles.set(name, found);
    }
    [lastName, lastCuts] = [name, found];
    return found;
  };
}
