import type { DatabaseSync } from 'node:sqlite';
import { closedError, timeout } from './sqlite-error.ts';

/**
 * When the call that runs now must end. Statements that may be long ask by the SQL function `go_on`, loops by `check`.
 * `stop` is shared with the thread that asked: 1 in it ends everything at once.
 */
export class Deadline {
  readonly #stop: Int32Array;
  #end = Infinity;

  constructor(stop: Int32Array) {
    this.#stop = stop;
  }

  register(database: DatabaseSync): void {
    database.function('go_on', { varargs: true }, () => {
      this.check();
      return 1;
    });
  }

  /** @param limit milliseconds from now; absent: none */
  begin(limit?: number): void {
    this.#end = limit === undefined ? Infinity : performance.now() + limit;
  }

  /** @throws STORE_TIMEOUT past the limit, STORE_UNREACHABLE if the store is being closed */
  check(): void {
    if (Atomics.load(this.#stop, 0) !== 0) throw closedError();
    if (performance.now() > this.#end) throw timeout();
  }
}
