import type { Conventions } from '../domain/conventions/conventions.ts';
import { cutVerdict } from '../domain/reach/cut-verdict.ts';
import { editionCuts } from '../domain/reach/edition-cuts.ts';
import { editionRoom } from '../domain/reach/edition-room.ts';
import { openDay } from '../domain/reach/open-day.ts';
import { aheadKey, publishedClasses } from '../domain/reach/published-window.ts';
import { routeMapOf } from '../domain/reach/route-map.ts';
import { reachVerdicts } from '../domain/reach/verdict.ts';
import type { WindowColumns, WindowGroups } from '../store/graph-store.ts';
import { profileCuts } from './profile-cuts.ts';
import type { TargetFound } from './reach-target.ts';
import { singleWindows } from './single-windows.ts';
import { windowKeys } from './window-keys.ts';
import type { WindowPlaces } from './window-places.ts';

const contradicted = reachVerdicts.indexOf('CONTRADICTORY');
const open = Number.POSITIVE_INFINITY;

/** Verdicts on windows, by their places in columns. A verdict is a place in `reachVerdicts`. */
export interface WindowVerdicts {
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
  const numbersOf = new Map(groups.columns.map(columns => [columns, keys.of(columns)]));
  const profiles = profileCuts(groups, named, cuts, grid.length);
  const ahead = publishedClasses.map(kind => (kind === 'OTHER' ? 0 : conventions.get(aheadKey(kind))));
  const every = new Float64Array(keys.all.length).fill(Number.NaN);
  const some = new Float64Array(keys.all.length);
  const work = (key: number): void => {
    const cut = profiles.of(keys.all[key]!);
    every[key] = cut.every;
    some[key] = cut.some;
  };

  return {
    judge: (columns, from, end, verdicts) => {
      const numbers = numbersOf.get(columns)!;
      const { dateClass, detail, first, last } = columns;
      for (let at = from; at < end; at++) {
        const key = numbers[at]!;
        if (detail[at] !== 0 && singles.has(columns, at)) verdicts[at] = singles.verdict(columns, at);
        else if (key < 0) verdicts[at] = contradicted;
        else {
          if (Number.isNaN(every[key])) work(key);
          verdicts[at] = cutVerdict(every[key]!, some[key]!, first[at]! - ahead[dateClass[at]!]!, last[at]!);
        }
      }
    },
    room: (columns, verdicts) => {
      const numbers = numbersOf.get(columns)!;
      const { dateClass, detail, first, last } = columns;
      return at => {
        const verdict = reachVerdicts[verdicts[at]!]!;
        if (verdict === 'CONTRADICTORY') return open;
        if (detail[at] !== 0 && singles.has(columns, at)) return singles.room(columns, at, verdict);
        const key = numbers[at]!;
        const start = first[at]! - ahead[dateClass[at]!]!;
        if (!cuts.plain) return editionRoom(cuts, profiles.outlets(keys.all[key]!), verdict, start, last[at]!);
        if (verdict === 'IN_EVERY_CASE') return every[key]! - last[at]!;
        return start <= -openDay ? open : some[key]! - start;
      };
    },
  };
}

/** The dates of whom or what is asked about contradict each other. */
const noCase: WindowVerdicts = {
  judge: (_columns, from, end, verdicts) => void verdicts.fill(contradicted, from, end),
  room: () => () => open,
};
