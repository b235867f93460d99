import type { Plugin } from 'graphql-yoga';
import { PlatestemmaError } from '../../errors.ts';
import type { ApiContext } from '../context.ts';

export interface TurnLimits {
  /** Requests that are worked at one time. */
  readonly atOnce: number;
  /** Requests that may wait for their turn. */
  readonly waiting: number;
  /** Longest time that one waits, in milliseconds. */
  readonly patience: number;
}

interface Waiting {
  readonly enter: () => void;
}

/** Lets so many work at one time, the others in the order in which they came. */
export class Turns {
  readonly #limits: TurnLimits;
  readonly #line = new Set<Waiting>();
  #atWork = 0;

  constructor(limits: TurnLimits) {
    this.#limits = limits;
  }

  /**
   * @param signal of an asker who may stop waiting
   * @throws SERVER_BUSY where too many wait, or it was waited for too long; the reason of the signal
   */
  async run<T>(work: () => Promise<T> | T, signal?: AbortSignal): Promise<T> {
    await this.#turn(signal);
    try {
      return await work();
    } finally {
      this.#leave();
    }
  }

  #turn(signal: AbortSignal | undefined): Promise<void> | void {
    signal?.throwIfAborted();
    if (this.#atWork < this.#limits.atOnce) {
      this.#atWork++;
      return;
    }
    if (this.#line.size >= this.#limits.waiting) throw busy('too many wait for an answer');
    return new Promise((resolve, reject) => {
      const settle = (end: () => void) => {
        this.#line.delete(waiting);
        clearTimeout(timer);
        signal?.removeEventListener('abort', gone);
        end();
      };
      const waiting: Waiting = { enter: () => settle(resolve) };
      const gone = () => settle(() => reject(signal!.reason));
      const timer = setTimeout(
        () => settle(() => reject(busy('its turn did not come in time'))),
        this.#limits.patience,
      );
      signal?.addEventListener('abort', gone, { once: true });
      this.#line.add(waiting);
    });
  }

  /** Gives the turn on to the first in the line. */
  #leave(): void {
    const [next] = this.#line;
    if (next === undefined) this.#atWork--;
    else next.enter();
  }
}

/** Executes operations in turn. */
export function takeTurns(turns: Turns): Plugin<ApiContext> {
  return {
    onExecute({ executeFn, setExecuteFn }) {
      setExecuteFn(args => turns.run(() => executeFn(args), (args as { signal?: AbortSignal }).signal));
    },
  };
}

function busy(why: string): PlatestemmaError {
  return new PlatestemmaError('SERVER_BUSY', `more is asked at once than can be answered: ${why}; ask again later`, {
    retriable: true,
  });
}
