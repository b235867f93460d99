import { describe, expect, test } from 'vitest';
import { demoApi } from '../demo-api.ts';

const { api, calls, logged } = await demoApi();

interface Sent {
  readonly method?: string;
  readonly path?: string;
  readonly body?: string | Uint8Array<ArrayBuffer> | null;
  readonly headers?: Readonly<Record<string, string>>;
}

/** Status, code and place of the answer to a request that is right but for what is said. */
async function told({ method = 'POST', path = '/graphql', body = '{"query":"{__typename}"}', headers = {} }: Sent) {
  const response = await api.fetch(
    new Request(`http://localhost${path}`, {
      method,
      headers: { 'content-type': 'application/json', ...headers },
      body: method === 'GET' || method === 'HEAD' ? null : body,
    }),
  );
  const { errors } = (await response.json()) as {
    errors: { message: string; extensions: { code: string; place?: { field: string } } }[];
  };
  const { message, extensions } = errors[0]!;
  return { status: response.status, code: extensions.code, field: extensions.place?.field, message, response };
}

describe('a body that cannot be read is refused with the name of the part that is wrong', () => {
  test.each([
    ['{bad', 'body', expect.stringContaining('body: expected JSON, came "{bad"')],
    ['', 'body', expect.stringContaining('body: expected JSON, came ""')],
    ['null', 'body', 'body: expected a JSON object, came null'],
    ['[{"query":"{__typename}"}]', 'body', 'body: expected a JSON object, came a list'],
    ['"x"', 'body', 'body: expected a JSON object, came "x"'],
    ['{}', 'query', 'query: expected a query as text, came none'],
    ['{"query":1}', 'query', 'query: expected a query as text, came 1'],
    ['{"query":"{a}","variables":"x"}', 'variables', 'variables: expected a JSON object, came "x"'],
    ['{"query":"{a}","variables":[1]}', 'variables', 'variables: expected a JSON object, came a list'],
    ['{"query":"{a}","operationName":5}', 'operationName', expect.stringContaining('came 5')],
    ['{"query":"{a}","extensions":true}', 'extensions', expect.stringContaining('came true')],
    [
      '{"query":"{a}","more":1}',
      'more',
      'more: expected query, operationName, variables, extensions in the body, came "more"',
    ],
    ['{"query":"{__typename}","operationName":"Other"}', 'operationName', expect.anything()],
  ])('%s', async (body, field, message) => {
    expect(await told({ body })).toMatchObject({ status: 400, code: 'INPUT_INVALID', field, message });
  });

  test('bytes that are no UTF-8: no character is put in their place', async () => {
    const body = Uint8Array.from([...Buffer.from('{"query":"{__typename}","operationName":"'), 0xff, 0x22, 0x7d]);
    expect(await told({ body })).toMatchObject({
      status: 400,
      code: 'INPUT_INVALID',
      field: 'body',
      message: 'body: expected UTF-8, came bytes that are none',
    });
  });

  test('one that breaks off', async () => {
    const body = new ReadableStream({
      start: controller => controller.enqueue(Buffer.from('{"query":')),
      pull: controller => controller.error(new Error('gone')),
    });
    const headers = { 'content-type': 'application/json' };
    const request = new Request('http://localhost/graphql', { method: 'POST', headers, body, duplex: 'half' } as never);
    const response = await api.fetch(request);
    expect([response.status, await response.json()]).toMatchObject([
      400,
      { errors: [{ extensions: { place: { field: 'body' } } }] },
    ]);
  });

  test.each([
    ['/graphql?query=%7B__typename%7D&variables=%7B', 'variables'],
    ['/graphql?query=%7B__typename%7D&variables=1', 'variables'],
    ['/graphql?query=%7B__typename%7D&extensions=x', 'extensions'],
    ['/graphql', 'query'],
  ])('%s', async (path, field) => {
    expect(await told({ method: 'GET', path })).toMatchObject({ status: 400, code: 'INPUT_INVALID', field });
  });
});

describe('a request of another form is refused, with what is expected', () => {
  test.each(['PUT', 'DELETE', 'PATCH', 'OPTIONS'])('method %s', async method => {
    const { response, ...refused } = await told({ method });
    expect(refused).toMatchObject({ status: 405, code: 'INPUT_INVALID', field: 'method' });
    expect(response.headers.get('allow')).toBe('GET, POST');
  });

  test('a packed body', async () => {
    const headers = { 'content-encoding': 'gzip' };
    expect(await told({ headers })).toMatchObject({ status: 415, field: 'content-encoding' });
  });

  test('a reader of something else', async () => {
    expect(await told({ headers: { accept: 'image/png' } })).toMatchObject({ status: 406, field: 'accept' });
  });

  test('a body over the limit, whether it says its length or not', async () => {
    const query = JSON.stringify({ query: '{ __typename }', variables: { padding: 'x'.repeat(1_000_000) } });
    const refused = { status: 413, code: 'QUERY_TOO_COSTLY', field: 'body' };
    expect(await told({ body: query })).toMatchObject(refused);
    expect(await told({ body: query, headers: { 'content-length': '2000000' } })).toMatchObject(refused);
  });
});

describe('a browser on another site can ask for nothing to be done', () => {
  const refused = (field: string) => ({ status: 403, code: 'NOT_ALLOWED', field });

  test.each([
    ['of another site', { 'sec-fetch-site': 'cross-site' }, 'sec-fetch-site'],
    ['of another port or subdomain', { 'sec-fetch-site': 'same-site', origin: 'http://localhost:9' }, 'sec-fetch-site'],
    ['of another origin', { origin: 'https://elsewhere.example', host: 'localhost' }, 'origin'],
    ['of no origin', { origin: 'null', host: 'localhost' }, 'origin'],
  ])('%s', async (_what, headers, field) => {
    calls.length = 0;
    const body = '{"query":"{ works { nodes { id } } }"}';
    expect(await told({ body, headers })).toMatchObject(refused(field));
    expect(calls).toEqual([]);
  });

  test.each([
    ['its own page', { 'sec-fetch-site': 'same-origin', origin: 'https://behind.a.proxy' }],
    ['its own page, of an older browser', { origin: 'http://localhost:4000', host: 'LOCALHOST:4000' }],
    ['the address bar', { 'sec-fetch-site': 'none' }],
    ['a program', {}],
  ])('%s can', async (_what, headers) => {
    const response = await api.fetch(
      new Request('http://localhost/graphql', {
        method: 'POST',
        headers: { 'content-type': 'application/json', ...headers },
        body: '{"query":"{__typename}"}',
      }),
    );
    expect(response.status).toBe(200);
  });
});

test('what is refused is no unexpected error', () => expect(logged).toEqual([]));
