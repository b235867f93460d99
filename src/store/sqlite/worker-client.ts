import { Worker } from 'node:worker_threads';
import { type ErrorCode, PlatestemmaError } from '../../errors.ts';
import { closedError, timeout } from './sqlite-error.ts';
import type { Answer, Call, WorkerData } from './worker.ts';

/** How long after its limit a call may still answer, in milliseconds, before its asker is told that it has ended. */
const grace = 5;

/** Megabytes for what the writer forgets at once: a batch is much, and a thread without bounds grows before it tidies. */
const writerLimits = { maxYoungGenerationSizeMb: 24 };

interface Waiting {
  readonly name: string;
  readonly args: readonly unknown[];
  readonly number: number;
  /** Milliseconds; undefined: none. */
  readonly limit: number | undefined;
  /** When it must have ended, as `performance.now()`; Infinity: no limit, or the thread has not started yet. */
  end: number;
  readonly resolve: (value: unknown) => void;
  readonly reject: (error: unknown) => void;
  timer: NodeJS.Timeout | undefined;
  /** Takes it off the signal of its asker. */
  forget(): void;
}

/** What answers the calls of a store: a thread. */
export interface StoreCalls {
  readonly isClosed: boolean;
  call<T>(name: string, args: readonly unknown[], limit?: number, signal?: AbortSignal): Promise<T>;
  close(): Promise<void>;
}

/**
 * The near side of a store thread: starts it when it is first needed, sends one call at a time in the order in which
 * they were made, and replaces a thread that does not end a call in time.
 */
export class WorkerClient implements StoreCalls {
  readonly #file: string;
  readonly #role: WorkerData['role'];
  readonly #patience: number;
  readonly #stop = new Int32Array(new SharedArrayBuffer(8));
  readonly #queue: Waiting[] = [];
  #running: Waiting | undefined;
  #lastNumber = 0;
  #worker: Worker | undefined;
  #isReady = false;
  #closing: Promise<void> | undefined;
  #whenIdle: (() => void) | undefined;

  /** @param patience how long after its limit a thread may be busy with a call, in milliseconds, before it is replaced */
  constructor(file: string, role: WorkerData['role'], patience = 1000) {
    this.#file = file;
    this.#role = role;
    this.#patience = patience;
  }

  get isClosed(): boolean {
    return this.#closing !== undefined;
  }

  /** Starts the thread before anything is asked of it. */
  warm(): void {
    this.#worker ??= this.#start();
  }

