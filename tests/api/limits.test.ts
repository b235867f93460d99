import { getIntrospectionQuery } from 'graphql';
import { describe, expect, test } from 'vitest';
import { ask, codes, data } from './ask.ts';
import { demoApi } from './demo-api.ts';

const { api, calls } = await demoApi();

const nested = (levels: number, inner: string): string =>
  levels === 0 ? inner : `within { ${nested(levels - 1, inner)} }`;
const london = 'node(id: "place-amsterdam-city")';
const hundred = (inner: string) => `editions(first: 100) { nodes { ${inner} } }`;
const claims = (first: number | string, inner: string) => `claims(first: ${first}) { nodes { ${inner} } }`;

describe('a query over the limits is refused before anything is executed', () => {
  test.each([
    ['deep', `{ ${london} { ... on Place { ${nested(20, 'id')} } } }`],
    [
      'deep by fragments',
      `{ ${london} { ...a } } fragment a on Place { ${nested(8, '...b')} } fragment b on Place { ${nested(8, 'id')} }`,
    ],
    ['40 aliases', `{ ${Array.from({ length: 40 }, (_, i) => `a${i}: ${london} { id }`).join(' ')} }`],
    [
      '32 aliases by fragments',
      `{ ${london} { ...a ...a ...a ...a } } fragment a on Place { ...b ...b ...b ...b } fragment b on Place { x: id y: id }`,
    ],
    [
      'a page of 1,000 in a page of 1,000 in a page of 1,000',
      '{ works(first: 1000) { nodes { editions(first: 1000) { nodes { exemplars(first: 1000) { nodes { id } } } } } } }',
    ],
    [
      'pages of 100 in pages of 100 by a fragment',
      `{ ${hundred('...e')} } fragment e on Edition { ${claims(100, 'id says standing stance certainty')} }`,
    ],
    ['3,000 tokens', `{ ${'a '.repeat(2998)}}`],
  ])('%s', async (_what, query) => {
    calls.length = 0;
    const answer = await ask(api, query);
    expect(answer.status).toBe(400);
    expect(answer.errors?.map(error => error.extensions?.['code'])).toContain('QUERY_TOO_COSTLY');
    expect('data' in answer).toBe(false);
    expect(calls).toEqual([]);
  });

  test('a page whose size is a variable counts as the largest', async () => {
    const query = `query($n: Int) { ${hundred(claims('$n', 'id says standing'))} }`;
    expect(await codes(api, query, { n: 1 })).toEqual(['QUERY_TOO_COSTLY']);
  });

  test('the refusal says the limit and what came', async () => {
    const answer = await ask(api, `{ ${london} { ... on Place { ${nested(20, 'id')} } } }`);
    expect(answer.errors?.map(error => error.message)).toEqual([
      'expected a query with a depth of at most 16, came 22',
    ]);
  });

  test('fragments that go round are refused, not followed', async () => {
    const query =
      '{ node(id: "place-amsterdam-city") { ...a } } fragment a on Place { within { ...b } } fragment b on Place { within { ...a } }';
    expect((await ask(api, query)).errors?.[0]?.message).toMatch(/Cannot spread fragment "a" within itself/);
  });
});

describe('what a reader asks passes', () => {
  test('a page of 100 with links and claims', async () => {
    await data(api, `{ ${hundred(`id label work { label } ${claims(10, 'says')}`)} }`);
  });

  test('the whole reach with reasons', async () => {
    await data(
      api,
      '{ reach(piece: "piece-shore-dish", first: 50) { counts { inEveryCase } editions { edges { cursor node { verdict edition { label work { label } } why { message } restsOn { ... on Claim { says evidence { reference { label } locator } } } } } } } }',
    );
  });

  test('the introspection of the whole schema', async () => {
    await data(api, getIntrospectionQuery({ descriptions: true, oneOf: true, specifiedByUrl: true }));
  });
});

test('limits can be set', async () => {
  const narrow = await demoApi({ limits: { depth: 2 } });
  expect(await codes(narrow.api, '{ works { nodes { id } } }')).toEqual(['QUERY_TOO_COSTLY']);
});
