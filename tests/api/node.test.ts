import { expect, test } from 'vitest';
import { ask, codes, data } from './ask.ts';
import { demoApi } from './demo-api.ts';

const { api, store } = await demoApi();

test('a record and a claim are found by id', async () => {
  const query =
    '{ dish: node(id: "piece-shore-dish") { __typename id } mark: node(id: "dating-dish-year-mark") { __typename id } }';
  expect(await data(api, query)).toEqual({
    dish: { __typename: 'Piece', id: 'piece-shore-dish' },
    mark: { __typename: 'Dating', id: 'dating-dish-year-mark' },
  });
});

test('null stands for what is not there and for what is no id', async () => {
  expect(await data(api, '{ a: node(id: "piece-never-made") { id } b: node(id: "nonsense") { id } }')).toEqual({
    a: null,
    b: null,
  });
});

test('a mistyped id is told, since it would else look like an answer', async () => {
  const answer = await ask(api, '{ node(id: "plate-7h3k9q2m4xtdq") { id } }');
  expect(answer).toMatchObject({
    status: 200,
    data: { node: null },
    errors: [{ path: ['node'], extensions: { code: 'ID_MISTYPED' } }],
  });
});

test('every record and claim of the graph is fetched again by its id, with the same answer', async () => {
  const rows = await store.scan(undefined, 1000);
  const ids = rows.map(row => row.id);
  const fields = '__typename id ... on Record { label notes } ... on Claim { says standing certainty }';
  const once = (await data(api, `query($ids: [ID!]!) { nodes(ids: $ids) { ${fields} } }`, { ids })) as {
    nodes: { id: string }[];
  };
  expect(once.nodes.map(node => node.id)).toEqual(ids);
  for (const node of once.nodes.slice(0, 12)) {
    expect(await data(api, `query($id: ID!) { node(id: $id) { ${fields} } }`, { id: node.id })).toEqual({ node });
  }
});

test('nodes answers a permutation with the same permutation, and what is missing in its place', async () => {
  const query = 'query($ids: [ID!]!) { nodes(ids: $ids) { id } }';
  const [a, b, c] = ['place-amsterdam-city', 'piece-shore-dish', 'work-ferry-print'] as const;
  expect(await data(api, query, { ids: [a, 'piece-never-made', b, c, a] })).toEqual({
    nodes: [{ id: a }, null, { id: b }, { id: c }, { id: a }],
  });
  expect(await data(api, query, { ids: [c, a, b, 'piece-never-made'] })).toEqual({
    nodes: [{ id: c }, { id: a }, { id: b }, null],
  });
});

test('objects of one id agree on every shared field', async () => {
  const fields = '{ id label work { id label } }';
  const answer = (await data(
    api,
    `{ editions(first: 50) { nodes ${fields} } works(first: 50) { nodes { editions(first: 50) { nodes ${fields} } } } }`,
  )) as { editions: { nodes: { id: string }[] }; works: { nodes: { editions: { nodes: { id: string }[] } }[] } };
  const byId = new Map(answer.editions.nodes.map(edition => [edition.id, edition]));
  const again = answer.works.nodes.flatMap(work => work.editions.nodes);
  expect(again.length).toBe(byId.size);
  for (const edition of again) expect(edition).toEqual(byId.get(edition.id));
});

test('more than 200 ids are refused', async () => {
  const ids = Array.from({ length: 201 }, (_, i) => `piece-number-${i}`);
  expect(await codes(api, 'query($ids: [ID!]!) { nodes(ids: $ids) { id } }', { ids })).toEqual(['QUERY_TOO_COSTLY']);
});

test('a convention that ships with the program has an id like any record', async () => {
  const { conventions } = (await data(api, '{ conventions { __typename id key value source notes } }')) as {
    conventions: { id: string }[];
  };
  expect(conventions.length).toBeGreaterThan(20);
  const first = conventions[0]!;
  const fields = '__typename id ... on Convention { key value source notes }';
  expect(await data(api, `query($id: ID!) { node(id: $id) { ${fields} } }`, { id: first.id })).toEqual({ node: first });
});
