import { civilFromDays } from '../domain/dates/calendar.ts';
import { openDay } from '../domain/reach/open-day.ts';
import { reachVerdicts } from '../domain/reach/verdict.ts';
import { compareText } from '../domain/text/compare.ts';
import { profileOutlets } from './profile-outlets.ts';
import type { ReachCounts, VerdictCounts } from './questions.ts';
import type { JudgedColumns, JudgedWindows } from './reach-windows.ts';

/** Editions of each verdict, in the order of `reachVerdicts`. */
type Tally = number[];

/** How many editions have each verdict in all. */
export function countVerdicts({ counts }: JudgedWindows): VerdictCounts {
  return named(counts);
}

/** The same by place of issue, and by decade of the earliest day. */
export function countTallies(judged: JudgedWindows): Required<Pick<ReachCounts, 'byPlace' | 'byDecade'>> {
  return { byPlace: byPlace(judged), byDecade: byDecade(judged) };
}

/** An edition of two places counts at each; one whose place is not known counts at `undefined`. */
function byPlace({ groups, columns }: JudgedWindows): Required<ReachCounts>['byPlace'] {
  const ofProfiles = new Float64Array(groups.profiles.length * reachVerdicts.length);
  for (const { columns: windows, verdicts } of columns) {
    for (let at = 0; at < verdicts.length; at++) {
      ofProfiles[windows.profile[at]! * reachVerdicts.length + verdicts[at]!]! += windows.count[at]!;
    }
  }
  const { outlets, ofProfile } = profileOutlets(groups);
  const places = new Map<string | undefined, Tally>();
  ofProfile.forEach((numbers, profile) => {
    const counts = ofProfiles.subarray(profile * reachVerdicts.length, (profile + 1) * reachVerdicts.length);
    if (counts.every(count => count === 0)) return;
    const named = new Set(numbers.map(number => outlets[number]!.place));
    for (const place of named.size === 0 ? [undefined] : named) addAll(tallyOf(places, place), counts);
  });
  return [...places]
    .map(([place, tally]) => ({ place, ...named(tally) }))
    .sort((a, b) => sum(b) - sum(a) || compareText(a.place ?? '', b.place ?? ''));
}

function byDecade({ columns }: JudgedWindows): Required<ReachCounts>['byDecade'] {
  const decades = new Map<number | undefined, Tally>();
  for (const each of columns) addDecades(each, decades);
  return [...decades]
    .filter(([, tally]) => tally.some(count => count > 0))
    .map(([decade, tally]) => ({ decade, ...named(tally) }))
    .sort((a, b) => (a.decade ?? -Infinity) - (b.decade ?? -Infinity));
}

function addDecades({ columns, verdicts }: JudgedColumns, decades: Map<number | undefined, Tally>): void {
  let tally: Tally = [];
  let day = Number.NaN;
  for (let at = 0; at < verdicts.length; at++) {
    // Windows of a profile come by their first days.
    if (columns.first[at] !== day) {
      day = columns.first[at]!;
      tally = tallyOf(decades, day === -openDay ? undefined : Math.floor(civilFromDays(day).year / 10) * 10);
    }
    tally[verdicts[at]!]! += columns.count[at]!;
  }
}

function tallyOf<K>(tallies: Map<K, Tally>, key: K): Tally {
  const tally = tallies.get(key) ?? reachVerdicts.map(() => 0);
  tallies.set(key, tally);
  return tally;
}

function addAll(tally: Tally, counts: Float64Array): void {
  counts.forEach((count, verdict) => {
    tally[verdict]! += count;
  });
}

function named([inEveryCase = 0, inSomeCases = 0, inNoCase = 0, contradictory = 0]: readonly number[]): VerdictCounts {
  return { inEveryCase, inSomeCases, inNoCase, contradictory };
}

function sum(tally: VerdictCounts): number {
  return tally.inEveryCase + tally.inSomeCases + tally.inNoCase + tally.contradictory;
}
