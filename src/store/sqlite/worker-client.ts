import { Worker } from 'node:worker_threads';
import { type ErrorCode, PlatestemmaError } from '../../errors.ts';
import { timeout } from './sqlite-error.ts';
import type { Answer, Call, WorkerData } from './worker.ts';

/** How long after its limit a call may still answer before its thread is replaced. */
const grace = 2000;

interface Waiting {
  readonly resolve: (value: unknown) => void;
  readonly reject: (error: unknown) => void;
  readonly timer: NodeJS.Timeout | undefined;
}

/** The near side of a store thread: sends calls, hands out answers, and replaces a thread that does not end a call in time. */
export class WorkerClient {
  readonly #data: WorkerData;
  readonly #waiting = new Map<number, Waiting>();
  #worker: Worker;
  #number = 0;
  #closed = false;

  constructor(data: WorkerData) {
    this.#data = data;
    this.#worker = this.#start();
  }

  /** Resolves when the thread has opened the file. */
  static async open(data: WorkerData): Promise<WorkerClient> {
    const client = new WorkerClient(data);
    await client.#opened();
    return client;
  }

  /** @param limit milliseconds; absent: no limit */
  call<T>(name: string, args: readonly unknown[], limit?: number): Promise<T> {
    if (this.#closed) return Promise.reject(closedError());
    const number = ++this.#number;
    return new Promise<T>((resolve, reject) => {
      const timer = limit === undefined ? undefined : setTimeout(() => this.#replace(), limit + grace);
      timer?.unref();
      this.#waiting.set(number, { resolve: resolve as (value: unknown) => void, reject, timer });
      this.#worker.ref();
      const deadline = limit === undefined ? Infinity : Date.now() + limit;
      this.#worker.postMessage({ number, name, args, deadline } satisfies Call);
    });
  }

  async close(): Promise<void> {
    if (this.#closed) return;
    await this.call('close', []).catch(() => undefined);
    this.#closed = true;
    this.#failAll(closedError());
    await this.#worker.terminate();
  }

  #start(): Worker {
    const url = new URL(import.meta.url.endsWith('.ts') ? './worker.ts' : './worker.js', import.meta.url);
    const worker = new Worker(url, { workerData: this.#data });
    worker.on('message', (answer: Answer) => this.#take(answer));
    worker.on('error', error =>
      this.#failAll(
        new PlatestemmaError('BROKEN_PROMISE', `a thread of the store failed: ${error.message}`, { cause: error }),
      ),
    );
    return worker;
  }

  #opened(): Promise<unknown> {
    return new Promise((resolve, reject) => {
      this.#waiting.set(0, { resolve, reject, timer: undefined });
    });
  }

  #take(answer: Answer): void {
    const waiting = this.#waiting.get(answer.number);
    if (waiting === undefined) return;
    this.#waiting.delete(answer.number);
    clearTimeout(waiting.timer);
    // An idle thread does not keep the process alive.
    if (this.#waiting.size === 0) this.#worker.unref();
    if ('error' in answer) {
      const { code, message, retriable } = answer.error;
      waiting.reject(new PlatestemmaError(code as ErrorCode, message, { retriable }));
    } else waiting.resolve(answer.value);
  }

  /** Ends a thread that hangs; what else waited for it fails as retriable. */
  #replace(): void {
    const old = this.#worker;
    old.removeAllListeners();
    this.#failAll(timeout());
    this.#worker = this.#start();
    void old.terminate();
  }

  #failAll(error: PlatestemmaError): void {
    for (const { reject, timer } of this.#waiting.values()) {
      clearTimeout(timer);
      reject(error);
    }
    this.#waiting.clear();
  }
}

export function closedError(): PlatestemmaError {
  return new PlatestemmaError('STORE_UNREACHABLE', 'the store has been closed');
}
