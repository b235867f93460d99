import { createHash } from 'node:crypto';
import { serverAudits } from 'graphql-http';
import { describe, expect, test } from 'vitest';
import { createApi } from '../../src/api/create-api.ts';
import { PlatestemmaError } from '../../src/errors.ts';
import { demoApi } from './demo-api.ts';

const { api, store, questions } = await demoApi();

const get = (path: string, headers: Record<string, string> = {}) =>
  api.fetch(new Request(`http://localhost${path}`, { headers }));
const post = (body: string, contentType?: string) =>
  api.fetch(
    new Request('http://localhost/graphql', {
      method: 'POST',
      headers: contentType === undefined ? {} : { 'content-type': contentType },
      body: new TextEncoder().encode(body),
    }),
  );
const hello = JSON.stringify({ query: '{ __typename }' });

// The audits are those of graphql-http 1.23: GraphQL over HTTP, https://graphql.github.io/graphql-over-http/
describe('GraphQL over HTTP', () => {
  const fetchFn = (url: string, init: RequestInit) => api.fetch(new Request(url, init));
  const audits = serverAudits({ url: 'http://localhost/graphql', fetchFn });

  test.each(audits.map(audit => [audit.name, audit] as const))('%s', async (_name, audit) => {
    expect(await audit.fn()).toMatchObject({ status: 'ok' });
  });

  test('the suite has its audits', () => {
    const musts = audits.filter(audit => audit.name.startsWith('MUST')).length;
    const shoulds = audits.filter(audit => audit.name.startsWith('SHOULD')).length;
    console.info(`GraphQL over HTTP: ${audits.length} audits, ${musts} must, ${shoulds} should`);
    expect([audits.length, musts]).toEqual([61, expect.any(Number)]);
    expect(musts).toBeGreaterThan(10);
  });
});

describe('only JSON is taken: a form on a foreign page cannot send it', () => {
  test.each([
    'application/x-www-form-urlencoded',
    'multipart/form-data; boundary=x',
    'text/plain',
    'application/graphql',
  ])('%s is refused with 415', async type => {
    const response = await post(hello, type);
    expect(response.status).toBe(415);
    expect(await response.json()).toMatchObject({ errors: [{ extensions: { code: 'INPUT_INVALID' } }] });
  });

  test('a missing content type is refused with 415', async () => expect((await post(hello)).status).toBe(415));

  test('JSON with a charset is taken', async () => {
    expect((await post(hello, 'application/json; charset=utf-8')).status).toBe(200);
  });

  test('no other site is given leave to read the answers', async () => {
    const response = await get('/graphql?query=%7B__typename%7D', { origin: 'https://elsewhere.example' });
    expect(response.headers.get('access-control-allow-origin')).toBe(null);
  });
});

describe('the page for writing queries', () => {
  test('stands at the same address, fetches nothing from elsewhere, and runs under its own policy', async () => {
    const response = await get('/graphql', { accept: 'text/html,application/xhtml+xml' });
    expect([response.status, response.headers.get('content-type')]).toEqual([200, 'text/html; charset=utf-8']);
    const body = await response.text();
    const start = body.indexOf('<script>') + '<script>'.length;
    const end = body.indexOf('</script', start);
    const script = body.slice(start, end);
    const page = body.slice(0, start) + body.slice(end);
    expect(page.match(/\b(?:src|href)="(?!data:)|@import|url\((?!["']?(?:data:|#))/g)).toBe(null);
    expect(script).not.toContain('\r');
    const hash = createHash('sha256').update(script).digest('base64');
    const policy = response.headers.get('content-security-policy')?.split('; ');
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain(`script-src 'sha256-${hash}' blob:`);
    expect(policy).toContain("connect-src 'self'");
  });

  test('a program that sends a query by GET is answered, whatever it accepts', async () => {
    const response = await get('/graphql?query=%7B__typename%7D', { accept: 'text/html, application/json' });
    expect(await response.json()).toEqual({ data: { __typename: 'Query' } });
  });
});

describe('care of the service', () => {
  test('/health answers while the process lives', async () => expect((await get('/health')).status).toBe(200));

  test('/ready answers while the store can be read', async () => {
    const response = await get('/ready');
    expect([response.status, await response.json()]).toEqual([200, { status: 'ready', changeSet: 1 }]);
    const gone = createApi({
      questions,
      store: new Proxy(store, {
        get: () => () => Promise.reject(new PlatestemmaError('STORE_UNREACHABLE', 'the store is closed')),
      }),
    });
    const refused = await gone.fetch(new Request('http://localhost/ready'));
    expect([refused.status, await refused.json()]).toEqual([503, { status: 'not ready', code: 'STORE_UNREACHABLE' }]);
  });

  test('/ready says within a second or so that the store does not answer, and asks it once for all who ask', async () => {
    let asked = 0;
    const silent = createApi({
      questions,
      store: new Proxy(store, { get: () => () => new Promise(() => void asked++) }),
    });
    const ready = () => silent.fetch(new Request('http://localhost/ready'));
    const begun = performance.now();
    const answers = await Promise.all([ready(), ready(), ready()]);
    expect(performance.now() - begun).toBeLessThan(1500);
    expect(await Promise.all(answers.map(async each => [each.status, await each.json()]))).toEqual(
      answers.map(() => [503, { status: 'not ready', code: 'STORE_TIMEOUT' }]),
    );
    expect(asked).toBe(1);
    expect((await silent.fetch(new Request('http://localhost/health'))).status).toBe(200);
  });

  test('another path is not found', async () => {
    const response = await get('/admin');
    expect([response.status, await response.json()]).toMatchObject([
      404,
      { errors: [{ extensions: { code: 'NOT_FOUND' } }] },
    ]);
  });
});
