import type { Conventions } from '../domain/conventions/conventions.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';
import { commonRanges } from '../domain/dates/day-ranges.ts';
import { type Era, eraSpan } from '../domain/reach/era-grid.ts';
import { openDay } from '../domain/reach/open-day.ts';
import { aheadKey, type PublishedWindow, publishedClasses, publishedWindow } from '../domain/reach/published-window.ts';
import type { CountedDating } from '../domain/reach/recorded-days.ts';
import { routeMapOf } from '../domain/reach/route-map.ts';
import type { WindowGroups } from '../store/graph-store.ts';
import type { DetailDating } from './window-detail.ts';
import { windowDetails } from './window-details.ts';
import type { WindowPlaces } from './window-places.ts';

/** Details of windows as days of publication. A detail and a class are numbers, as in columns. */
export interface DetailWindows {
  published(detail: number, dateClass: number): PublishedWindow;
  /** Whether the first and the last day of the window decide as if it had no detail. */
  isAsItsEnds(detail: number, dateClass: number, first: number, last: number): boolean;
}

/** Each worked once for as long as conventions and open groups are the same. */
export function detailWindows(
  groups: WindowGroups,
  { openGroups }: WindowPlaces,
  conventions: Conventions,
): DetailWindows {
  const ofGroups = made.get(openGroups) ?? new WeakMap<Conventions, DetailWindows>();
  made.set(openGroups, ofGroups);
  const windows = ofGroups.get(conventions) ?? makeDetailWindows(groups, openGroups, conventions);
  ofGroups.set(conventions, windows);
  return windows;
}

const made = new WeakMap<ReadonlySet<string>, WeakMap<Conventions, DetailWindows>>();

function makeDetailWindows(
  groups: WindowGroups,
  openGroups: ReadonlySet<string>,
  conventions: Conventions,
): DetailWindows {
  const { grid } = routeMapOf(conventions);
  const details = windowDetails(groups);
  const windows = new Map<number, PublishedWindow>();
  const asEnds = new Map<number, boolean>();
  const nameOf = (detail: number, dateClass: number) => detail * publishedClasses.length + dateClass;

  const published = (detail: number, dateClass: number): PublishedWindow => {
    const name = nameOf(detail, dateClass);
    const known = windows.get(name) ?? windowOf(details[detail]!.datings, dateClass, openGroups, conventions);
    windows.set(name, known);
    return known;
  };
  const endsDecide = (detail: number, dateClass: number, first: number, last: number): boolean => {
    const { recorded, reckoned } = published(detail, dateClass);
    const kind = publishedClasses[dateClass]!;
    const ahead = kind === 'OTHER' ? 0 : conventions.get(aheadKey(kind));
    if (details[detail]!.accesses.length > 0 || recorded.length === 0 || reckoned.length === 0) return false;
    const begin = reckoned[0]!.lo ?? -openDay - ahead;
    const end = reckoned.at(-1)!.hi ?? openDay;
    return begin === first - ahead && end === last && hasSameRoutes(recorded, reckoned, grid);
  };
  return {
    published,
    isAsItsEnds: (detail, dateClass, first, last) => {
      const name = nameOf(detail, dateClass);
      const known = asEnds.get(name) ?? endsDecide(detail, dateClass, first, last);
      asEnds.set(name, known);
      return known;
    },
  };
}

/** Whether routes do not change between the first day and the last, so that all days between them decide alike. */
function hasSameRoutes(recorded: readonly DayRange[], reckoned: readonly DayRange[], grid: readonly Era[]): boolean {
  const { first, last } = eraSpan(grid, { lo: recorded[0]!.lo, hi: recorded.at(-1)!.hi });
  return first === last && reckoned.every(part => commonRanges(recorded, [part]).length > 0);
}

function windowOf(
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
