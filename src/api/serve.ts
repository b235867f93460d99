import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { PlatestemmaError } from '../errors.ts';
import type { Api } from './create-api.ts';

export interface ServeOptions {
  readonly host: string;
  /** 0 takes a free one. */
  readonly port: number;
}

export interface Served {
  /** Address of the GraphQL endpoint. */
  readonly url: string;
  /** Takes no new requests, lets those under way end (at most five seconds), and resolves when all is closed. */
  stop(): Promise<void>;
}

/** @throws INPUT_INVALID if the port is taken or the address is not of this machine */
export async function serve(api: Api, options: ServeOptions): Promise<Served> {
  const server = createServer(api.listener);
  server.headersTimeout = 10_000;
  server.requestTimeout = 30_000;
  await listen(server, options);
  const { port } = server.address() as AddressInfo;
  const host = options.host.includes(':') ? `[${options.host}]` : options.host;
  return { url: `http://${host}:${port}/graphql`, stop: () => stop(server) };
}

function listen(server: Server, { host, port }: ServeOptions): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', cause => {
      const { code } = cause as NodeJS.ErrnoException;
      const why = code === 'EADDRINUSE' ? 'the port is taken' : `the system says ${code}`;
      const message = `expected to listen at ${host}, port ${port}: ${why}`;
      reject(new PlatestemmaError('INPUT_INVALID', message, { cause }));
    });
    server.listen(port, host, resolve);
  });
}

async function stop(server: Server): Promise<void> {
  const closed = new Promise<void>(resolve => server.close(() => resolve()));
  server.closeIdleConnections();
  const impatient = setTimeout(() => server.closeAllConnections(), 5_000);
  await closed;
  clearTimeout(impatient);
}
