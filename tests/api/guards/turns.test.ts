import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { createApi } from '../../../src/api/create-api.ts';
import { Turns } from '../../../src/api/guards/turns.ts';
import { askStore } from '../../../src/questions/ask-store.ts';
import { demoApi } from '../demo-api.ts';

const limits = { atOnce: 2, waiting: 3, patience: 50 };

/** Work that ends when it is told to. */
function tasks(turns: Turns) {
  const begun: string[] = [];
  const ends = new Map<string, () => void>();
  const start = (name: string, signal?: AbortSignal) =>
    turns
      .run(() => {
        begun.push(name);
        return new Promise<string>(resolve => ends.set(name, () => resolve(name)));
      }, signal)
      .catch((error: { code?: string }) => error.code ?? String(error));
  const end = async (name: string) => {
    ends.get(name)!();
    await new Promise(resolve => setImmediate(resolve));
  };
  return { begun, start, end };
}

describe('work is done in turn', () => {
  test('so many at once, the others in the order in which they came', async () => {
    const { begun, start, end } = tasks(new Turns({ ...limits, patience: 60_000 }));
    const all = ['a', 'b', 'c', 'd', 'e'].map(name => start(name));
    await pause(0);
    expect(begun).toEqual(['a', 'b']);
    await end('b');
    expect(begun).toEqual(['a', 'b', 'c']);
    await end('a');
    await end('c');
    expect(begun).toEqual(['a', 'b', 'c', 'd', 'e']);
    await end('d');
    await end('e');
    expect(await Promise.all(all)).toEqual(['a', 'b', 'c', 'd', 'e']);
  });

  test('more than may wait are refused at once', async () => {
    const { start, end } = tasks(new Turns({ ...limits, patience: 60_000 }));
    const all = ['a', 'b', 'c', 'd', 'e', 'f'].map(name => start(name));
    expect(await all[5]).toBe('SERVER_BUSY');
    for (const name of ['a', 'b', 'c', 'd', 'e']) await end(name);
    expect(await Promise.all(all.slice(0, 5))).toEqual(['a', 'b', 'c', 'd', 'e']);
  });

  test('who waits too long is refused, and takes no turn from those behind', async () => {
    const { begun, start, end } = tasks(new Turns(limits));
    const [a, b, c] = ['a', 'b', 'c'].map(name => start(name));
    expect(await c).toBe('SERVER_BUSY');
    const d = start('d');
    await end('a');
    expect(begun).toEqual(['a', 'b', 'd']);
    await end('b');
    await end('d');
    expect(await Promise.all([a, b, d])).toEqual(['a', 'b', 'd']);
  });

  test('whose asker goes leaves the line; who has gone already does not enter it', async () => {
    const { begun, start, end } = tasks(new Turns({ ...limits, patience: 60_000 }));
    const asker = new AbortController();
    const [a, b, c, d] = [start('a'), start('b'), start('c', asker.signal), start('d')];
    asker.abort(Object.assign(new Error(), { code: 'GONE' }));
    expect(await c).toBe('GONE');
    expect(await start('e', asker.signal)).toBe('GONE');
    await end('a');
    expect(begun).toEqual(['a', 'b', 'd']);
    await end('b');
    await end('d');
    expect(await Promise.all([a, b, d])).toEqual(['a', 'b', 'd']);
  });

  test('work that fails gives its turn on', async () => {
    const turns = new Turns({ ...limits, atOnce: 1 });
    const fails = () => turns.run(() => Promise.reject(new Error('no')));
    const failed = [fails(), fails(), turns.run(() => 'done')];
    expect((await Promise.allSettled(failed)).map(({ status }) => status)).toEqual([
      'rejected',
      'rejected',
      'fulfilled',
    ]);
    expect(await turns.run(() => 'again')).toBe('again');
  });
});

test('a request over the limit is answered with 503, when to come again, and is not worked', async () => {
  const { store: whole } = await demoApi();
  let [counted, answer]: [number, (() => void) | undefined] = [0, undefined];
  const store = new Proxy(whole, {
    get: (target, name) =>
      name === 'count'
        ? () => new Promise<number>(resolve => (answer = () => resolve(++counted)))
        : Reflect.get(target, name),
  });
  const logged: unknown[] = [];
  const log = (event: unknown) => logged.push(event);
  const api = createApi({ store, questions: askStore(store), log, limits: { atOnce: 1, waiting: 0 } });
  const post = (path: string, body: string | null) =>
    api.fetch(
      new Request(`http://localhost${path}`, {
        method: body === null ? 'GET' : 'POST',
        headers: { 'content-type': 'application/json' },
        body,
      }),
    );
  const query = '{"query":"{ works(first: 0) { totalCount } }"}';
  const first = post('/graphql', query);
  await expect.poll(() => answer).toBeDefined();
  for (const refused of [await post('/graphql', query), await post('/draw/descent/piece-shore-dish.svg', null)]) {
    expect([refused.status, refused.headers.get('retry-after')]).toEqual([503, '1']);
    expect(await refused.json()).toMatchObject({ errors: [{ extensions: { code: 'SERVER_BUSY' } }] });
  }
  expect((await post('/health', null)).status).toBe(200);
  answer!();
  expect(await (await first).json()).toEqual({ data: { works: { totalCount: 1 } } });
  const told = { level: 'warn', event: 'trouble', code: 'SERVER_BUSY' };
  // Drawings and queries tell it, each once in a while.
  expect(logged).toEqual([told, told]);
});
