import { reachVerdicts } from '../domain/reach/verdict.ts';
import type { EditionFilter, GraphStore, WindowColumns } from '../store/graph-store.ts';
import { compareKeys, NearestWindows, type NearWindow, type OrderKeys } from './nearest-windows.ts';
import { offerByRoom, openRoom } from './offer-by-room.ts';
import type { Page } from './page.ts';
import type { ReachPosition } from './questions.ts';
import { countVerdicts } from './reach-counts.ts';
import type { JudgedWindows } from './reach-windows.ts';
import { windowOfColumns } from './window-of-columns.ts';

export type BucketOrder = 'ROOM' | 'DATE';
type BucketPosition = Exclude<ReachPosition, { order: 'TITLE' }>;

const contradicted = reachVerdicts.indexOf('CONTRADICTORY');

/**
 * Ids from after a position. ROOM: by verdict, then by the margin nearest to none; DATE: by first day, then last. Open
 * ends last, an open first day first; within what an order does not tell apart by id.
 */
export async function pageOfBuckets(
  store: GraphStore,
  judged: readonly JudgedWindows[],
  order: BucketOrder,
  filter: EditionFilter,
  first: number,
  after: ReachPosition | undefined,
  signal?: AbortSignal,
): Promise<Page<string, ReachPosition>> {
  if (first === 0 && after === undefined)
    return { items: [], more: Object.values(countVerdicts(judged)).some(count => count > 0) };
  const start = after === undefined ? undefined : keysOfPosition(after as BucketPosition);
  const nearest = new NearestWindows(start, first + 1);
  for (const each of judged) offer(each, order, nearest);
  const known = new Map(
    judged.flatMap(({ groups, dated }) => dated.map(columns => [columns as WindowColumns, { groups, ...columns }])),
  );
  const windowOf = ({ columns, at }: NearWindow) => {
    const { groups, stored } = known.get(columns)!;
    return windowOfColumns(groups, stored, at);
  };
  const buckets = bucketsOf(nearest.windows());
  const goesOn = start !== undefined && buckets[0] !== undefined && compareKeys(buckets[0].keys, start) === 0;
  const found = await store.editionsInWindows(
    buckets.map(({ windows }) => windows.map(windowOf)),
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

/** Offers all windows in the order of their columns. */
function offer({ dated, columns }: JudgedWindows, order: BucketOrder, nearest: NearestWindows): void {
  if (order === 'ROOM' && columns !== undefined) {
    for (const each of columns) offerByRoom(each, nearest);
    return;
  }
  for (const each of dated) {
    for (let at = 0; at < each.count.length; at++) {
      if (order === 'DATE') nearest.offer(each.first[at]!, each.last[at]!, each, at);
      else nearest.offer(contradicted, openRoom, each, at);
    }
  }
}

function positionOf(order: BucketOrder, [a, b]: OrderKeys, id: string): ReachPosition {
  return order === 'ROOM' ? { order, verdict: a, margin: b, id } : { order, first: a, last: b, id };
}

function keysOfPosition(position: BucketPosition): OrderKeys {
  return position.order === 'ROOM' ? [position.verdict, position.margin] : [position.first, position.last];
}
