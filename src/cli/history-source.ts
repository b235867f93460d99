import { createReadStream } from 'node:fs';
import { open } from 'node:fs/promises';
import { pipeline } from 'node:stream';
import { createGunzip } from 'node:zlib';
import type { HistoryEnd, HistoryPart, HistorySums } from '../domain/model/history.ts';
import { PlatestemmaError } from '../errors.ts';
import { historyOf } from '../questions/history-of.ts';
import { beforeEnd, sumsOfFile } from '../questions/history-of-file.ts';
import { countOf } from '../questions/history-sums.ts';
import { type OnProgress, sumsOf } from '../questions/transfer.ts';
import { refuseUnfinished } from '../questions/transfer-mark.ts';
import type { CliContext } from './context.ts';
import { Progress } from './progress.ts';

/** A whole history to be copied. */
export interface HistorySource {
  /** The history from its beginning; anew each time. */
  parts(): AsyncIterable<HistoryPart>;
  readonly changeSets: number;
  /** What there is of each sort; read again where it is not known yet. */
  sums(onProgress: OnProgress): Promise<HistorySums>;
  close(): Promise<void>;
}

/** @throws SOURCE_REFUSED for a store that a transfer has not come to the end of, and what opening it throws */
export async function storeSource(context: CliContext, name: string | undefined): Promise<HistorySource> {
  const { store } = await context.openDesk(name);
  try {
    await refuseUnfinished(store);
    const parts = () => historyOf(store);
    return {
      parts,
      changeSets: await store.lastChangeSet(),
      sums: onProgress => sumsOf(parts(), onProgress),
      close: () => store.close(),
    };
  } catch (error) {
    await store.close();
    throw error;
  }
}

/**
 * A graph file with history, compressed or not. It is read to its end first: one that is cut off or wrong is refused before
 * anything is written.
 * @throws SOURCE_REFUSED, INPUT_INVALID, and what lines of a wrong form throw
 */
export async function fileSource(file: string): Promise<HistorySource> {
  const sums = await sumsOfFile(readHistoryFile(file), file);
  return {
    parts: () => beforeEnd(readHistoryFile(file)),
    changeSets: countOf(sums, 'changeSet'),
    sums: async () => sums,
    close: async () => undefined,
  };
}

/** Reads a graph file with history, compressed or not. */
export async function* readHistoryFile(file: string): AsyncGenerator<HistoryPart | HistoryEnd> {
  // What checks the form of lines takes time and memory that stores have no use for.
  const { readHistory } = await import('../intake/graph/read-history.ts');
  try {
    yield* readHistory(await bytesOf(file), file);
  } catch (cause) {
    throw cause instanceof PlatestemmaError ? cause : refused(cause as NodeJS.ErrnoException, file);
  }
}

/** The first two bytes of what gzip writes: RFC 1952, 2.3.1. */
const gzipMark = [0x1f, 0x8b];

async function bytesOf(file: string): Promise<AsyncIterable<Uint8Array>> {
  const handle = await open(file);
  const { buffer } = await handle.read(Buffer.alloc(2), 0, 2, 0).finally(() => handle.close());
  const input = createReadStream(file, { highWaterMark: 1 << 18 });
  if (!gzipMark.every((byte, i) => buffer[i] === byte)) return input;
  // An error comes to whoever reads.
  return pipeline(input, createGunzip(), () => undefined);
}

function refused(cause: NodeJS.ErrnoException, file: string): PlatestemmaError {
  const place = { file };
  if (cause.code?.startsWith('Z_') !== true)
    return new PlatestemmaError(
      'SOURCE_REFUSED',
      `expected a file that can be read, came "${file}": ${cause.message}`,
      {
        cause,
        place,
      },
    );
  return new PlatestemmaError(
    'INPUT_INVALID',
    `${file}: expected a compressed file that is whole, came one that is damaged or cut off (${cause.message})`,
    { cause, place },
  );
}

/** Runs what goes through a history, and says how far it has come. */
export async function watched<T>(
  context: CliContext,
  { changeSets }: HistorySource,
  what: string,
  run: (onProgress: OnProgress) => Promise<T>,
): Promise<T> {
  const progress = new Progress(context.process.stderr, changeSets);
  try {
    return await run((versions, changeSet) => progress.say(what, versions, changeSet));
  } finally {
    progress.end();
  }
}
