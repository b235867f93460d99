import type { HistoryPart } from '../domain/model/history.ts';
import type { Origin } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { transferMark } from './transfer-mark.ts';

/** Versions, and what else, that are read from a store at once. */
const stretch = 4000;

/**
 * A store as the parts of its history, in the order in which a graph file has them. What a transfer noted for itself is no
 * part. The next stretch is read while one is used.
 * @throws STORE_BUSY if somebody wrote to the store after its last change set had been read: what has no history may
 *   speak of what came then
 */
export async function* historyOf(store: GraphStore): AsyncGenerator<HistoryPart> {
  let last = 0;
  const changes = stretches(
    0,
    number => store.changesAfter(number, stretch),
    change => change.changeSet.number,
  );
  for await (const change of changes) {
    last = change.changeSet.number;
    yield { part: 'changeSet', ...change };
  }
  const still = async <T>(read: Promise<T>): Promise<T> => {
    const found = await read;
    const now = await store.lastChangeSet();
    if (now !== last) throw movedOn(last, now);
    return found;
  };
  type After = Origin | undefined;
  const origins = stretches(undefined, (after: After) => still(store.originsAfter(after, stretch)), originOf);
  for await (const origin of origins) yield { part: 'origin', origin };

  const links = stretches(undefined, (after: After) => still(store.awaitedAfter(after, stretch)), awaitedOf);
  for await (const link of links) yield { part: 'awaited', link };

  // One at a time: a report names thousands of problems.
  const intakes = stretches(undefined, (after?: string) => still(store.checkpointsAfter(after, 1)), intakeOf);
  for await (const checkpoint of intakes) {
    if (checkpoint.intake !== transferMark) yield { part: 'checkpoint', checkpoint };
  }
}

function movedOn(last: number, now: number): PlatestemmaError {
  return new PlatestemmaError(
    'STORE_BUSY',
    `expected nobody to write to the store while its history is read: it had ${last} change sets, and has ${now}; start again when the other is done`,
    { retriable: true },
  );
}

const originOf = ({ source, key }: Origin): Origin => ({ source, key });
const awaitedOf = ({ origin }: { readonly origin: Origin }): Origin => origin;
const intakeOf = ({ intake }: { readonly intake: string }): string => intake;

/** What a list gives from its beginning to its end, one by one. */
async function* stretches<T, Position>(
  begin: Position,
  read: (after: Position) => Promise<readonly T[]>,
  position: (of: T) => Position,
): AsyncGenerator<T> {
  let next = read(begin);
  for (;;) {
    const found = await next;
    if (found.length === 0) return;
    next = read(position(found.at(-1)!));
    // A failure is thrown where the promise is awaited; whoever stops before does not ask.
    next.catch(() => undefined);
    yield* found;
  }
}
