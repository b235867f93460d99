/** Long work that lets others have their turn, and ends when nobody waits for it any more. */
export interface Breath {
  /** Others have waited long enough for their turn. */
  isDue(): boolean;
  /** Gives them their turn. @throws the reason of the signal, once it is given */
  take(): Promise<void>;
}

/** Longest time that others wait, in milliseconds: of a limit kept within 20 ms a fraction. */
const longest = 4;

/** @param signal given when the asker waits no more */
export function breathing(signal?: AbortSignal): Breath {
  let last = performance.now();
  return {
    isDue: () => performance.now() - last > longest,
    take: async () => {
      // What waits for its turn may be the clock that ends this.
      await new Promise(resolve => setImmediate(resolve));
      signal?.throwIfAborted();
      last = performance.now();
    },
  };
}
