import { civilFromDays } from '../domain/dates/calendar.ts';
import { compareText } from '../domain/text/compare.ts';
import type { WindowKey } from '../store/graph-store.ts';
import { outletsOfProfile } from './edition-outlets.ts';
import type { ReachCounts, ReachVerdict, VerdictCounts } from './questions.ts';
import type { JudgedWindows } from './reach-windows.ts';

type Tally = { -readonly [N in keyof VerdictCounts]: VerdictCounts[N] };

/** How many editions have each verdict in all. */
export function countVerdicts(judged: JudgedWindows): VerdictCounts {
  const total = none();
  for (const { outcome, count: editions } of judged.groups) add(total, outcome.verdict, editions);
  for (const { outcome } of judged.single) add(total, outcome.verdict, 1);
  return total;
}

/** The same by place of issue, and by decade of the earliest day. */
export function countTallies(judged: JudgedWindows): Required<Pick<ReachCounts, 'byPlace' | 'byDecade'>> {
  const places = new Map<string | undefined, Tally>();
  const decades = new Map<number | undefined, Tally>();
  const count = (window: WindowKey, verdict: ReachVerdict, editions: number): void => {
    for (const place of placesOfWindow(window)) add(tallyOf(places, place), verdict, editions);
    add(tallyOf(decades, decadeOf(window.first)), verdict, editions);
  };
  for (const { window, outcome, count: editions } of judged.groups) count(window, outcome.verdict, editions);
  for (const { window, outcome } of judged.single) count(window, outcome.verdict, 1);
  return {
    byPlace: [...places]
      .map(([place, tally]) => ({ place, ...tally }))
      .sort((a, b) => sum(b) - sum(a) || compareText(a.place ?? '', b.place ?? '')),
    byDecade: [...decades]
      .map(([decade, tally]) => ({ decade, ...tally }))
      .sort((a, b) => (a.decade ?? -Infinity) - (b.decade ?? -Infinity)),
  };
}

/** An edition of two places counts at each; one whose place is not known counts at `undefined`. */
function placesOfWindow(window: WindowKey): readonly (string | undefined)[] {
  const places = [...new Set(outletsOfProfile(window.profile).map(outlet => outlet.place))];
  return places.length === 0 ? [undefined] : places;
}

function decadeOf(day: number | undefined): number | undefined {
  return day === undefined ? undefined : Math.floor(civilFromDays(day).year / 10) * 10;
}

function tallyOf<K>(tallies: Map<K, Tally>, key: K): Tally {
  const tally = tallies.get(key) ?? none();
  tallies.set(key, tally);
  return tally;
}

const names = {
  IN_EVERY_CASE: 'inEveryCase',
  IN_SOME_CASES: 'inSomeCases',
  IN_NO_CASE: 'inNoCase',
  CONTRADICTORY: 'contradictory',
} as const;

function add(tally: Tally, verdict: ReachVerdict, editions: number): void {
  tally[names[verdict]] += editions;
}

function none(): Tally {
  return { inEveryCase: 0, inSomeCases: 0, inNoCase: 0, contradictory: 0 };
}

function sum(tally: VerdictCounts): number {
  return tally.inEveryCase + tally.inSomeCases + tally.inNoCase + tally.contradictory;
}
