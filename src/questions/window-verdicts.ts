import type { Conventions } from '../domain/conventions/conventions.ts';
import { cutVerdict } from '../domain/reach/cut-verdict.ts';
import { type EditionCuts, editionCuts, type OutletLimits } from '../domain/reach/edition-cuts.ts';
import { editionRoom } from '../domain/reach/edition-room.ts';
import { openDay } from '../domain/reach/open-day.ts';
import { aheadKey, publishedClasses } from '../domain/reach/published-window.ts';
import { routeMapOf } from '../domain/reach/route-map.ts';
import { type ReachVerdict, reachVerdicts } from '../domain/reach/verdict.ts';
import type { WindowColumns, WindowGroups } from '../store/graph-store.ts';
import { profileCuts } from './profile-cuts.ts';
import type { TargetFound } from './reach-target.ts';
import { singleWindows } from './single-windows.ts';
import { windowKeys } from './window-keys.ts';
import type { WindowPlaces } from './window-places.ts';

const inEvery = reachVerdicts.indexOf('IN_EVERY_CASE');
const contradicted = reachVerdicts.indexOf('CONTRADICTORY');
const open = Number.POSITIVE_INFINITY;

/** Verdicts on windows, by their places in columns. A verdict is a place in `reachVerdicts`. */
export interface WindowVerdicts {
  /** Works what windows of columns have in common, to be called before the others. */
  prepare(columns: WindowColumns): void;
  /** Puts the verdicts on the windows from one place to before another into `verdicts`. */
  judge(columns: WindowColumns, from: number, end: number, verdicts: Uint8Array): void;
  /** Days of room by which editions of their verdict are ordered; Infinity where a bound is open. */
  room(columns: WindowColumns, verdicts: Uint8Array): (at: number) => number;
}

/**
 * Verdicts by cut days, which are worked once for each profile and span of eras. Windows that have a detail are judged
 * one by one, equal ones once, where their first and last day do not decide.
 */
export function windowVerdicts(
  groups: WindowGroups,
  found: TargetFound,
  named: WindowPlaces,
  conventions: Conventions,
): WindowVerdicts {
  const cuts = editionCuts(found.target, conventions);
  if (cuts === undefined) return noCase;
  const { grid } = routeMapOf(conventions);
  const singles = singleWindows(groups, found, named, conventions);
  const keys = windowKeys(groups, grid);
  const ahead = Int32Array.from(publishedClasses, kind => (kind === 'OTHER' ? 0 : conventions.get(aheadKey(kind))));
  for (const columns of groups.columns) keys.of(columns);
  const profiles = profileCuts(groups, named, cuts, keys);
  const every = new Float64Array(keys.all.length).fill(Number.NaN);
  const some = new Float64Array(keys.all.length);

  return {
    prepare: columns => {
      for (const key of keys.of(columns).distinct) {
        if (Number.isNaN(every[key])) profiles.put(key, every, some);
      }
    },
    judge: (columns, from, end, verdicts) => {
      const { keys: numbers, apart } = keys.of(columns);
      judgeByCuts(columns, numbers, { every, some, ahead }, verdicts, from, end);
      for (let i = firstFrom(apart, from); i < apart.length && apart[i]! < end; i++) {
        const at = apart[i]!;
        if (columns.detail[at] !== 0 && singles.has(columns, at)) verdicts[at] = singles.verdict(columns, at);
        else if (numbers[at]! < 0) verdicts[at] = contradicted;
      }
    },
    room: (columns, verdicts) => {
      const { keys: numbers } = keys.of(columns);
      const { dateClass, detail, first, last } = columns;
      return at => {
        const verdict = verdicts[at]!;
        if (verdict === contradicted) return open;
        if (detail[at] !== 0 && singles.has(columns, at)) return singles.room(columns, at, reachVerdicts[verdict]!);
        const key = numbers[at]!;
        const start = first[at]! - ahead[dateClass[at]!]!;
        if (!cuts.plain) return roomByWays(cuts, profiles.limits(key), verdict, start, last[at]!);
        if (verdict === inEvery) return every[key]! - last[at]!;
        return start <= -openDay ? open : some[key]! - start;
      };
    },
  };
}

interface KeyCuts {
  /** Cut days by the numbers of keys. */
  readonly every: Float64Array;
  readonly some: Float64Array;
  /** By class: how many days before the first one it may have been for sale. */
  readonly ahead: Int32Array;
}

/** The one loop over all windows: nothing is made in it, and nothing asked of an object. */
function judgeByCuts(
  { dateClass, first, last }: WindowColumns,
  keys: Int32Array,
  { every, some, ahead }: KeyCuts,
  verdicts: Uint8Array,
  from: number,
  end: number,
): void {
  for (let at = from; at < end; at++) {
    const key = keys[at]!;
    verdicts[at] = cutVerdict(every[key]!, some[key]!, first[at]! - ahead[dateClass[at]!]!, last[at]!);
  }
}

/** Place in an ascending list of the first number that is not before `from`. */
function firstFrom(numbers: readonly number[], from: number): number {
  let [low, high] = [0, numbers.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (numbers[middle]! < from) low = middle + 1;
    else high = middle;
  }
  return low;
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

/** The dates of whom or what is asked about contradict each other. */
const noCase: WindowVerdicts = {
  prepare: () => {},
  judge: (_columns, from, end, verdicts) => void verdicts.fill(contradicted, from, end),
  room: () => () => open,
};
