import { once } from 'node:events';
import { type AddressInfo, connect, createServer, type Socket } from 'node:net';

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
  const sockets = new Set<Socket>();
  let [connections, cuts] = [0, 0];
  const proxy = createServer(near => {
    let left = bytesOf(connections++);
    const far = connect(target, '127.0.0.1');
    const end = () => {
      for (const socket of [near, far]) socket.destroy();
    };
    for (const socket of [near, far]) {
      sockets.add(socket);
      socket.on('error', end).on('close', end);
    }
    near.pipe(far);
    far.on('data', bytes => {
      near.write(bytes.subarray(0, Math.min(bytes.length, left)));
      left -= bytes.length;
      if (left > 0) return;
      cuts++;
      end();
    });
  }).listen(0, '127.0.0.1');
  await once(proxy, 'listening');
  const stop = async () => {
    for (const socket of sockets) socket.destroy();
    proxy.close();
    await once(proxy, 'close');
  };
  return { port: (proxy.address() as AddressInfo).port, cuts: () => cuts, stop };
}
