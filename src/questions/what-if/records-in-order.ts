import { type RecordKindName, recordKindNames } from '../../domain/model/kinds.ts';
import type { AnyRecord } from '../../domain/model/row.ts';
import { findable } from '../../domain/text/findable.ts';
import type { GraphStore, Listed, ListPosition } from '../../store/graph-store.ts';
import { breathing } from '../breath.ts';
import { rowsOfKind } from '../rows-of-kind.ts';
import { bySortAndId } from './windows-of-editions.ts';

/** Records kept before those that are too far are let go. */
const room = 1000;

/** The first records of a kind from after a position, where no order is kept: all of the kind are read. */
export async function recordsInOrder(
  store: Pick<GraphStore, 'scan'>,
  kind: RecordKindName,
  after: ListPosition | undefined,
  limit: number,
  signal?: AbortSignal,
): Promise<readonly Listed[]> {
  let kept: Listed[] = [];
  for await (const records of rowsOfKind(store, kind, undefined, breathing(signal))) {
    for (const record of records as readonly AnyRecord[]) {
      const listed = { sort: findable(record).sort, id: record.id };
      if (after === undefined || bySortAndId(listed, after) > 0) kept.push(listed);
    }
    if (kept.length > limit + room) kept = kept.sort(bySortAndId).slice(0, limit);
  }
  return kept.sort(bySortAndId).slice(0, limit);
}

/** How many there are of a kind, where they are not counted: all are read. */
export async function recordsCounted(
  store: Pick<GraphStore, 'scan'>,
  kind: RecordKindName,
  signal?: AbortSignal,
): Promise<number> {
  let count = 0;
  for await (const records of rowsOfKind(store, kind, undefined, breathing(signal))) count += records.length;
  return count;
}

export async function allCounted(store: Pick<GraphStore, 'scan'>, signal?: AbortSignal): Promise<number> {
  let count = 0;
  for (const kind of recordKindNames) count += await recordsCounted(store, kind, signal);
  return count;
}
