import { createServer, type IncomingMessage, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { PlatestemmaError } from '../errors.ts';
import type { Api } from './create-api.ts';
import { answerNoRequest, answerRefusal, firstLook, isThisMachine, refuseExpectation } from './guards/first-look.ts';
import { type Log, logToStderr } from './log.ts';

export interface ServeOptions {
  readonly host: string;
  /** 0 takes a free one. */
  readonly port: number;
  readonly log?: Log;
  readonly bounds?: Partial<typeof bounds>;
}

export interface Served {
  /** Address of the GraphQL endpoint. */
  readonly url: string;
  /** Takes no new requests, lets those under way end (at most five seconds), and resolves when all is closed. */
  stop(): Promise<void>;
}

/** Times in milliseconds, and numbers, that no connection may go beyond. */
const bounds = {
  /** Until the headers of a request are there, and until all of it is. */
  headersTimeout: 10_000,
  requestTimeout: 30_000,
  /** How often the two are looked at. */
  connectionsCheckingInterval: 1_000,
  /** Until the next request on the same connection. */
  keepAliveTimeout: 10_000,
};
const mostConnections = 2_000;
/** Without a byte in either direction: much longer than any question may take. */
const silence = 120_000;
/** For who still sends what nobody reads to take the answer. */
const lastLook = 1_000;
/** For what is under way when the server is stopped. */
const lastAnswers = 5_000;

/** @throws INPUT_INVALID if the port is taken or the address is not of this machine */
export async function serve(api: Api, options: ServeOptions): Promise<Served> {
  const local = isThisMachine(options.host);
  const server = createServer({ ...bounds, ...options.bounds, requireHostHeader: false }, (request, response) => {
    response.once('finish', () => endUnread(request));
    const refusal = firstLook(request, local);
    if (refusal === undefined) api.listener(request, response);
    else answerRefusal(response, refusal);
  });
  server.on('clientError', answerNoRequest);
  server.on('checkExpectation', refuseExpectation);
  server.maxConnections = mostConnections;
  server.setTimeout(silence);
  await listen(server, options);
  const { port } = server.address() as AddressInfo;
  const host = options.host.includes(':') ? `[${options.host}]` : options.host;
  return { url: `http://${host}:${port}/graphql`, stop: () => stop(server, options.log ?? logToStderr) };
}

/** Who is refused while he sends is not read to the end. */
function endUnread(request: IncomingMessage): void {
  if (!request.complete) setTimeout(() => request.socket.destroy(), lastLook).unref();
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

async function stop(server: Server, log: Log): Promise<void> {
  log({ level: 'info', event: 'stopping' });
  const begun = performance.now();
  const closed = new Promise<void>(resolve => server.close(() => resolve()));
  // A connection is idle when its answer is on its way: it is not kept for a next request.
  const idle = setInterval(() => server.closeIdleConnections(), 20);
  const impatient = setTimeout(() => {
    log({ level: 'warn', event: 'answers-cut-off' });
    server.closeAllConnections();
  }, lastAnswers);
  await closed;
  clearInterval(idle);
  clearTimeout(impatient);
  log({ level: 'info', event: 'stopped', milliseconds: Math.round(performance.now() - begun) });
}
