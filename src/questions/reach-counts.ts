import { reachVerdicts } from '../domain/reach/verdict.ts';
import { compareText } from '../domain/text/compare.ts';
import { profileOutlets } from './profile-outlets.ts';
import type { ReachCounts, VerdictCounts } from './questions.ts';
import type { JudgedWindows } from './reach-windows.ts';
import { windowDecades } from './window-decades.ts';

/** Editions of each verdict, in the order of `reachVerdicts`. */
type Tally = number[];

const contradicted = reachVerdicts.indexOf('CONTRADICTORY');

/** How many editions have each verdict in all. */
export function countVerdicts(judged: readonly JudgedWindows[]): VerdictCounts {
  const tally = reachVerdicts.map(() => 0);
  for (const { counts } of judged) addTally(tally, counts, 0);
  return named(tally);
}

/** The same by place of issue, and by decade of the earliest day. */
export function countTallies(judged: readonly JudgedWindows[]): Required<Pick<ReachCounts, 'byPlace' | 'byDecade'>> {
  return { byPlace: byPlace(judged), byDecade: byDecade(judged) };
}

/** An edition of two places counts at each; one whose place is not known counts at `undefined`. */
function byPlace(judged: readonly JudgedWindows[]): Required<ReachCounts>['byPlace'] {
  const places = new Map<string | undefined, Tally>();
  for (const { groups, ofProfiles } of judged) {
    const { outlets, ofProfile } = profileOutlets(groups);
    ofProfile.forEach((numbers, profile) => {
      const named = new Set(numbers.map(number => outlets[number]!.place));
      for (const place of named.size === 0 ? [undefined] : named) addTally(tallyOf(places, place), ofProfiles, profile);
    });
  }
  return [...places]
    .map(([place, tally]) => ({ place, ...named(tally) }))
    .filter(counted => sum(counted) > 0)
    .sort((a, b) => sum(b) - sum(a) || compareText(a.place ?? '', b.place ?? ''));
}

function byDecade(judged: readonly JudgedWindows[]): Required<ReachCounts>['byDecade'] {
  const tallies = new Map<number | undefined, Tally>();
  const each = judged.flatMap(({ dated, columns }) => dated.map((windows, i) => [windows, columns?.[i]] as const));
  for (const [windows, known] of each) {
    const verdicts = known?.all() ?? new Uint8Array(windows.count.length).fill(contradicted);
    const { decades, places } = windowDecades(windows);
    const ofDecades = new Float64Array(decades.length * reachVerdicts.length);
    for (let at = 0; at < verdicts.length; at++) {
      ofDecades[places[at]! * reachVerdicts.length + verdicts[at]!]! += windows.count[at]!;
    }
    decades.forEach((decade, place) => {
      addTally(tallyOf(tallies, decade), ofDecades, place);
    });
  }
  return [...tallies]
    .map(([decade, tally]) => ({ decade, ...named(tally) }))
    .filter(counted => sum(counted) > 0)
    .sort((a, b) => (a.decade ?? -Infinity) - (b.decade ?? -Infinity));
}

function addTally(tally: Tally, counts: Float64Array, place: number): void {
  for (let verdict = 0; verdict < tally.length; verdict++) {
    tally[verdict]! += counts[place * reachVerdicts.length + verdict]!;
  }
}

function tallyOf<K>(tallies: Map<K, Tally>, key: K): Tally {
  const tally = tallies.get(key) ?? reachVerdicts.map(() => 0);
  tallies.set(key, tally);
  return tally;
}

function named([inEveryCase = 0, inSomeCases = 0, inNoCase = 0, contradictory = 0]: readonly number[]): VerdictCounts {
  return { inEveryCase, inSomeCases, inNoCase, contradictory };
}

function sum(tally: VerdictCounts): number {
  return tally.inEveryCase + tally.inSomeCases + tally.inNoCase + tally.contradictory;
}
