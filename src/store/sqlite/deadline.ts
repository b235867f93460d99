import type { DatabaseSync } from 'node:sqlite';
import { closedError, timeout } from './sqlite-error.ts';

/**
 * When the call that runs now must end. Statements that may be long ask by the SQL function `go_on`, loops by `check`.
 * `stop` is shared with the thread that asked: 1 in its first place ends everything at once, the number of a call in its
 * second that call.
 */
export class Deadline {
  readonly #stop: Int32Array;
  #end = Infinity;
  #call = 0;

  constructor(stop: Int32Array) {
    this.#stop = stop;
  }

  register(database: DatabaseSync): void {
    database.function('go_on', { varargs: true }, () => {
      this.check();
      return 1;
    });
  }

  /**
   * @param limit milliseconds from now; absent: none
   * @param call number of the call, from 1; absent: one that is not ended before its limit
   */
  begin(limit?: number, call = -1): void {
    this.#end = limit === undefined ? Infinity : performance.now() + limit;
    this.#call = call;
  }

  /** @throws STORE_TIMEOUT past the limit or when nobody waits any more, STORE_UNREACHABLE if the store is being closed */
  check(): void {
    if (Atomics.load(this.#stop, 0) !== 0) throw closedError();
    if (performance.now() > this.#end || Atomics.load(this.#stop, 1) === this.#call) throw timeout();
  }
}
