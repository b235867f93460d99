import { describe, expect, test } from 'vitest';
import { createApi } from '../../src/api/create-api.ts';
import type { Questions, ReachAsked } from '../../src/questions/questions.ts';
import { data } from './ask.ts';
import { type DemoApi, demoApi } from './demo-api.ts';

const demo = await demoApi();

/** Calls of the store that a query makes: each method with the number of ids it was given. */
async function calls({ api, calls: seen }: DemoApi, query: string): Promise<string[]> {
  seen.length = 0;
  await data(api, query);
  return seen.map(({ method, args }) => (Array.isArray(args[0]) ? `${method} ${args[0].length}` : method));
}

const methods = (seen: readonly string[]) => seen.map(call => call.split(' ')[0]);

describe('the store is asked as often for a long list as for a short one', () => {
  test.each([
    ['links', '{ editions(first: SIZE) { nodes { label work { label } } } }'],
    [
      'claims and what they name',
      '{ editions(first: SIZE) { nodes { claims { nodes { says evidence { reference { label } } } } } } }',
    ],
    ['records that name it', '{ editions(first: SIZE) { nodes { work { editions { nodes { label } } } } } }'],
    ['origins', '{ editions(first: SIZE) { nodes { origins { key } } } }'],
    ['what a search finds', '{ search(text: "shore", first: SIZE) { nodes { label origins { key } } } }'],
    ['what claims name', '{ claims(kinds: [DATING], first: SIZE) { nodes { ... on Dating { of { label } } } } }'],
  ])('%s', async (_what, query) => {
    const [short, long] = [
      await calls(demo, query.replace('SIZE', '3')),
      await calls(demo, query.replace('SIZE', '7')),
    ];
    expect(methods(long)).toEqual(methods(short));
    expect(long).not.toEqual(short);
  });
});

test('links of a list are asked for in one call, each id once', async () => {
  expect(await calls(demo, '{ editions { nodes { work { id } } } }')).toEqual(['list', 'rows 12', 'rows 7']);
});

test('claims of a list are asked for in one call for each selection', async () => {
  const query = `{
    editions {
      nodes {
        dated: claims(kinds: [DATING]) { nodes { id } }
        printed: claims(kinds: [IMPRINT]) { nodes { id } }
      }
    }
  }`;
  expect(await calls(demo, query)).toEqual(['list', 'rows 12', 'linked 12', 'linked 12']);
});

test('ids asked for together are asked of the store together', async () => {
  const query = `{
    a: node(id: "piece-shore-dish") { id }
    b: node(id: "work-ferry-print") { id }
    nodes(ids: ["piece-shore-dish", "place-amsterdam-city"]) { id }
  }`;
  expect(await calls(demo, query)).toEqual(['rows 3']);
});

test('the page of a record is asked for at once, with the claims of what its claims name', async () => {
  const plates = (first: number) => `node(id: "edition-shore-amsterdam-1751") {
    id ... on Edition { work { label } plates: claims(kinds: [APPEARANCE], first: ${first}) { nodes { ... on Appearance {
      plate { caption copyings: claims(kinds: [COPYING]) { nodes { says ... on Copying { source { label } } } } }
    } } } }
  }`;
  expect(await calls(demo, `{ ${plates(20)} }`)).toEqual(['surroundings 1']);
  // One plate of more is shown: its claims alone are asked for, when they are known.
  expect(await calls(demo, `{ ${plates(1)} }`)).toEqual(['surroundings 1', 'surroundings 1']);
});

test('a text that is no id is not asked for', async () => {
  expect(await calls(demo, '{ node(id: "nonsense") { id } }')).toEqual([]);
});

test('claims of records of several kinds are asked for once a kind', async () => {
  const seen = await calls(demo, '{ search(text: "e", first: 200) { nodes { __typename claims { nodes { id } } } } }');
  const { search } = (await data(demo.api, '{ search(text: "e", first: 200) { nodes { __typename } } }')) as {
    search: { nodes: { __typename: string }[] };
  };
  const kinds = new Set(search.nodes.map(node => node.__typename));
  expect(search.nodes.length).toBeGreaterThan(kinds.size);
  expect(methods(seen).filter(method => method === 'linked').length).toBe(kinds.size);
});

test('the page of a reach asks for its editions with their claims and what these name, and for nothing again', async () => {
  const page = async (first: number) => {
    const rows = 'editions { nodes { verdict edition { label work { label } } } }';
    const seen = await calls(demo, `{ reach(at: { placeName: "London" }, by: "1766", first: ${first}) { ${rows} } }`);
    return seen.slice(seen.findIndex(call => call.startsWith('editionsInWindows')) + 1);
  };
  expect(await page(7)).toEqual(['surroundings 7']);
  expect(await page(2)).toEqual(['surroundings 2']);
});

test('rows and counts of a reach are worked only where they are asked for', async () => {
  const asked: ReachAsked[] = [];
  const { store, questions } = demo;
  const reach: Questions['reach'] = question => {
    asked.push(question);
    return questions.reach(question);
  };
  const api = createApi({ store, questions: { ...questions, reach } });
  const question = (selection: string) => `{ reach(piece: "piece-shore-dish", first: 3) { ${selection} } }`;
  await data(api, question('counts { inEveryCase }'));
  const fragment =
    'fragment f on Reach { editions { nodes { verdict } } counts { ... on ReachCounts { byPlace { inNoCase } } } }';
  await data(api, `${question('...f')} ${fragment}`);
  expect(asked).toMatchObject([
    { page: { first: 0 }, tallies: false },
    { page: { first: 3 }, tallies: true },
  ]);
});
