import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Duplex } from 'node:stream';
import { type Refusal, refusalBody } from '../refusal.ts';

/** What Node's parser says of bytes that are no request: https://nodejs.org/api/errors.html */
const notARequest: Readonly<Record<string, readonly [status: number, reason: string, message: string]>> = {
  HPE_HEADER_OVERFLOW: [
    431,
    'Request Header Fields Too Large',
    'expected an address and headers of at most 16 KB, came more',
  ],
  ERR_HTTP_REQUEST_TIMEOUT: [408, 'Request Timeout', 'expected a whole request in time, came a part of one'],
};

/**
 * Why a request is refused before its address is read; undefined if it is not. A page elsewhere can give its own name this
 * machine's address, and a browser then takes our answers for that page's own ("DNS rebinding"): where only this machine is
 * served, a request must call it by a name that only it has.
 */
export function firstLook(request: IncomingMessage, servesOnlyThisMachine: boolean): Refusal | undefined {
  const { url, headers, httpVersion } = request;
  // Before HTTP/1.1 a request had none.
  const host = headers.host ?? (httpVersion === '1.1' ? '' : 'localhost');
  const address = URL.parse(`http://${host}`);
  const isHost = address !== null && address.host.length > 0 && address.href === `http://${address.host}/`;
  if (!isHost) return malformed('host', `expected a host with or without a port, came "${host.slice(0, 60)}"`);
  if (url?.startsWith('/') !== true) return malformed('path', `expected a path, came "${(url ?? '').slice(0, 60)}"`);
  if (!servesOnlyThisMachine || isThisMachine(address.hostname)) return undefined;
  const message = `expected a request to localhost, came one to "${address.hostname.slice(0, 60)}"; serve with --host to be reached by other names`;
  return { status: 421, code: 'NOT_ALLOWED', message, place: { field: 'host' } };
}

/** Whether a host is a loopback address, or the name that stands for one (RFC 6761, 6.3). */
export function isThisMachine(host: string): boolean {
  return /^(127\.\d+\.\d+\.\d+|\[?::1\]?|localhost|.+\.localhost)$/.test(host.toLowerCase());
}

/** The only thing that may be expected of a server is that it goes on (RFC 9110, 10.1.1). */
export function refuseExpectation(request: IncomingMessage, response: ServerResponse): void {
  const message = `expect: expected 100-continue, came "${request.headers.expect?.slice(0, 60)}"`;
  answerRefusal(response, { status: 417, code: 'INPUT_INVALID', message, place: { field: 'expect' } });
}

export function answerRefusal(response: ServerResponse, refusal: Refusal): void {
  response.writeHead(refusal.status, {
    'content-type': 'application/json; charset=utf-8',
    'cache-control': 'no-store',
    connection: 'close',
  });
  response.end(refusalBody(refusal));
}

/** Answers bytes that are no request, where the connection can still be written to, and ends it. */
export function answerNoRequest({ code }: NodeJS.ErrnoException, socket: Duplex): void {
  if (code === 'ECONNRESET' || !socket.writable) {
    socket.destroy();
    return;
  }
  const [status, reason, message] = notARequest[code ?? ''] ?? [
    400,
    'Bad Request',
    'expected a request of HTTP, came other bytes',
  ];
  const body = refusalBody({ status, code: 'INPUT_INVALID', message, place: { field: 'request' } });
  const headers = `content-type: application/json; charset=utf-8\r\ncontent-length: ${Buffer.byteLength(body)}\r\nconnection: close`;
  socket.end(`HTTP/1.1 ${status} ${reason}\r\n${headers}\r\n\r\n${body}`, () => socket.destroy());
}

function malformed(field: string, message: string): Refusal {
  return { status: 400, code: 'INPUT_INVALID', message: `${field}: ${message}`, place: { field } };
}
