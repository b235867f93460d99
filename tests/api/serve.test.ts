import { once } from 'node:events';
import { connect, type Socket } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { createApi } from '../../src/api/create-api.ts';
import { type Served, type ServeOptions, serve } from '../../src/api/serve.ts';
import { demoApi } from './demo-api.ts';

const { api, store, questions } = await demoApi();
const events: unknown[] = [];
const log = (event: Readonly<Record<string, unknown>>) => events.push(event['event']);
const local = { host: '127.0.0.1', port: 0, log };

/** An API whose counts are answered when they are told to, and how to tell them. */
function slowApi() {
  let answer: (() => void) | undefined;
  const count = () => new Promise<number>(resolve => (answer = () => resolve(7)));
  const slow = createApi({
    questions,
    store: new Proxy(store, { get: (target, name) => (name === 'count' ? count : Reflect.get(target, name)) }),
  });
  return { slow, asked: () => expect.poll(() => answer).toBeDefined(), answer: () => answer!() };
}

const countQuery = JSON.stringify({ query: '{ works(first: 0) { totalCount } }' });

function post(url: string, body: string): Promise<Response> {
  return fetch(url, { method: 'POST', headers: { 'content-type': 'application/json' }, body });
}

async function socketTo({ url }: Served): Promise<Socket> {
  const socket = connect(Number(new URL(url).port), new URL(url).hostname);
  await once(socket, 'connect');
  return socket;
}

/** All that the server says before it ends the connection. */
async function said(socket: Socket): Promise<string> {
  let text = '';
  socket.on('data', chunk => (text += String(chunk)));
  socket.on('error', () => undefined);
  // Its end by an error too is an end.
  await new Promise(resolve => socket.once('close', resolve));
  return text;
}

async function withServer<T>(options: Partial<ServeOptions>, work: (served: Served) => Promise<T>): Promise<T> {
  const served = await serve(api, { ...local, ...options });
  try {
    return await work(served);
  } finally {
    await served.stop();
  }
}

describe('stopping', () => {
  test('waits for the answers under way, and takes no more', async () => {
    const { slow, asked, answer } = slowApi();
    const served = await serve(slow, local);
    expect(served.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/graphql$/);
    const asking = post(served.url, countQuery);
    await asked();
    const stopped = served.stop();
    await expect(fetch(served.url)).rejects.toThrow();
    answer();
    expect(await (await asking).json()).toEqual({ data: { works: { totalCount: 7 } } });
    const begun = performance.now();
    await stopped;
    // The connection of the last answer, which a client keeps, is not waited for.
    expect(performance.now() - begun).toBeLessThan(1000);
    expect(events.slice(-2)).toEqual(['stopping', 'stopped']);
  });

  test('ends what is not answered within five seconds', async () => {
    const { slow, asked } = slowApi();
    const served = await serve(slow, local);
    const asking = post(served.url, countQuery).then(
      () => 'answered',
      () => 'cut off',
    );
    await asked();
    const begun = performance.now();
    await served.stop();
    expect(performance.now() - begun).toBeLessThan(6000);
    expect(await asking).toBe('cut off');
    expect(events.slice(-3)).toEqual(['stopping', 'answers-cut-off', 'stopped']);
  });
});

test('a port that is taken is told', () =>
  withServer({}, async ({ url }) => {
    const port = Number(new URL(url).port);
    await expect(serve(api, { ...local, port })).rejects.toMatchObject({
      code: 'INPUT_INVALID',
      message: `expected to listen at 127.0.0.1, port ${port}: the port is taken`,
    });
  }));

describe('bytes that are no request are answered with a code, and the connection is ended', () => {
  test.each([
    ['other bytes', '\0\u0001\r\n\r\n', 400, 'request'],
    ['headers without end', `GET / HTTP/1.1\r\nhost: localhost\r\nx: ${'x'.repeat(20_000)}\r\n\r\n`, 431, 'request'],
    ['no host', 'GET /health HTTP/1.1\r\n\r\n', 400, 'host'],
    ['an expectation', 'GET /health HTTP/1.1\r\nhost: localhost\r\nexpect: cake\r\n\r\n', 417, 'expect'],
    ['a host that is none', 'GET /health HTTP/1.1\r\nhost: a b <>\r\n\r\n', 400, 'host'],
    ['half an address', 'GET /health HTTP/1.1\r\nhost: [::\r\n\r\n', 400, 'host'],
    ['a host with a path', 'GET /health HTTP/1.1\r\nhost: localhost/x\r\n\r\n', 400, 'host'],
    ['a host with a user', 'GET /health HTTP/1.1\r\nhost: localhost@evil.example\r\n\r\n', 400, 'host'],
    ['an address of another server', 'GET http://elsewhere.example/ HTTP/1.1\r\nhost: localhost\r\n\r\n', 400, 'path'],
  ])('%s', (_what, bytes, status, field) =>
    withServer({}, async served => {
      const socket = await socketTo(served);
      const answer = said(socket);
      socket.write(bytes);
      const [head, body] = (await answer).split('\r\n\r\n');
      expect(head).toMatch(new RegExp(`^HTTP/1.1 ${status} `));
      expect(body).toContain('"code":"INPUT_INVALID"');
      expect(body).toContain(`"place":{"field":"${field}"}`);
      expect(body).not.toContain('    at ');
    }),
  );
});

