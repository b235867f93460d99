import type { Conventions } from '../domain/conventions/conventions.ts';
import { checkId } from '../domain/model/id.ts';
import { compareText } from '../domain/text/compare.ts';
import type { EditionFilter, GraphStore } from '../store/graph-store.ts';
import { breathing } from './breath.ts';
import { countedConventions } from './counted-conventions.ts';
import { type Grounds, inTimeCaution, recordedClaimsCaution } from './grounds.ts';
import type { Page } from './page.ts';
import { asRecorded, groundsUnder, type Premises } from './premises.ts';
import type { Reach, ReachAsked, ReachCounts, ReachPosition, ReachRow } from './questions.ts';
import { pageOfBuckets } from './reach-buckets.ts';
import { countTallies, countVerdicts } from './reach-counts.ts';
import { reachRows } from './reach-rows.ts';
import { reachTarget, type TargetFound } from './reach-target.ts';
import { pageByTitle } from './reach-title-order.ts';
import { type JudgedWindows, judgeAll } from './reach-windows.ts';
import { windowConventions } from './window-conventions.ts';

/**
 * Which editions could have been there in time: a verdict and room in days for each, with what it rests on. Editions are
 * counted by their windows (places of issue and days of publication), those of the page are worked from their claims.
 * @param signal of an asker who may stop waiting: the work ends at its next breath
 */
export async function reach(
  store: GraphStore,
  asked: ReachAsked,
  signal?: AbortSignal,
  premises: Premises = asRecorded,
): Promise<Reach> {
  const breath = breathing(signal);
  const filter = checkedFilter(asked.filter ?? {});
  const groups = await store.windowGroups(filter, signal);
  const conventions = await windowConventions(store, groups);
  const found = await reachTarget(store, asked, conventions, premises.basis);
  const judged = await judgeAll(store, groups, found, conventions, breath);
  await breath.take();
  const ids = await page(store, asked, judged, filter, signal);
  await breath.take();
  const { rows: worked, read } = await reachRows(
    store,
    ids.items.map(({ item }) => item),
    found,
    conventions,
    premises.basis,
  );
  const rows = premises.supposed ? worked.map(asSupposed) : worked;
  const items = ids.items.map(({ position }, i) => ({ item: rows[i]!, position }));
  const objectDays = found.target.objectDay.map(day => day.headline);
  return {
    target: { label: found.label, places: placesOf(found.target.stays.map(stay => stay.place.name)) },
    objectDay: { lo: least(objectDays.map(day => day.lo)), hi: greatest(objectDays.map(day => day.hi)) },
    counts: counts(judged, rows, asked.tallies === true),
    rows: { items, more: ids.more },
    grounds: grounds(found, rows, countedConventions(judged, found, conventions), conventions, premises),
    read,
  };
}

async function page(
  store: GraphStore,
  asked: ReachAsked,
  judged: readonly JudgedWindows[],
  filter: EditionFilter,
  signal: AbortSignal | undefined,
): Promise<Page<string, ReachPosition>> {
  const order = asked.order ?? 'ROOM';
  const after = asked.page.after?.order === order ? asked.page.after : undefined;
  if (order === 'TITLE')
    return pageByTitle(store, filter, asked.page.first, after?.order === 'TITLE' ? after : undefined, signal);
  return pageOfBuckets(store, judged, order, filter, asked.page.first, after, signal);
}

function asSupposed(row: ReachRow): ReachRow {
  return { ...row, flags: [...row.flags, 'SUPPOSED'] };
}

/** Ids of the filter are checked, so that a mistyped one is no empty answer. */
function checkedFilter(filter: EditionFilter): EditionFilter {
  if (filter.work !== undefined) checkId(filter.work);
  if (filter.place !== undefined) checkId(filter.place);
  return filter;
}

function counts(judged: readonly JudgedWindows[], rows: readonly ReachRow[], tallies: boolean): ReachCounts {
  const differOnPage = rows.filter(row => row.verdict !== row.recorded.verdict).length;
  return { ...countVerdicts(judged), ...(tallies ? countTallies(judged) : {}), differOnPage };
}

function grounds(
  found: TargetFound,
  rows: readonly ReachRow[],
  counted: ReadonlySet<string>,
  conventions: Conventions,
  premises: Premises,
): Grounds {
  const claims = new Set([...found.claims, ...rows.flatMap(row => row.restsOn.claims)]);
  const keys = new Set([
    ...found.keys,
    ...counted,
    ...rows.flatMap(row => row.restsOn.conventions.map(use => use.key)),
  ]);
  return {
    ...groundsUnder(premises),
    claims: [...claims].sort(compareText),
    conventions: conventions.uses(keys),
    cautions: [inTimeCaution, recordedClaimsCaution],
  };
}

function placesOf(names: readonly string[]): readonly string[] {
  return [...new Set(names)];
}

/** An open end stays open. */
function least(days: readonly (number | undefined)[]): number | undefined {
  return days.some(day => day === undefined) ? undefined : Math.min(...(days as number[]));
}

function greatest(days: readonly (number | undefined)[]): number | undefined {
  return days.some(day => day === undefined) ? undefined : Math.max(...(days as number[]));
}
