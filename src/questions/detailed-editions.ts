import type { Conventions } from '../domain/conventions/conventions.ts';
import { commonRanges } from '../domain/dates/day-ranges.ts';
import { eraSpan } from '../domain/reach/era-grid.ts';
import { openDay } from '../domain/reach/open-day.ts';
import { aheadKey, type PublishedWindow, publishedClasses, publishedWindow } from '../domain/reach/published-window.ts';
import type { ReachEdition } from '../domain/reach/reach-edition-input.ts';
import type { CountedDating } from '../domain/reach/recorded-days.ts';
import { routeMapOf } from '../domain/reach/route-map.ts';
import type { WindowGroups } from '../store/graph-store.ts';
import { profileOutlets } from './profile-outlets.ts';
import { recordedAccess } from './reach-inputs.ts';
import type { DetailDating } from './window-detail.ts';
import { windowDetails } from './window-details.ts';
import type { WindowPlaces } from './window-places.ts';

/** Editions of windows with a detail. */
export interface DetailedEditions {
  edition(profile: number, dateClass: number, detail: number): ReachEdition;
  /**
   * The first and last day decide as if all days between them were recorded: nothing but days is known, and the same
   * routes hold for all of them.
   */
  isAsItsEnds(detail: number, dateClass: number, first: number, last: number): boolean;
}

/** @param asked id of whom the question is about: what they had themselves counts wherever they were */
export function detailedEditions(
  groups: WindowGroups,
  asked: string | undefined,
  { places, openGroups }: WindowPlaces,
  conventions: Conventions,
): DetailedEditions {
  const { grid } = routeMapOf(conventions);
  const details = windowDetails(groups);
  const { outlets, ofProfile } = profileOutlets(groups);
  const windows = new Map<number, PublishedWindow>();
  const asEnds = new Map<number, boolean>();
  const nameOf = (detail: number, dateClass: number) => detail * publishedClasses.length + dateClass;

  const windowOf = (detail: number, dateClass: number): PublishedWindow => {
    const name = nameOf(detail, dateClass);
    const known = windows.get(name) ?? published(details[detail]!.datings, dateClass, openGroups, conventions);
    windows.set(name, known);
    return known;
  };
  const hasSameRoutes = ({ recorded, reckoned }: PublishedWindow): boolean => {
    const { first, last } = eraSpan(grid, { lo: recorded[0]!.lo, hi: recorded.at(-1)!.hi });
    return first === last && reckoned.every(part => commonRanges(recorded, [part]).length > 0);
  };
  return {
    edition: (profile, dateClass, detail) => ({
      published: windowOf(detail, dateClass),
      outlets: ofProfile[profile]!.map(number => {
        const { kind, place } = outlets[number]!;
        return { kind, place: places.get(place) };
      }),
      accesses: details[detail]!.accesses.map(access => recordedAccess(access, places, asked)),
    }),
    isAsItsEnds: (detail, dateClass, first, last) => {
      const name = nameOf(detail, dateClass);
      const known = asEnds.get(name);
      if (known !== undefined) return known;
      const window = windowOf(detail, dateClass);
      const kind = publishedClasses[dateClass]!;
      const ahead = kind === 'OTHER' ? 0 : conventions.get(aheadKey(kind));
      const found =
        details[detail]!.accesses.length === 0 &&
        window.recorded.length > 0 &&
        window.reckoned.length > 0 &&
        (window.reckoned[0]!.lo ?? -openDay - ahead) === first - ahead &&
        (window.reckoned.at(-1)!.hi ?? openDay) === last &&
        hasSameRoutes(window);
      asEnds.set(name, found);
      return found;
    },
  };
}

function published(
  datings: readonly DetailDating[],
  dateClass: number,
  openGroups: ReadonlySet<string>,
  conventions: Conventions,
): PublishedWindow {
  const counted = datings.map(
    ({ days, imprint, group }): CountedDating => ({
      bounds: { parts: days, approximate: false, uncertain: false, beyondCalendar: false },
      ...(imprint ? { basis: 'IMPRINT' } : {}),
      ...(group === undefined ? {} : { group: { id: group, open: openGroups.has(group) } }),
    }),
  );
  return publishedWindow(counted, publishedClasses[dateClass] === 'ANNUAL', conventions);
}
