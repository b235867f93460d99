import { waysTo } from './ways.ts';

/** A way to a server that breaks. */
export interface CuttingProxy {
  readonly port: number;
  /** How many connections have been cut. */
  readonly cuts: () => number;
  stop(): Promise<void>;
}

/**
 * Passes bytes on between whoever comes and a server, and cuts each connection when so many bytes of answers have passed.
 * @param bytesOf how many pass, for each connection in turn; Infinity: it is not cut
 */
export async function cuttingProxy(target: number, bytesOf: (connection: number) => number): Promise<CuttingProxy> {
  let [connections, cuts] = [0, 0];
  const ways = await waysTo(target, ({ near, far, end }) => {
    let left = bytesOf(connections++);
    near.pipe(far);
    far.on('data', bytes => {
      near.write(bytes.subarray(0, Math.min(bytes.length, left)));
      left -= bytes.length;
      if (left > 0) return;
      cuts++;
      end();
    });
  });
  return { ...ways, cuts: () => cuts };
}
