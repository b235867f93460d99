import { compareText } from '../domain/text/compare.ts';
import type { EditionFilter, GraphStore, WindowKey } from '../store/graph-store.ts';
import type { Breath } from './breath.ts';
import type { Page } from './page.ts';
import type { ReachPosition, VerdictAndMargin } from './questions.ts';
import type { JudgedWindows } from './reach-windows.ts';

export type BucketOrder = 'ROOM' | 'DATE';
type BucketPosition = Exclude<ReachPosition, { order: 'TITLE' }>;

/** Editions that an order does not tell apart but by id. */
interface Bucket {
  readonly keys: readonly [number, number];
  readonly windows: readonly WindowKey[];
  /** Ids of editions that are worked one by one, in order. */
  readonly single: readonly string[];
}

interface BucketMade extends Bucket {
  readonly windows: WindowKey[];
  readonly single: string[];
}

export interface Buckets {
  readonly order: BucketOrder;
  readonly buckets: readonly Bucket[];
}

/** Stands for an open end: further off than any day, and still a number that a cursor can carry. */
const none = Number.MAX_SAFE_INTEGER;

const ranks = ['IN_EVERY_CASE', 'IN_SOME_CASES', 'IN_NO_CASE', 'CONTRADICTORY'] as const;

/** ROOM: by verdict, then by the margin nearest to none; DATE: by first day, then last. Open ends last, an open first day first. */
export async function bucketsInOrder(judged: JudgedWindows, order: BucketOrder, breath: Breath): Promise<Buckets> {
  const buckets = new Map<number, Map<number, BucketMade>>();
  const bucket = ([a, b]: readonly [number, number]): BucketMade => {
    const made = buckets.get(a)?.get(b) ?? { keys: [a, b], windows: [], single: [] };
    if (made.windows.length + made.single.length === 0) buckets.set(a, (buckets.get(a) ?? new Map()).set(b, made));
    return made;
  };
  for (const { window, outcome } of judged.groups) {
    if (breath.isDue()) await breath.take();
    bucket(keysOf(order, window, outcome)).windows.push(window);
  }
  for (const { edition, window, outcome } of judged.single) bucket(keysOf(order, window, outcome)).single.push(edition);
  await breath.take();
  const sorted = [...buckets.values()].flatMap(each => [...each.values()]).sort((a, b) => byKeys(a.keys, b.keys));
  for (const { single } of sorted) single.sort(compareText);
  return { order, buckets: sorted };
}

/** Ids from after a position: bucket by bucket, by id within each. */
export async function pageOfBuckets(
  store: GraphStore,
  { order, buckets }: Buckets,
  filter: EditionFilter,
  first: number,
  after: ReachPosition | undefined,
  signal?: AbortSignal,
): Promise<Page<string, ReachPosition>> {
  const start = after === undefined ? undefined : keysOfPosition(after as BucketPosition);
  const items: { item: string; position: ReachPosition }[] = [];
  for (const bucket of buckets) {
    const compared = start === undefined ? 1 : byKeys(bucket.keys, start);
    if (compared < 0) continue;
    const afterId = compared === 0 ? after?.id : undefined;
    for (const id of await idsOf(store, bucket, filter, afterId, first + 1 - items.length, signal)) {
      items.push({ item: id, position: positionOf(order, bucket.keys, id) });
    }
    if (items.length > first) break;
  }
  return { items: items.slice(0, first), more: items.length > first };
}

async function idsOf(
  store: GraphStore,
  bucket: Bucket,
  filter: EditionFilter,
  after: string | undefined,
  limit: number,
  signal?: AbortSignal,
): Promise<readonly string[]> {
  const { windows } = bucket;
  const stored = windows.length === 0 ? [] : await store.editionsInWindows(windows, filter, after, limit, signal);
  const single = bucket.single.filter(id => after === undefined || compareText(id, after) > 0);
  return [...stored, ...single].sort(compareText).slice(0, limit);
}

function keysOf(order: BucketOrder, window: WindowKey, outcome: VerdictAndMargin): readonly [number, number] {
  if (order === 'DATE') return [window.first ?? -none, window.last ?? none];
  const margin = outcome.verdict === 'IN_EVERY_CASE' ? outcome.margin.every : outcome.margin.some;
  return [ranks.indexOf(outcome.verdict), margin === undefined ? none : Math.abs(margin)];
}

function positionOf(order: BucketOrder, [a, b]: readonly [number, number], id: string): ReachPosition {
  return order === 'ROOM' ? { order, verdict: a, margin: b, id } : { order, first: a, last: b, id };
}

function keysOfPosition(position: BucketPosition): readonly [number, number] {
  return position.order === 'ROOM' ? [position.verdict, position.margin] : [position.first, position.last];
}

function byKeys(a: readonly [number, number], b: readonly [number, number]): number {
  return a[0] - b[0] || a[1] - b[1];
}
