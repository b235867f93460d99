import type { HistoryPart } from '../domain/model/history.ts';
import type { Origin } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { transferMark } from './transfer-mark.ts';

/** Versions, and what else, that are read from a store at once. */
const stretch = 4000;

/**
 * A store as the parts of its history, in the order in which a graph file has them; change sets as many as there are by the
 * time they have been read. What a transfer noted for itself is no part. The next stretch is read while one is used.
 */
export async function* historyOf(store: GraphStore): AsyncGenerator<HistoryPart> {
  const changes = stretches(
    0,
    number => store.changesAfter(number, stretch),
    change => change.changeSet.number,
  );
  for await (const change of changes) yield { part: 'changeSet', ...change };

  const origins = stretches(undefined, (after: Origin | undefined) => store.originsAfter(after, stretch), originOf);
  for await (const origin of origins) yield { part: 'origin', origin };

  const links = stretches(undefined, (after: Origin | undefined) => store.awaitedAfter(after, stretch), awaitedOf);
  for await (const link of links) yield { part: 'awaited', link };

  // One at a time: a report names thousands of problems.
  const intakes = stretches(undefined, (after: string | undefined) => store.checkpointsAfter(after, 1), intakeOf);
  for await (const checkpoint of intakes) {
    if (checkpoint.intake !== transferMark) yield { part: 'checkpoint', checkpoint };
  }
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
