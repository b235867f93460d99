import { setMaxListeners } from 'node:events';
import { setTimeout } from 'node:timers/promises';
import neo4j, { type Driver, type ManagedTransaction, type Session } from 'neo4j-driver';
import { PlatestemmaError } from '../../errors.ts';
import { busy, closedError, mayPass, neo4jError, timeout } from './neo4j-error.ts';

export type Row = readonly unknown[];

export type Values = Readonly<Record<string, unknown>>;

/** Asks a statement, of a question or within a change. */
export type Ask = <R extends Row>(text: string, values?: Values) => Promise<R[]>;

/** Waiting times before a question is asked again, in milliseconds: at first, and at most. */
const [firstPause, longestPause] = [50, 2000];

/** How long a change is made again while the server cannot take it, in milliseconds. */
export const writePatience = 30_000;

/**
 * How long the server works at a change, in milliseconds, and others who write wait for it: one whose maker is gone without a
 * word holds them up no longer.
 */
const longestChange = 120_000;

/** What talks to the server: questions that end at their limit, changes that are tried again, each seeing those before it. */
export class Connection {
  readonly #driver: Driver;
  readonly #server: string;
  readonly #database: string | undefined;
  readonly #bookmarks = neo4j.bookmarkManager();
  /** Ends what runs when the store is closed. */
  readonly #closing = new AbortController();
  #closed: Promise<void> | undefined;

  constructor(driver: Driver, server: string, database: string | undefined) {
    this.#driver = driver;
    this.#server = server;
    this.#database = database;
    // Any number of questions may wait for it.
    setMaxListeners(0, this.#closing.signal);
  }

  get isClosed(): boolean {
    return this.#closing.signal.aborted;
  }

  /**
   * Asks the statements of one question. Each is asked again where the server says that this may help, until the limit of the
   * question. It is no transaction of several messages: that would cost a second way there and back, and could not be ended
   * while the server works.
   * @param limit milliseconds from now
   * @param signal of an asker who may stop waiting
   * @returns throws STORE_TIMEOUT at the limit, the reason of the signal at once; the server ends its work then
   */
  question(limit: number, signal?: AbortSignal): Ask {
    const end = performance.now() + limit;
    return <R extends Row>(text: string, values: Values = {}) => this.#read<R>(text, values, end, signal);
  }

  /**
   * Makes a change, whole or not at all; it is made again where the server says that this may help. The driver sees to that but
   * where a server goes while it is greeted.
   * @param work asks only by what it is given, and can be begun again
   */
  async write<T>(work: (run: Ask) => Promise<T>): Promise<T> {
    const end = performance.now() + writePatience;
    for (let pause = firstPause; ; pause = Math.min(pause * 2, longestPause)) {
      try {
        return await this.#change(work);
      } catch (error) {
        if (!mayPass(error) || performance.now() + pause > end) throw changeError(error, this.#server);
        await setTimeout(pause);
      }
    }
  }

  async #change<T>(work: (run: Ask) => Promise<T>): Promise<T> {
    const session = this.#session('WRITE');
    try {
      return await session.executeWrite(transaction => work(runIn(transaction)), { timeout: longestChange });
    } finally {
      await session.close();
    }
  }

  async #read<R extends Row>(text: string, values: Values, end: number, signal?: AbortSignal): Promise<R[]> {
    for (let pause = firstPause; ; pause = Math.min(pause * 2, longestPause)) {
      if (this.isClosed) throw closedError();
      signal?.throwIfAborted();
      try {
        return await this.#ask<R>(text, values, end, signal);
      } catch (error) {
        if (!mayPass(error) || performance.now() + pause > end) throw neo4jError(error, this.#server);
        await this.#unlessEnded(setTimeout(pause), end, signal);
      }
    }
  }

  /** Questions that run are ended. */
  close(): Promise<void> {
    this.#closing.abort(closedError());
    this.#closed ??= this.#driver.close();
    return this.#closed;
  }

  #session(mode: 'READ' | 'WRITE'): Session {
    return this.#driver.session({
      defaultAccessMode: mode,
      bookmarkManager: this.#bookmarks,
      ...(this.#database === undefined ? {} : { database: this.#database }),
    });
  }

  async #ask<R extends Row>(text: string, values: Values, end: number, signal?: AbortSignal): Promise<R[]> {
    const session = this.#session('READ');
    const limit = Math.max(1, Math.ceil(end - performance.now()));
    try {
      const { records } = await this.#unlessEnded(session.run(text, values, { timeout: limit }), end, signal);
      return records.map(record => [...record.values()] as unknown as R);
    } finally {
      // Closing a session whose question still runs makes the server end it; nobody waits for that.
      session.close().catch(() => undefined);
    }
  }

  /** Waits until the end at most, and no longer than the asker and the store do. */
  async #unlessEnded<T>(work: PromiseLike<T>, end: number, signal?: AbortSignal): Promise<T> {
    const { promise, reject } = Promise.withResolvers<never>();
    const signals = signal === undefined ? [this.#closing.signal] : [this.#closing.signal, signal];
    const abort = (event: Event) => reject((event.target as AbortSignal).reason);
    for (const each of signals) each.addEventListener('abort', abort);
    const timer = globalThis.setTimeout(() => reject(timeout()), end - performance.now());
    try {
      return await Promise.race([work, promise]);
    } finally {
      clearTimeout(timer);
      for (const each of signals) each.removeEventListener('abort', abort);
    }
  }
}

/** A change that was ended had waited for others. */
function changeError(error: unknown, server: string): unknown {
  const known = neo4jError(error, server);
  return known instanceof PlatestemmaError && known.code === 'STORE_TIMEOUT' ? busy(server, error) : known;
}

function runIn(transaction: ManagedTransaction): Ask {
  return async <R extends Row>(text: string, values: Values = {}) => {
    const { records } = await transaction.run(text, values);
    return records.map(record => [...record.values()] as unknown as R);
  };
}
