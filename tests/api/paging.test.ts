import { beforeAll, describe, expect, test } from 'vitest';
import type { Api } from '../../src/api/create-api.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { ask, codes, data } from './ask.ts';
import { demoApi } from './demo-api.ts';

interface Listed {
  readonly workshops: {
    readonly edges: readonly { readonly cursor: string; readonly node: { readonly label: string } }[];
    readonly pageInfo: Readonly<Record<string, unknown>>;
  };
}

let api: Api;
let cursors: Readonly<Record<string, string>>;

/** The page as the Cursor Connections Specification's examples write it: labels, then the flags. */
async function page(args: string, variables?: Readonly<Record<string, unknown>>): Promise<unknown> {
  const declared = args.includes('$after') ? 'query($after: String)' : '';
  const query = `${declared} { workshops(${args}) { edges { cursor node { label } } pageInfo { hasNextPage hasPreviousPage startCursor endCursor } } }`;
  const { workshops } = (await data(api, query, variables)) as Listed;
  const { hasNextPage, hasPreviousPage, startCursor, endCursor } = workshops.pageInfo;
  expect([startCursor, endCursor]).toEqual([
    workshops.edges[0]?.cursor ?? null,
    workshops.edges.at(-1)?.cursor ?? null,
  ]);
  return [workshops.edges.map(edge => edge.node.label).join(''), { next: hasNextPage, previous: hasPreviousPage }];
}

beforeAll(async () => {
  const demo = await demoApi();
  api = demo.api;
  const shop = await demo.store.list('Workshop', undefined, 10);
  // Five workshops a to e stand before the one of the demo world, which is named with E but longer.
  const rows = ['a', 'b', 'c', 'd', 'e'].map(
    name => ({ id: `workshop-letter-${name}`, kind: 'Workshop', labels: [{ text: name }] }) as const,
  );
  expect(shop.length).toBe(1);
  const changeSet = { moment: '2026-01-02T00:00:00.000Z', who: 'test', why: 'five to page through' };
  await applyChanges(demo.store, { changeSet, rows, added: new Set(rows.map(row => row.id)) });
  const all = (await data(
    api,
    '{ workshops(first: 5) { edges { cursor node { label } } pageInfo { endCursor } } }',
  )) as Listed;
  cursors = Object.fromEntries(all.workshops.edges.map(edge => [edge.node.label, edge.cursor]));
});

describe('pages of a b c d e and one more, by the specification', () => {
  test('first: 2', async () => expect(await page('first: 2')).toEqual(['ab', { next: true, previous: false }]));

  test('first: 2, after: b', async () => {
    expect(await page('first: 2, after: $after', { after: cursors['b'] })).toEqual([
      'cd',
      { next: true, previous: false },
    ]);
  });

  test('first: 1, after: e is the last page', async () => {
    expect(await page('first: 1, after: $after', { after: cursors['e'] })).toEqual([
      'Ellerholm faience works',
      { next: false, previous: false },
    ]);
  });

  test('after the last there is nothing, and no cursor', async () => {
    const all = (await data(api, '{ workshops { edges { cursor } pageInfo { endCursor } } }')) as Listed;
    expect(await page('first: 2, after: $after', { after: all.workshops.pageInfo['endCursor'] })).toEqual([
      '',
      { next: false, previous: false },
    ]);
  });

  test('first: 0', async () => expect(await page('first: 0')).toEqual(['', { next: true, previous: false }]));

  test('without first there are 25', async () => {
    expect(await page('after: $after', { after: null })).toEqual([
      'abcdeEllerholm faience works',
      { next: false, previous: false },
    ]);
  });

  test('first: -1 and first: 201 are refused', async () => {
    expect(await codes(api, '{ workshops(first: -1) { nodes { id } } }')).toEqual(['INPUT_INVALID']);
    expect(await codes(api, '{ workshops(first: 201) { nodes { id } } }')).toEqual(['INPUT_INVALID']);
  });

  test('the whole list is counted', async () => {
    expect(await data(api, '{ workshops(first: 0) { totalCount } }')).toEqual({ workshops: { totalCount: 6 } });
  });
});

