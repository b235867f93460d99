import { once } from 'node:events';
import { connect, type Socket } from 'node:net';
import { describe, expect, test } from 'vitest';
import { serveInProcess } from '../support/served-process.ts';
import { temporaryStore } from '../support/temporary-store.ts';

/** Begins a request that does not end: who stops a server waits for it. */
async function halfRequest(url: string): Promise<Socket> {
  const socket = connect(Number(new URL(url).port), '127.0.0.1');
  socket.on('error', () => undefined);
  await once(socket, 'connect');
  const head =
    'POST /graphql HTTP/1.1\r\nhost: localhost\r\ncontent-type: application/json\r\ncontent-length: 99\r\n\r\n{';
  await new Promise(resolve => socket.write(head, resolve));
  // The server has taken it when it answers what came after it.
  expect((await fetch(new URL('/health', url))).status).toBe(200);
  return socket;
}

describe('a server that is told to stop', () => {
  test.each(['SIGTERM', 'SIGINT'] as const)('by %s ends as soon as all is answered', async signal => {
    const served = await serveInProcess(temporaryStore());
    served.child.kill(signal);
    expect(await served.ended).toBe(0);
    const events = served
      .said()
      .trim()
      .split('\n')
      .map(line => JSON.parse(line) as { event: string });
    expect(events.map(({ event }) => event)).toEqual(['stopping', 'stopped']);
  });

  test.each([
    ['SIGINT', 'SIGINT'],
    ['SIGTERM', 'SIGINT'],
  ] as const)('by %s while something is under way ends at once by a second signal, %s', async (first, second) => {
    const served = await serveInProcess(temporaryStore());
    await halfRequest(served.url);
    served.child.kill(first);
    await expect.poll(served.said).toContain('"stopping"');
    const begun = performance.now();
    served.child.kill(second);
    expect(await served.ended).toBe(second);
    expect(performance.now() - begun).toBeLessThan(1000);
  });
});

describe('a store that is served', () => {
  test('is not served by a second process, and the first goes on', async () => {
    const store = temporaryStore();
    const first = await serveInProcess(store);
    await expect(serveInProcess(store)).rejects.toMatchObject({
      code: 3,
      message: `STORE_BUSY: another process serves the store "${store}"\n`,
    });
    expect((await fetch(new URL('/ready', first.url))).status).toBe(200);
  });

  test('may be served anew when the process has died, however it did', async () => {
    const store = temporaryStore();
    const first = await serveInProcess(store);
    first.child.kill('SIGKILL');
    await first.ended;
    const second = await serveInProcess(store);
    expect((await fetch(new URL('/ready', second.url))).status).toBe(200);
  });
});
