import type { HistoryPart } from '../domain/model/history.ts';
import type { Origin } from '../domain/model/row.ts';
import type { GraphStore } from './graph-store.ts';

/** Versions, and what else, that are read from a store at once. */
const stretch = 4000;

/** What a history is read from: a store to which nobody writes meanwhile, or one as it was at a moment. */
export type HistorySource = Pick<GraphStore, 'changesAfter' | 'originsAfter' | 'awaitedAfter' | 'checkpointsAfter'>;

/** The parts of a history in their order. The next stretch is read while one is used. */
export async function* historyParts(source: HistorySource): AsyncGenerator<HistoryPart> {
  yield* changeParts(source);
  yield* restParts(source);
}

export async function* changeParts(source: Pick<HistorySource, 'changesAfter'>): AsyncGenerator<HistoryPart> {
  const changes = stretches(
    0,
    number => source.changesAfter(number, stretch),
    change => change.changeSet.number,
  );
  for await (const change of changes) yield { part: 'changeSet', ...change };
}

/** What has no history. */
export async function* restParts(source: Omit<HistorySource, 'changesAfter'>): AsyncGenerator<HistoryPart> {
  type After = Origin | undefined;
  const origins = stretches(undefined, (after: After) => source.originsAfter(after, stretch), originOf);
  for await (const origin of origins) yield { part: 'origin', origin };

  const links = stretches(undefined, (after: After) => source.awaitedAfter(after, stretch), awaitedOf);
  for await (const link of links) yield { part: 'awaited', link };

  // One at a time: a report names thousands of problems.
  const intakes = stretches(undefined, (after?: string) => source.checkpointsAfter(after, 1), intakeOf);
  for await (const checkpoint of intakes) yield { part: 'checkpoint', checkpoint };
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
