import type { Conventions } from '../domain/conventions/conventions.ts';
import { slackOf } from '../domain/conventions/slack-of.ts';
import { routeMapOf } from '../domain/reach/route-map.ts';
import { reachVerdicts } from '../domain/reach/verdict.ts';
import type { GraphStore, WindowColumns, WindowGroups } from '../store/graph-store.ts';
import type { Breath } from './breath.ts';
import { type ColumnGrounds, columnGrounds } from './column-grounds.ts';
import type { DatedColumns } from './dated-columns.ts';
import { detailWindows } from './detail-windows.ts';
import type { TargetFound } from './reach-target.ts';
import { windowDetails } from './window-details.ts';
import { type WindowKeys, windowKeys } from './window-keys.ts';
import { type WindowPlaces, windowPlaces } from './window-places.ts';
import { firstAfter } from './window-runs.ts';
import { type ColumnVerdicts, windowVerdicts } from './window-verdicts.ts';

/** Windows of editions with what decides on them. */
export interface JudgedWindows {
  readonly groups: WindowGroups;
  /** The columns of the groups, by the conventions in force. */
  readonly dated: readonly DatedColumns[];
  /** What the editions of each of them rest on. */
  readonly grounds: readonly ColumnGrounds[];
  readonly keys: WindowKeys;
  readonly named: WindowPlaces;
  /** Of the columns, in their order; undefined where all that is asked about is contradictory. */
  readonly columns: readonly ColumnVerdicts[] | undefined;
  /** Editions of each verdict, in the order of `reachVerdicts`. */
  readonly counts: Float64Array;
  /** The same for each profile, one after the other. */
  readonly ofProfiles: Float64Array;
}

/** Windows are judged by their names: those that stand beside the others by themselves, and first. */
export async function judgeAll(
  store: GraphStore,
  { beside, ...groups }: WindowGroups,
  found: TargetFound,
  conventions: Conventions,
  breath: Breath,
): Promise<readonly JudgedWindows[]> {
  const judged: JudgedWindows[] = [];
  for (const each of beside === undefined ? [groups] : [beside, groups]) {
    judged.push(await judgeWindows(store, each, found, conventions, breath));
  }
  return judged;
}

async function judgeWindows(
  store: GraphStore,
  groups: WindowGroups,
  found: TargetFound,
  conventions: Conventions,
  breath: Breath,
): Promise<JudgedWindows> {
  const named = await windowPlaces(store, groups);
  const windows = detailWindows(groups, named, conventions);
  const dated = groups.columns.map(windows.dated);
  const keys = windowKeys(groups, routeMapOf(conventions).grid);
  const details = windowDetails(groups);
  const slack = slackOf(conventions);
  const grounds = dated.map(each =>
    columnGrounds(each, keys.of(each), details, slack, at => {
      const { detail, dateClass } = each.stored;
      return windows.published(detail[at]!, dateClass[at]!).reckoned.length > 0;
    }),
  );
  const columns = await windowVerdicts(groups, dated, found, named, conventions, breath);
  const ofProfiles = new Float64Array(groups.profiles.length * reachVerdicts.length);
  if (columns === undefined) for (const each of groups.columns) countContradicted(each, ofProfiles);
  for (const each of columns ?? []) {
    countRuns(each, ofProfiles);
    countAlone(each, ofProfiles);
    if (breath.isDue()) await breath.take();
  }
  const counts = new Float64Array(reachVerdicts.length);
  ofProfiles.forEach((count, i) => {
    counts[i % counts.length]! += count;
  });
  return { groups, dated, grounds, keys, named, columns, counts, ofProfiles };
}

const inEvery = reachVerdicts.indexOf('IN_EVERY_CASE');
const inSome = reachVerdicts.indexOf('IN_SOME_CASES');
const inNone = reachVerdicts.indexOf('IN_NO_CASE');
const contradicted = reachVerdicts.indexOf('CONTRADICTORY');

/** Editions of a run: those after the one cut day are too late, those up to the other in time on every reckoning. */
function countRuns({ runs, every, some, profileOf }: ColumnVerdicts, ofProfiles: Float64Array): void {
  const { keys, starts, byStart, byLast } = runs;
  for (let run = 0; run < keys.length; run++) {
    const key = keys[run]!;
    const from = starts[run]!;
    const end = starts[run + 1]!;
    const late = byStart.before[end]! - byStart.before[firstAfter(byStart.days, some[key]!, from, end)]!;
    const inTime = byLast.before[firstAfter(byLast.days, every[key]!, from, end)]! - byLast.before[from]!;
    const at = profileOf(key) * reachVerdicts.length;
    ofProfiles[at + inEvery]! += inTime;
    ofProfiles[at + inNone]! += late;
    ofProfiles[at + inSome]! += byLast.before[end]! - byLast.before[from]! - inTime - late;
  }
}

function countAlone({ columns, runs, alone }: ColumnVerdicts, ofProfiles: Float64Array): void {
  for (const at of runs.apart) {
    ofProfiles[columns.profile[at]! * reachVerdicts.length + alone(at)]! += columns.count[at]!;
  }
}

function countContradicted({ profile, count }: WindowColumns, ofProfiles: Float64Array): void {
  profile.forEach((number, at) => {
    ofProfiles[number * reachVerdicts.length + contradicted]! += count[at]!;
  });
}