describe('a page elsewhere that gave its name the address of this machine', () => {
  const asked = (host: string, options: Partial<ServeOptions>) =>
    withServer(options, async served => {
      const socket = await socketTo(served);
      const answer = said(socket);
      socket.write(`GET /health HTTP/1.1\r\nhost: ${host}\r\nconnection: close\r\n\r\n`);
      return Number(/^HTTP\/1.1 (\d+)/.exec(await answer)?.[1]);
    });

  test.each(['evil.example', 'evil.example:4000', 'localhost.evil.example', '10.0.0.1'])(
    '%s is refused',
    async host => {
      expect(await asked(host, {})).toBe(421);
    },
  );

  test.each(['localhost', 'localhost:4000', '127.0.0.1:4000', '[::1]:4000', 'LOCALHOST'])(
    '%s is answered',
    async host => {
      expect(await asked(host, {})).toBe(200);
    },
  );

  test('a server that others may reach is called by what name they have for it', async () => {
    expect(await asked('prints.example', { host: '0.0.0.0' })).toBe(200);
  });
});

describe('who is slow holds up nobody but himself', () => {
  const bounds = { headersTimeout: 200, requestTimeout: 400, connectionsCheckingInterval: 50 };
  const head = 'POST /graphql HTTP/1.1\r\nhost: localhost\r\ncontent-type: application/json\r\n';

  test.each([
    ['headers', 'POST /graphql HTTP/1.1\r\nhost: localhost\r\nx-a: ', 'a'],
    ['a body', `${head}content-length: 900000\r\n\r\n`, ' '],
  ])('%s that do not end are cut off in time', (_what, beginning, more) =>
    withServer({ bounds }, async served => {
      const socket = await socketTo(served);
      const answer = said(socket);
      const begun = performance.now();
      socket.write(beginning);
      const drip = setInterval(() => socket.write(more), 20);
      expect((await post(served.url, '{"query":"{__typename}"}')).status).toBe(200);
      expect(await answer).toMatch(/^HTTP\/1.1 408 [\s\S]*"code":"INPUT_INVALID"/);
      clearInterval(drip);
      expect(performance.now() - begun).toBeLessThan(2000);
    }),
  );

  test('many who take the largest answer slowly hold one copy of it together', () =>
    withServer({}, async served => {
      const page = await fetch(served.url, { headers: { accept: 'text/html' } });
      const { length } = await page.text();
      const before = process.memoryUsage().arrayBuffers;
      const slow = await Promise.all(Array.from({ length: 20 }, () => socketTo(served)));
      for (const socket of slow) {
        socket.pause();
        socket.write('GET /graphql HTTP/1.1\r\nhost: localhost\r\naccept: text/html\r\n\r\n');
      }
      await pause(500);
      expect((await post(served.url, '{"query":"{__typename}"}')).status).toBe(200);
      expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(5 * length);
      for (const socket of slow) socket.destroy();
    }));

  test('an upload without end is refused when it passes the limit, and nothing of it is kept', () =>
    withServer({}, async served => {
      const socket = await socketTo(served);
      const answer = said(socket);
      socket.write(`${head}transfer-encoding: chunked\r\n\r\n`);
      const chunk = `10000\r\n${'x'.repeat(65_536)}\r\n`;
      let sent = 0;
      while (!socket.destroyed && sent < 200_000_000) {
        sent += chunk.length;
        // A connection that is full may never be written to again: it is closed then.
        if (!socket.write(chunk)) await Promise.race([once(socket, 'drain').catch(() => undefined), answer]);
        await pause(0);
      }
      expect(await answer).toMatch(/^HTTP\/1.1 413 /);
      expect(sent).toBeLessThan(20_000_000);
    }));
});
