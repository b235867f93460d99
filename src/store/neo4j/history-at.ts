import { randomUUID } from 'node:crypto';
import type { HistoryPart, WrittenChange } from '../../domain/model/history.ts';
import type { AnyRow, Stamped } from '../../domain/model/row.ts';
import { changeParts, type HistorySource, restParts } from '../history-parts.ts';
import type { Ask, Connection } from './connection.ts';
import { historySource } from './history-reader.ts';
import { cypher } from './statements.ts';
import { writeCypher } from './write-statements.ts';

/** Parts that are kept as one text. */
const stretch = 4000;
/** Versions that are read while others wait to write: about a tenth of a second. */
const atOnce = 1000;

/**
 * The history at one moment. The server shows a reader what is written while it reads, even half of a row: so all who write
 * wait while a stretch is read. What has no history is read first, and kept as bytes until its turn comes; change sets stay
 * what they are, but for until when their versions hold.
 */
export async function* historyAt(connection: Connection): AsyncGenerator<HistoryPart> {
  const { last, rest } = await alone(connection, async ask => {
    const [[number] = [0]] = await ask<[number]>(cypher.lastChangeSet);
    return { last: number, rest: await kept(restParts(historySource(() => ask))) };
  });
  const changesAfter: HistorySource['changesAfter'] = async (number, limit) => {
    const changes = await alone(connection, ask =>
      historySource(() => ask).changesAfter(number, Math.min(limit, atOnce)),
    );
    return changes.flatMap(change => asOf(change, last));
  };
  yield* changeParts({ changesAfter });
  for (const part of rest) yield* JSON.parse(part.toString()) as readonly HistoryPart[];
}

/** Reads while nobody writes. */
function alone<T>(connection: Connection, read: (ask: Ask) => Promise<T>): Promise<T> {
  return connection.write(async run => {
    await run(writeCypher.lock, { token: randomUUID() });
    return read(run);
  });
}

/** A history of millions of origins would be too much for the heap. */
async function kept(parts: AsyncIterable<HistoryPart>): Promise<readonly Buffer[]> {
  const all: Buffer[] = [];
  let some: HistoryPart[] = [];
  for await (const part of parts) {
    if (some.push(part) < stretch) continue;
    all.push(Buffer.from(JSON.stringify(some)));
    some = [];
  }
  return [...all, Buffer.from(JSON.stringify(some))];
}

function asOf({ changeSet, put, removed }: WrittenChange, last: number): readonly WrittenChange[] {
  return changeSet.number > last ? [] : [{ changeSet, put: put.map(row => heldAt(row, last)), removed }];
}

/** A version that ended later still held. */
function heldAt(row: Stamped<AnyRow>, last: number): Stamped<AnyRow> {
  if (row.until === undefined || row.until <= last) return row;
  const { until: _later, ...held } = row;
  return held as Stamped<AnyRow>;
}
