import { parentPort, workerData } from 'node:worker_threads';
import { invariant, PlatestemmaError } from '../../errors.ts';
import type { Intention } from '../intention.ts';
import { intentionsOf, type SourceReading } from '../source-reading.ts';

/** What the reading thread says: that it has room for more of the input, what it has read, and how it ended. */
export type ThreadSays =
  | { readonly says: 'more' }
  /** Intentions as JSON: a text crosses to another thread three times as fast as the objects. */
  | { readonly says: 'read'; readonly intentions: string }
  | { readonly says: 'end' }
  | { readonly says: 'failed'; readonly code: string; readonly message: string; readonly place: unknown };

/** Chunks of the input asked for before they are needed. */
const ahead = 6;
/** Intentions that are sent together. */
const together = 25;

const port = parentPort;
invariant(port !== null, 'a reading thread has a parent');

const arrived: (Uint8Array | null)[] = [];
let wake: (() => void) | undefined;
port.on('message', (chunk: Uint8Array | null) => {
  arrived.push(chunk);
  wake?.();
});

await read().catch((error: unknown) => {
  const { code, message, place } =
    error instanceof PlatestemmaError
      ? error
      : { code: 'BROKEN_PROMISE', message: String((error as Error).stack ?? error), place: undefined };
  say({ says: 'failed', code, message, place });
});
port.close();

async function read(): Promise<void> {
  for (let i = 0; i < ahead; i++) say({ says: 'more' });
  let batch: Intention[] = [];
  for await (const intention of intentionsOf(input(), workerData as SourceReading)) {
    batch.push(intention);
    if (batch.length < together) continue;
    say({ says: 'read', intentions: JSON.stringify(batch) });
    batch = [];
  }
  say({ says: 'read', intentions: JSON.stringify(batch) });
  say({ says: 'end' });
}

async function* input(): AsyncGenerator<Uint8Array> {
  for (;;) {
    while (arrived.length === 0) {
      await new Promise<void>(resolve => {
        wake = resolve;
      });
    }
    const chunk = arrived.shift();
    if (chunk === null || chunk === undefined) return;
    say({ says: 'more' });
    yield chunk;
  }
}

function say(what: ThreadSays): void {
  port!.postMessage(what);
}