  /**
   * @param limit milliseconds, waiting in the queue among them but not the start of the thread; absent: no limit
   * @param signal of an asker who may stop waiting: the call is put down then, and rejects with the reason of the signal
   * @throws STORE_TIMEOUT within 20 ms of the limit, and what the call throws
   */
  call<T>(name: string, args: readonly unknown[], limit?: number, signal?: AbortSignal): Promise<T> {
    if (this.isClosed) return Promise.reject(closedError());
    if (signal?.aborted === true) return Promise.reject(signal.reason);
    return new Promise<T>((resolve, reject) => {
      const abort = () => this.#putDown(waiting, signal?.reason);
      const waiting: Waiting = {
        name,
        args,
        number: ++this.#lastNumber,
        limit,
        end: Infinity,
        resolve: resolve as Waiting['resolve'],
        reject,
        timer: undefined,
        forget: () => signal?.removeEventListener('abort', abort),
      };
      signal?.addEventListener('abort', abort, { once: true });
      if (this.#isReady) this.#startClock(waiting);
      this.#queue.push(waiting);
      this.#next();
    });
  }

  /** A writer makes what it was asked for before; a reader is stopped. */
  close(): Promise<void> {
    this.#closing ??= this.#end();
    return this.#closing;
  }

  #startClock(waiting: Waiting): void {
    if (waiting.limit === undefined || waiting.end !== Infinity) return;
    waiting.end = performance.now() + waiting.limit;
    waiting.timer = setTimeout(() => this.#overdue(waiting), waiting.limit + grace);
  }

  #next(): void {
    if (this.#running !== undefined) return;
    if (this.#queue.length > 0) {
      this.#worker ??= this.#start();
      this.#worker.ref();
      if (!this.#isReady) return;
    }
    const next = this.#queue.shift();
    if (next === undefined) {
      // An idle thread does not keep the process alive.
      this.#worker?.unref();
      this.#whenIdle?.();
      return;
    }
    this.#running = next;
    const limit = next.end === Infinity ? undefined : Math.max(0, next.end - performance.now());
    this.#worker!.postMessage({ name: next.name, args: next.args, number: next.number, limit } satisfies Call);
  }

  #take(answer: Answer): void {
    const asked = this.#running;
    if (asked === undefined) return;
    this.#running = undefined;
    settle(asked);
    if ('error' in answer) {
      const { code, message, retriable } = answer.error;
      asked.reject(new PlatestemmaError(code as ErrorCode, message, { retriable }));
    } else asked.resolve(answer.value);
    this.#next();
  }

  #overdue(asked: Waiting): void {
    // An answer may have come while this thread was busy: it is read before the callback of setImmediate.
    setImmediate(() => this.#putDown(asked, timeout()));
  }

  /** Nobody waits for it any more: it leaves the queue, or the thread is told to end it. */
  #putDown(asked: Waiting, reason: unknown): void {
    settle(asked);
    const place = this.#queue.indexOf(asked);
    if (place >= 0) this.#queue.splice(place, 1);
    else if (this.#running === asked) {
      Atomics.store(this.#stop, 1, asked.number);
      asked.timer = setTimeout(() => this.#replace(asked), this.#patience).unref();
    }
    asked.reject(reason);
  }

  /** Ends a thread that hangs; what waits behind it goes to a new one. */
  #replace(asked: Waiting): void {
    if (this.#running !== asked) return;
    void this.#abandon()?.terminate();
    this.#next();
  }

  #start(): Worker {
    const url = new URL(import.meta.url.endsWith('.ts') ? './worker.ts' : './worker.js', import.meta.url);
    const workerData: WorkerData = { file: this.#file, role: this.#role, stop: this.#stop };
    const worker = new Worker(url, {
      workerData,
      ...(this.#role === 'writer' ? { resourceLimits: writerLimits } : {}),
    });
    worker.once('message', () => {
      this.#isReady = true;
      for (const waiting of this.#queue) this.#startClock(waiting);
      worker.on('message', (answer: Answer) => this.#take(answer));
      this.#next();
    });
    worker.on('error', error => this.#failed(error));
    worker.on('exit', code => this.#failed(new Error(`it ended by itself, with ${code}`)));
    worker.unref();
    return worker;
  }

  /** What ran fails; a thread that does not even start fails all that waited for it. */
  #failed(error: unknown): void {
    const failed = this.#isReady ? [this.#running] : this.#queue.splice(0);
    this.#abandon();
    const message = `a thread of the store failed: ${error instanceof Error ? error.message : String(error)}`;
    for (const asked of failed) {
      if (asked === undefined) continue;
      settle(asked);
      asked.reject(new PlatestemmaError('BROKEN_PROMISE', message, { cause: error }));
    }
    this.#next();
  }

  #abandon(): Worker | undefined {
    const worker = this.#worker;
    worker?.removeAllListeners();
    // What it still says of itself is about nothing that is waited for.
    worker?.on('error', () => undefined);
    this.#worker = undefined;
    this.#isReady = false;
    this.#running = undefined;
    return worker;
  }

  async #end(): Promise<void> {
    if (this.#role !== 'writer') {
      Atomics.store(this.#stop, 0, 1);
      for (const asked of this.#queue.splice(0)) {
        settle(asked);
        asked.reject(closedError());
      }
    }
    if (this.#running !== undefined || this.#queue.length > 0)
      await new Promise<void>(resolve => (this.#whenIdle = resolve));
    const isReady = this.#isReady;
    const worker = this.#abandon();
    if (worker === undefined) return;
    if (!isReady) {
      await worker.terminate();
      return;
    }
    worker.ref();
    const ended = new Promise(resolve => worker.once('exit', resolve));
    worker.postMessage({ name: 'close', args: [], number: 0, limit: undefined } satisfies Call);
    const timer = setTimeout(() => worker.terminate(), this.#patience);
    await ended;
    clearTimeout(timer);
  }
}

/** It is answered, or will not be: no clock and no signal is for it any more. */
function settle({ timer, forget }: Waiting): void {
  clearTimeout(timer);
  forget();
}
