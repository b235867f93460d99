import type { Conventions } from '../domain/conventions/conventions.ts';
import { slackOf } from '../domain/conventions/slack-of.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';
import { commonRanges } from '../domain/dates/day-ranges.ts';
import { type Era, eraSpan } from '../domain/reach/era-grid.ts';
import { openDay } from '../domain/reach/open-day.ts';
import { aheadKey, type PublishedWindow, publishedClasses, publishedWindow } from '../domain/reach/published-window.ts';
import { routeMapOf } from '../domain/reach/route-map.ts';
import { rememberedPairs } from '../domain/remembered.ts';
import type { WindowColumns, WindowGroups } from '../store/graph-store.ts';
import { type DatedColumns, datedColumns } from './dated-columns.ts';
import { detailDatings } from './window-detail.ts';
import { windowDetails } from './window-details.ts';
import type { WindowPlaces } from './window-places.ts';

/** Details of windows as days of publication, by the conventions in force. A detail and a class are numbers, as in columns. */
export interface DetailWindows {
  /** @param dateClass as the store keeps it */
  published(detail: number, dateClass: number): PublishedWindow;
  /** Worked once for the same columns. */
  dated(columns: WindowColumns): DatedColumns;
  /** Whether the first and the last day of a window that has a detail decide as if it had none. */
  endsDecide(columns: DatedColumns, at: number): boolean;
}

/** Each worked once for as long as conventions and open groups are the same. */
export function detailWindows(
  groups: WindowGroups,
  { openGroups }: WindowPlaces,
  conventions: Conventions,
): DetailWindows {
  return windowsOf(openGroups, conventions, groups);
}

const windowsOf = rememberedPairs(makeDetailWindows);

function makeDetailWindows(
  openGroups: ReadonlySet<string>,
  conventions: Conventions,
  groups: WindowGroups,
): DetailWindows {
  const { grid } = routeMapOf(conventions);
  const slack = slackOf(conventions);
  const details = windowDetails(groups);
  const windows = new Map<number, PublishedWindow>();
  const asEnds = new Map<number, boolean>();
  const dated = new WeakMap<WindowColumns, DatedColumns>();
  const nameOf = (detail: number, dateClass: number) => detail * publishedClasses.length + dateClass;

  const published = (detail: number, dateClass: number): PublishedWindow => {
    const name = nameOf(detail, dateClass);
    const annual = publishedClasses[dateClass] === 'ANNUAL';
    const known =
      windows.get(name) ?? publishedWindow(detailDatings(details[detail]!, slack, openGroups), annual, conventions);
    windows.set(name, known);
    return known;
  };
  const endsDecide = (detail: number, dateClass: number): boolean => {
    const window = published(detail, dateClass);
    return details[detail]!.accesses.length === 0 && (window.regular || decidesByEnds(window, grid, conventions));
  };
  return {
    published,
    dated: columns => {
      const known = dated.get(columns) ?? datedColumns(columns, published);
      dated.set(columns, known);
      return known;
    },
    endsDecide: ({ stored: { detail, dateClass } }, at) => {
      const name = nameOf(detail[at]!, dateClass[at]!);
      const known = asEnds.get(name) ?? endsDecide(detail[at]!, dateClass[at]!);
      asEnds.set(name, known);
      return known;
    },
  };
}

/** Whether days between the first and the last decide like these. */
function decidesByEnds(
  { recorded, reckoned, class: kind }: PublishedWindow,
  grid: readonly Era[],
  conventions: Conventions,
): boolean {
  if (recorded.length === 0 || reckoned.length === 0) return false;
  const ahead = kind === 'OTHER' ? 0 : conventions.get(aheadKey(kind));
  const first = recorded[0]!.lo ?? -openDay;
  const begin = reckoned[0]!.lo ?? -openDay - ahead;
  const hasSameEnds = begin === first - ahead && reckoned.at(-1)!.hi === recorded.at(-1)!.hi;
  return hasSameEnds && hasSameRoutes(recorded, reckoned, grid);
}

/** Whether routes do not change between the first day and the last, so that all days between them decide alike. */
function hasSameRoutes(recorded: readonly DayRange[], reckoned: readonly DayRange[], grid: readonly Era[]): boolean {
  const { first, last } = eraSpan(grid, { lo: recorded[0]!.lo, hi: recorded.at(-1)!.hi });
  return first === last && reckoned.every(part => commonRanges(recorded, [part]).length > 0);
}