describe('a cursor belongs to its list and arguments', () => {
  const codesAfter = (query: string, cursor: string) =>
    codes(api, `query($after: String) { ${query} }`, { after: cursor });

  test('a cursor of another list, another record or other arguments is refused', async () => {
    expect(await codesAfter('works(after: $after) { nodes { id } }', cursors['b']!)).toEqual(['CURSOR_INVALID']);
    const claims = (await data(
      api,
      '{ node(id: "piece-shore-dish") { ... on Piece { claims(first: 1) { pageInfo { endCursor } } } } }',
    )) as { node: { claims: { pageInfo: { endCursor: string } } } };
    const cursor = claims.node.claims.pageInfo.endCursor;
    const dish = (args: string) => `node(id: "piece-shore-dish") { ... on Piece { claims(${args}) { nodes { id } } } }`;
    expect(await codesAfter(dish('first: 2, after: $after'), cursor)).toEqual([]);
    expect(await codesAfter(dish('standing: null, after: $after'), cursor)).toEqual(['CURSOR_INVALID']);
    const other = 'node(id: "motif-dish-net-menders") { ... on Motif { claims(after: $after) { nodes { id } } } }';
    expect(await codesAfter(other, cursor)).toEqual(['CURSOR_INVALID']);
  });

  test.each(['nonsense', '', 'bm9uc2Vuc2U', Buffer.from('["x",{"sort":1,"id":2}]').toString('base64url')])(
    '"%s" is refused',
    async cursor =>
      expect(await codesAfter('workshops(after: $after) { nodes { id } }', cursor)).toEqual(['CURSOR_INVALID']),
  );

  test('a refusal names the argument', async () => {
    const answer = await ask(api, '{ workshops(after: "nonsense") { nodes { id } } }');
    expect(answer.errors?.[0]?.extensions).toEqual({ code: 'CURSOR_INVALID', place: { field: 'after' } });
  });
});

describe('every list read page by page is the list read at once', () => {
  const reach = (order: string) => ({
    list: `reach(piece: "piece-shore-dish", order: ${order}, PAGE) { editions { SELECTION } }`,
    node: 'edition { id }',
  });

  test.each([
    { list: 'editions(PAGE) { SELECTION }', node: 'id' },
    { list: 'search(text: "shore", PAGE) { SELECTION }', node: 'id' },
    { list: 'claims(kinds: [IMPRINT, DATING], PAGE) { SELECTION }', node: 'id' },
    { list: 'claims(about: "place-amsterdam-city", PAGE) { SELECTION }', node: 'id' },
    { list: 'reach(piece: "piece-shore-dish", PAGE) { grounds { claims(PAGE) { SELECTION } } }', node: 'id' },
    reach('ROOM'),
    reach('DATE'),
    reach('TITLE'),
  ])('$list', async ({ list, node }) => {
    const whole = (await read(list, node, 200, null)).edges.map(edge => edge.node);
    const parts: unknown[] = [];
    let after: string | null = null;
    for (let more = true; more; ) {
      const { edges, pageInfo } = await read(list, node, 2, after);
      parts.push(...edges.map(edge => edge.node));
      after = edges.at(-1)?.cursor ?? null;
      more = pageInfo.hasNextPage;
    }
    expect(parts).toEqual(whole);
    expect(whole.length).toBeGreaterThan(2);
  });
});

interface PageOfNodes {
  readonly edges: readonly { readonly cursor: string; readonly node: unknown }[];
  readonly pageInfo: { readonly hasNextPage: boolean };
}

async function read(list: string, node: string, first: number, after: string | null): Promise<PageOfNodes> {
  const selection = `edges { cursor node { ${node} } } pageInfo { hasNextPage }`;
  const innermost = list.lastIndexOf('PAGE');
  const paged = `${list.slice(0, innermost)}first: $first, after: $after${list.slice(innermost + 4)}`;
  const query = paged.replace('PAGE', 'first: 0').replace('SELECTION', selection);
  let found = await data(api, `query($first: Int, $after: String) { ${query} }`, { first, after });
  while (!('edges' in (found as object))) [found] = Object.values(found as object);
  return found as PageOfNodes;
}
