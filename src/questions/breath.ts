/** Lets whatever else waits have its turn: long work breathes every few milliseconds, so that other requests go on. */
export function breath(): Promise<void> {
  return new Promise(resolve => setImmediate(resolve));
}
