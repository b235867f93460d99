import { PlatestemmaError } from '../errors.ts';
import type { GraphStore, NamedCheckpoint } from '../store/graph-store.ts';

/** Name of the checkpoint by which a store knows that a transfer fills it, and how far it came. */
export const transferMark = 'transfer';

interface MarkReport {
  /** The source was written to its end. */
  readonly complete: boolean;
}

/** The checkpoint after a change set; written in one change with it. */
export function markAfter(changeSet: number, complete = false): NamedCheckpoint {
  return { intake: transferMark, records: changeSet, report: { complete } satisfies MarkReport };
}

/**
 * Number of the change set after which a transfer into a store goes on; 0 for an empty one.
 * @throws TARGET_NOT_EMPTY for a store that something else than a transfer has written to
 */
export async function beginningOf(store: GraphStore): Promise<number> {
  const [last, mark, [first]] = await Promise.all([
    store.lastChangeSet(),
    store.checkpoint(transferMark),
    store.checkpointsAfter(undefined, 1),
  ]);
  if (mark === undefined && last === 0 && first === undefined) return 0;
  if (mark?.records === last) return last;
  const found =
    mark === undefined
      ? `it has ${last} change sets that no transfer wrote`
      : `it has ${last} change sets, of which a transfer wrote ${mark.records}`;
  throw new PlatestemmaError(
    'TARGET_NOT_EMPTY',
    `expected a store that is empty, or that only a transfer has written to: ${found}`,
  );
}

/** @throws SOURCE_REFUSED for a store that a transfer fills and has not come to the end of */
export async function refuseUnfinished(store: GraphStore): Promise<void> {
  const mark = await store.checkpoint(transferMark);
  if (mark === undefined || (mark.report as MarkReport).complete) return;
  throw new PlatestemmaError(
    'SOURCE_REFUSED',
    `expected a store that is whole, came one that a transfer has filled up to change set ${mark.records}: start that transfer again first`,
  );
}
