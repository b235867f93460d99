import type { Conventions } from '../domain/conventions/conventions.ts';
import { cutVerdict } from '../domain/reach/cut-verdict.ts';
import { type EditionCuts, editionCuts, type OutletLimits } from '../domain/reach/edition-cuts.ts';
import { editionRoom } from '../domain/reach/edition-room.ts';
import { openDay } from '../domain/reach/open-day.ts';
import { aheadKey, publishedClasses } from '../domain/reach/published-window.ts';
import { routeMapOf } from '../domain/reach/route-map.ts';
import { type ReachVerdict, reachVerdicts } from '../domain/reach/verdict.ts';
import type { WindowColumns, WindowGroups } from '../store/graph-store.ts';
import type { Breath } from './breath.ts';
import type { DatedColumns } from './dated-columns.ts';
import { detailWindows } from './detail-windows.ts';
import { profileCuts } from './profile-cuts.ts';
import type { TargetFound } from './reach-target.ts';
import { singleWindows } from './single-windows.ts';
import { windowKeys } from './window-keys.ts';
import type { WindowPlaces } from './window-places.ts';
import { makeRuns, type WindowRuns } from './window-runs.ts';

/** What decides on the windows of some columns for a question. Verdicts are places in `reachVerdicts`. */
export interface ColumnVerdicts {
  readonly columns: DatedColumns;
  /** Windows that keys decide; their cut days are in `every` and `some` by key. */
  readonly runs: WindowRuns;
  readonly every: Float64Array;
  readonly some: Float64Array;
  profileOf(key: number): number;
  /** The verdict on each window. */
  all(): Uint8Array;
  /** The verdict on a window that is judged by itself. */
  alone(at: number): number;
  /** Days of room of a window by which editions of a verdict are ordered; Infinity where a bound is open. */
  room(at: number, verdict: number): number;
  /** Room is told from the cut days of the key alone. */
  readonly plain: boolean;
}

const inEvery = reachVerdicts.indexOf('IN_EVERY_CASE');
const contradicted = reachVerdicts.indexOf('CONTRADICTORY');
const open = Number.POSITIVE_INFINITY;

/**
 * Verdicts by cut days, which are worked once for each profile and span of eras. Windows that have a detail are judged
 * one by one, equal ones once, where their first and last day do not decide. Undefined where the dates of whom or what
 * is asked about contradict each other.
 * @param dated the columns of the groups, by the conventions
 */
export async function windowVerdicts(
  groups: WindowGroups,
  dated: readonly DatedColumns[],
  found: TargetFound,
  named: WindowPlaces,
  conventions: Conventions,
  breath: Breath,
): Promise<readonly ColumnVerdicts[] | undefined> {
  const cuts = editionCuts(found.target, conventions);
  if (cuts === undefined) return undefined;
  const keys = windowKeys(groups, routeMapOf(conventions).grid);
  const singles = singleWindows(groups, found, named, conventions);
  const ahead = Int32Array.from(publishedClasses, kind => (kind === 'OTHER' ? 0 : conventions.get(aheadKey(kind))));
  // For as long as what a detail says and how far ahead of it a book was for sale are the same.
  const known = runsKnown(detailWindows(groups, named, conventions));
  const prepared: { columns: DatedColumns; keyed: Int32Array; runs: WindowRuns }[] = [];
  for (const columns of dated) {
    const keyed = keys.of(columns);
    const startOf = (at: number) => columns.first[at]! - ahead[columns.dateClass[at]!]!;
    const isApart = (at: number) => keyed.keys[at]! < 0 || singles.has(columns, at);
    const runs = known.get(columns) ?? (await makeRuns(columns, keyed, startOf, isApart, breath));
    known.set(columns, runs);
    prepared.push({ columns, keyed: keyed.keys, runs });
  }
  const profiles = profileCuts(groups, named, cuts, keys);
  const every = new Float64Array(keys.profiles.length).fill(Number.NaN);
  const some = new Float64Array(keys.profiles.length);
  for (const { runs } of prepared) {
    for (const key of runs.keys) if (Number.isNaN(every[key])) profiles.put(key, every, some);
    if (breath.isDue()) await breath.take();
  }
  return prepared.map(({ columns, keyed, runs }) => {
    const alone = (at: number) => (keyed[at]! < 0 ? contradicted : singles.verdict(columns, at));
    return {
      ...{ columns, runs, every, some, alone, plain: cuts.plain },
      profileOf: key => keys.profiles[key]!,
      all: () => {
        const verdicts = verdictsByCuts(columns, keyed, { every, some, ahead });
        for (const at of runs.apart) verdicts[at] = alone(at);
        return verdicts;
      },
      room: (at, verdict) => {
        if (verdict === contradicted) return open;
        if (runs.isApart.has(at)) return singles.room(columns, at, reachVerdicts[verdict]!);
        const key = keyed[at]!;
        const start = columns.first[at]! - ahead[columns.dateClass[at]!]!;
        if (!cuts.plain) return roomByWays(cuts, profiles.limits(key), verdict, start, columns.last[at]!);
        if (verdict === inEvery) return every[key]! - columns.last[at]!;
        return start <= -openDay ? open : some[key]! - start;
      },
    };
  });
}

const runs = new WeakMap<object, WeakMap<WindowColumns, WindowRuns>>();

function runsKnown(of: object): WeakMap<WindowColumns, WindowRuns> {
  const known = runs.get(of) ?? new WeakMap<WindowColumns, WindowRuns>();
  runs.set(of, known);
  return known;
}

interface KeyCuts {
  /** Cut days by the numbers of keys. */
  readonly every: Float64Array;
  readonly some: Float64Array;
  /** By class: how many days before the first one it may have been for sale. */
  readonly ahead: Int32Array;
}

/** A loop over all windows: nothing is made in it, and nothing asked of an object. */
function verdictsByCuts(
  { dateClass, first, last }: WindowColumns,
  keys: Int32Array,
  { every, some, ahead }: KeyCuts,
): Uint8Array {
  const verdicts = new Uint8Array(keys.length);
  for (let at = 0; at < keys.length; at++) {
    const key = keys[at]!;
    verdicts[at] = cutVerdict(every[key]!, some[key]!, first[at]! - ahead[dateClass[at]!]!, last[at]!);
  }
  return verdicts;
}

function roomByWays(
  cuts: EditionCuts,
  limits: readonly OutletLimits[],
  verdict: number,
  first: number,
  last: number,
): number {
  return editionRoom(cuts, limits, reachVerdicts[verdict] as Exclude<ReachVerdict, 'CONTRADICTORY'>, first, last);
}
