import { once } from 'node:events';
import { type AddressInfo, connect, createServer, type Socket } from 'node:net';

/** Both ends of a connection that is passed on. */
export interface Way {
  readonly near: Socket;
  readonly far: Socket;
  /** Cuts it. */
  readonly end: () => void;
}

/** Leads one who comes on to a port of this machine; where one end closes or fails, the other is cut. */
export function wayTo(target: number, near: Socket, sockets: Set<Socket>): Way {
  const far = connect(target, '127.0.0.1');
  const end = () => {
    near.destroy();
    far.destroy();
  };
  for (const socket of [near, far]) {
    sockets.add(socket);
    socket.on('error', end).on('close', end);
  }
  return { near, far, end };
}

/** A server on a port of its own that leads whoever comes on to another. @param pass passes on what is said */
export async function waysTo(
  target: number,
  pass: (way: Way) => void,
): Promise<{ readonly port: number; stop(): Promise<void> }> {
  const sockets = new Set<Socket>();
  const server = createServer(near => pass(wayTo(target, near, sockets))).listen(0, '127.0.0.1');
  await once(server, 'listening');
  const stop = async () => {
    for (const socket of sockets) socket.destroy();
    server.close();
    await once(server, 'close');
  };
  return { port: (server.address() as AddressInfo).port, stop };
}
