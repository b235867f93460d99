import { Worker } from 'node:worker_threads';
import { type ErrorCode, PlatestemmaError, type SourcePlace } from '../../errors.ts';
import type { Intention } from '../intention.ts';
import type { SourceReading } from '../source-reading.ts';
import type { ThreadSays } from './reading-thread.ts';

/** Batches that may wait here before the thread is given more to read. */
const mostWaiting = 12;

/** Megabytes the thread may hold: records are read one by one, and a thread without bounds grows before it tidies. */
const resourceLimits = { maxYoungGenerationSizeMb: 48, maxOldGenerationSizeMb: 256 };

/**
 * Reads a source in a thread of its own, so that reading and writing share the machine. Yields what `intentionsOf`
 * yields, in the same order, and holds the input back while its reader is behind.
 * @throws what the reading throws, and what the input throws
 */
export async function* readInThread(
  input: AsyncIterable<Uint8Array>,
  reading: SourceReading,
): AsyncGenerator<Intention> {
  const url = new URL(import.meta.url.endsWith('.ts') ? './reading-thread.ts' : './reading-thread.js', import.meta.url);
  const talk = new Talk(new Worker(url, { workerData: reading, resourceLimits }), input[Symbol.asyncIterator]());
  try {
    for (let text = await talk.next(); text !== undefined; text = await talk.next()) {
      yield* JSON.parse(text) as Intention[];
    }
  } finally {
    await talk.close();
  }
}

/** What is said between the reader and the thread. */
class Talk {
  readonly #worker: Worker;
  readonly #input: AsyncIterator<Uint8Array>;
  readonly #waiting: string[] = [];
  #wanted = 0;
  #feeding = false;
  #ended = false;
  #failure: { readonly error: unknown } | undefined;
  #wake: (() => void) | undefined;

  constructor(worker: Worker, input: AsyncIterator<Uint8Array>) {
    this.#worker = worker;
    this.#input = input;
    worker.on('message', (said: ThreadSays) => this.#hear(said));
    worker.on('error', error => this.#fail(error));
    worker.on('exit', () => {
      if (!this.#ended)
        this.#fail(new PlatestemmaError('BROKEN_PROMISE', 'the reading thread ended before its source'));
    });
  }

  /** The next batch as JSON; undefined at the end. */
  async next(): Promise<string | undefined> {
    for (;;) {
      const text = this.#waiting.shift();
      if (text !== undefined) {
        this.#feed();
        return text;
      }
      if (this.#failure !== undefined) throw this.#failure.error;
      if (this.#ended) return undefined;
      await new Promise<void>(resolve => {
        this.#wake = resolve;
      });
    }
  }

  async close(): Promise<void> {
    this.#ended = true;
    await Promise.all([this.#worker.terminate(), this.#input.return?.()]);
  }

  #hear(said: ThreadSays): void {
    if (said.says === 'more') {
      this.#wanted++;
      this.#feed();
    } else if (said.says === 'read') this.#waiting.push(said.intentions);
    else if (said.says === 'end') this.#ended = true;
    else this.#fail(failure(said));
    this.#wake?.();
  }

  #feed(): void {
    if (this.#feeding || this.#wanted === 0 || this.#waiting.length > mostWaiting) return;
    this.#feeding = true;
    this.#input
      .next()
      .then(({ done, value }) => {
        this.#feeding = false;
        this.#wanted = done === true ? 0 : this.#wanted - 1;
        this.#worker.postMessage(done === true ? null : value);
        this.#feed();
      })
      .catch((error: unknown) => this.#fail(error));
  }

  #fail(error: unknown): void {
    this.#failure ??= { error };
    this.#wake?.();
  }
}

function failure({ code, message, place }: Extract<ThreadSays, { says: 'failed' }>): PlatestemmaError {
  return new PlatestemmaError(code as ErrorCode, message, place === undefined ? {} : { place: place as SourcePlace });
}
