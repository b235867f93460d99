import type { EditionFilter, GraphStore } from '../store/graph-store.ts';
import { compareKeys, type NearWindow, nearestWindows, type OrderKeys, type WindowOrder } from './nearest-windows.ts';
import type { Page } from './page.ts';
import type { ReachPosition } from './questions.ts';
import type { JudgedWindows } from './reach-windows.ts';
import { windowOfColumns } from './window-of-columns.ts';

export type BucketOrder = 'ROOM' | 'DATE';
type BucketPosition = Exclude<ReachPosition, { order: 'TITLE' }>;

/** Stands for room that an open end leaves open: more than any, and still a number that a cursor can carry. */
const none = Number.MAX_SAFE_INTEGER;

/**
 * Ids from after a position. ROOM: by verdict, then by the margin nearest to none; DATE: by first day, then last. Open
 * ends last, an open first day first; within what an order does not tell apart by id.
 */
export async function pageOfBuckets(
  store: GraphStore,
  judged: JudgedWindows,
  order: BucketOrder,
  filter: EditionFilter,
  first: number,
  after: ReachPosition | undefined,
  signal?: AbortSignal,
): Promise<Page<string, ReachPosition>> {
  if (first === 0 && after === undefined) return { items: [], more: judged.counts.some(count => count > 0) };
  const start = after === undefined ? undefined : keysOfPosition(after as BucketPosition);
  const buckets = bucketsOf(nearestWindows(judged, orderOf(judged, order), start, first + 1));
  const goesOn = start !== undefined && buckets[0] !== undefined && compareKeys(buckets[0].keys, start) === 0;
  const found = await store.editionsInWindows(
    buckets.map(({ windows }) =>
      windows.map(({ columns: { columns }, at }) => windowOfColumns(judged.groups, columns, at)),
    ),
    filter,
    goesOn ? after?.id : undefined,
    first + 1,
    signal,
  );
  const items = found.flatMap((ids, i) =>
    ids.map(id => ({ item: id, position: positionOf(order, buckets[i]!.keys, id) })),
  );
  return { items: items.slice(0, first), more: items.length > first };
}

/** Editions that an order does not tell apart but by id. */
interface Bucket {
  readonly keys: OrderKeys;
  readonly windows: NearWindow[];
}

function bucketsOf(windows: readonly NearWindow[]): readonly Bucket[] {
  const buckets: Bucket[] = [];
  for (const window of windows) {
    const last = buckets.at(-1);
    if (last !== undefined && compareKeys(last.keys, window.keys) === 0) last.windows.push(window);
    else buckets.push({ keys: window.keys, windows: [window] });
  }
  return buckets;
}

function orderOf({ verdicts: { room } }: JudgedWindows, order: BucketOrder): WindowOrder {
  if (order === 'DATE') {
    return {
      first: ({ columns }) => columns.first,
      second:
        ({ columns: { last } }) =>
        at =>
          last[at]!,
    };
  }
  return {
    first: ({ verdicts }) => verdicts,
    second: ({ columns, verdicts }) => {
      const roomAt = room(columns, verdicts);
      return at => Math.min(Math.abs(roomAt(at)), none);
    },
  };
}

function positionOf(order: BucketOrder, [a, b]: OrderKeys, id: string): ReachPosition {
  return order === 'ROOM' ? { order, verdict: a, margin: b, id } : { order, first: a, last: b, id };
}

function keysOfPosition(position: BucketPosition): OrderKeys {
  return position.order === 'ROOM' ? [position.verdict, position.margin] : [position.first, position.last];
}
