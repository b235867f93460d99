import { describe, expect, test } from 'vitest';
import { type Api, createApi } from '../../src/api/create-api.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { enginesOfRun } from '../support/describe-on-engines.ts';
import { editedStore } from '../support/edited-store.ts';
import { ask, data } from './ask.ts';

async function editedApi(): Promise<Api> {
  const store = await editedStore(enginesOfRun[0]!);
  return createApi({ store, questions: askStore(store), log: () => {} });
}

const api = await editedApi();

const premises = 'grounds { supposed asOf premises basis }';

describe('a lineage', () => {
  const menders = { copy: 'motif-dish-net-menders', source: 'plate-evening-ferry', evidence: [{ words: 'a letter' }] };

  test('with a copying supposed has it, and nothing else of the request does', async () => {
    const query = `query ($suppose: [Supposed!]) {
      then: lineage(of: "motif-dish-net-menders", suppose: $suppose) {
        links { steps { ... on Copying { id says source { label } evidence { words } } } }
        ${premises}
      }
      now: lineage(of: "motif-dish-net-menders") { links { steps { ... on Copying { id } } } grounds { supposed } }
      node(id: "copying-supposed-1") { id }
    }`;
    const answer = (await data(api, query, { suppose: [{ copying: menders }] })) as Record<string, unknown>;
    const steps = (answer['then'] as { links: { steps: { id: string }[] } }).links.steps;
    expect(steps.find(({ id }) => id === 'copying-supposed-1')).toEqual({
      id: 'copying-supposed-1',
      says: 'Two men mending nets, a dog beside them was copied from De Avondveer',
      source: { label: 'De Avondveer' },
      evidence: [{ words: 'a letter' }],
    });
    expect(answer['then']).toMatchObject({
      grounds: {
        supposed: true,
        asOf: null,
        basis: 'claims still said, held, and at least possible',
        premises: [
          'Supposed: “Two men mending nets, a dog beside them” was copied from “De Avondveer” (copying-supposed-1).',
        ],
      },
    });
    expect(JSON.stringify(answer['now'])).not.toContain('copying-supposed-1');
    expect(answer['node']).toBeNull();
  });

  test('of a record that is supposed is asked in the same way', async () => {
    const query = `query ($suppose: [Supposed!]) {
      lineage(of: "plate-my-own", suppose: $suppose) { picture { id label columns { name text } } earliest { id } }
    }`;
    const suppose = [
      { plate: { id: 'plate-my-own', caption: 'A print', columns: [{ name: 'shelf', text: '3' }] } },
      { copying: { copy: 'plate-my-own', source: 'plate-shore-4-net-menders', certainty: 'PROBABLE' } },
    ];
    expect(await data(api, query, { suppose })).toMatchObject({
      lineage: {
        picture: { id: 'plate-my-own', label: 'A print', columns: [{ name: 'shelf', text: '3' }] },
        earliest: [{ id: 'plate-shore-4-net-menders' }],
      },
    });
  });

  test('without a claim is as if it were withdrawn', async () => {
    const query = `{ lineage(of: "motif-dish-net-menders", without: { claims: ["copying-dish-menders"] }) {
      links { nodes { record { ... on Motif { id } } } } ${premises} } }`;
    expect(await data(api, query)).toEqual({
      lineage: {
        links: { nodes: [{ record: { id: 'motif-dish-net-menders' } }] },
        grounds: {
          supposed: true,
          asOf: null,
          premises: ['Left out: 1 claim: copying-dish-menders.'],
          basis: 'claims still said, held, and at least possible',
        },
      },
    });
  });

  test('as of a change set has the claims that were said then, as they were', async () => {
    const query = `query ($asOf: AsOf) { lineage(of: "plate-pilot-mezzotint", asOf: $asOf) {
      links { steps { ... on Copying { id standing history { nodes { what } } } } } grounds { asOf premises } } }`;
    const step = { id: 'copying-mezzotint-drawing', standing: 'STANDING', history: { nodes: [{ what: 'ADDED' }] } };
    const then = (await data(api, query, { asOf: { changeSet: 1 } })) as {
      lineage: { links: { steps: object[] }; grounds: object };
    };
    expect(then.lineage.links.steps).toContainEqual(step);
    expect(then.lineage.grounds).toEqual({
      asOf: 1,
      premises: ['As of change set 1, made 2026-01-01T00:00:01.000Z.'],
    });
    const now = (await data(api, query)) as typeof then;
    expect(JSON.stringify(now)).not.toContain('copying-mezzotint-drawing');
  });
});

test('a reach says what was taken otherwise, on every row', async () => {
  const query = `query ($basis: Basis, $without: Without, $asOf: AsOf) {
    reach(piece: "piece-shore-dish", basis: $basis, without: $without, asOf: $asOf, first: 50) {
      counts { inEveryCase inSomeCases inNoCase contradictory }
      editions { nodes { edition { id } verdict flags restsOn { ... on Dating { id date } } } }
      ${premises}
    }
  }`;
  type Answer = {
    reach: {
      counts: Record<string, number>;
      editions: { nodes: { edition: { id: string }; flags: string[] }[] };
      grounds: { premises: string[]; basis: string };
    };
  };
  const now = (await data(api, query)) as Answer;
  const without = { claims: ['dating-shore-london-1764'] };
  const left = (await data(api, query, { without })) as Answer;
  expect(left.reach.editions.nodes.every(({ flags }) => flags.includes('SUPPOSED'))).toBe(true);
  expect(now.reach.editions.nodes.some(({ flags }) => flags.includes('SUPPOSED'))).toBe(false);
  const ids = ({ reach }: Answer) => reach.editions.nodes.map(({ edition }) => edition.id).toSorted();
  expect(ids(left)).toEqual(ids(now));
  expect(JSON.stringify(left)).not.toContain('dating-shore-london-1764","date"');
  const certain = (await data(api, query, { basis: { certaintyAtLeast: 'CERTAIN' } })) as Answer;
  expect(certain.reach.grounds).toMatchObject({
    basis: 'claims still said, held, and certain',
    premises: [expect.stringMatching(/^Each edition was looked at/)],
  });
  const then = (await data(api, query, { asOf: { day: '2026-01-01' } })) as Answer;
  expect(JSON.stringify(then)).toContain('{"id":"dating-views-leipzig-1779","date":"1779"}');
  expect(JSON.stringify(now)).toContain('{"id":"dating-views-leipzig-1779","date":"1779?"}');
});

test('a descent takes the same', async () => {
  const query = `query ($without: Without) { descent(of: "work-shore-pleasures", without: $without) {
    steps { id } ${premises} } }`;
  const all = (await data(api, query)) as { descent: { steps: { id: string }[] } };
  const [first] = all.descent.steps;
  const left = (await data(api, query, { without: { claims: [first!.id] } })) as typeof all;
  expect(left.descent.steps).toEqual(all.descent.steps.slice(1));
});

describe('as of a change set', () => {
  test('records and claims are as they were, with all that they link to', async () => {
    const query = `query ($asOf: AsOf) {
      node(id: "dating-views-leipzig-1779", asOf: $asOf) { ... on Dating { date of { ... on Edition { id claims(kinds: [DATING]) { nodes { ... on Dating { date } } } } } } }
      nodes(ids: ["plate-of-lost", "piece-shore-dish"], asOf: $asOf) { id }
      plates(first: 200, asOf: $asOf) { totalCount nodes { id } }
      claims(about: "plate-pilot-mezzotint", kinds: [COPYING], asOf: $asOf) { nodes { id } }
      copyings: claims(kinds: [COPYING], first: 200, asOf: $asOf) { nodes { id } }
      history(of: "dating-views-leipzig-1779", asOf: $asOf) { nodes { what } }
      changes(asOf: $asOf) { nodes { number } }
    }`;
    const then = (await data(api, query, { asOf: { changeSet: 3 } })) as Record<string, unknown>;
    expect(then).toMatchObject({
      node: { date: '1778', of: { claims: { nodes: [{ date: '1778' }] } } },
      nodes: [null, { id: 'piece-shore-dish' }],
      claims: { nodes: expect.not.arrayContaining([{ id: 'copying-mezzotint-drawing' }]) },
      history: { nodes: [{ what: 'ADDED' }, { what: 'EDITED' }] },
      changes: { nodes: [{ number: 1 }, { number: 2 }, { number: 3 }] },
    });
    const plates = then['plates'] as { totalCount: number; nodes: { id: string }[] };
    expect(plates.nodes).toHaveLength(plates.totalCount);
    expect(plates.nodes).not.toContainEqual({ id: 'plate-of-lost' });
    expect(JSON.stringify(then['copyings'])).not.toContain('copying-of-lost');
    const now = (await data(api, query)) as Record<string, unknown>;
    expect(now).toMatchObject({
      node: { date: '1779?', of: { claims: { nodes: [{ date: '1779?' }] } } },
      nodes: [{ id: 'plate-of-lost' }, { id: 'piece-shore-dish' }],
    });
    expect((now['plates'] as typeof plates).nodes).toContainEqual({ id: 'plate-of-lost' });
  });

  test('a citation and the conventions are those of then', async () => {
    const query = `query ($asOf: AsOf) {
      citation(of: ["edition-views-leipzig-1779"], format: CSL_JSON, asOf: $asOf) { items { text record { id } } }
      conventions(asOf: $asOf) { key }
    }`;
    const textOf = async (asOf?: object) => JSON.stringify(await data(api, query, asOf === undefined ? {} : { asOf }));
    const [then, now] = [await textOf({ changeSet: 3 }), await textOf()];
    expect(then).toContain('1778');
    expect(now).not.toContain('1778');
  });

  test('two graphs in one request are told apart, whatever their fields are called', async () => {
    const query = `{
      a: node(id: "dating-views-leipzig-1779", asOf: { changeSet: 1 }) { ... on Dating { date history { nodes { what } } } }
      b: node(id: "dating-views-leipzig-1779", asOf: { changeSet: 3 }) { ... on Dating { date history { nodes { what } } } }
      c: node(id: "dating-views-leipzig-1779") { ... on Dating { date } }
    }`;
    expect(await data(api, query)).toEqual({
      a: { date: '1779', history: { nodes: [{ what: 'ADDED' }] } },
      b: { date: '1778', history: { nodes: [{ what: 'ADDED' }, { what: 'EDITED' }] } },
      c: { date: '1779?' },
    });
  });

  test('a cursor belongs to its moment', async () => {
    const page =
      'query ($after: String) { plates(first: 2, after: $after, asOf: { changeSet: 2 }) { pageInfo { endCursor } nodes { id } } }';
    const first = (await data(api, page)) as { plates: { pageInfo: { endCursor: string }; nodes: object[] } };
    const next = (await data(api, page, { after: first.plates.pageInfo.endCursor })) as typeof first;
    expect(next.plates.nodes).not.toEqual(first.plates.nodes);
    const { errors } = await ask(
      api,
      `{ plates(first: 2, after: "${first.plates.pageInfo.endCursor}") { nodes { id } } }`,
    );
    expect(errors?.[0]?.extensions?.['code']).toBe('CURSOR_INVALID');
  });
});

describe('refused are', () => {
  const lineage =
    'query ($suppose: [Supposed!], $asOf: AsOf) { lineage(of: "piece-shore-dish", suppose: $suppose, asOf: $asOf) { cut } }';
  const copying = { copy: 'motif-dish-net-menders', source: 'plate-evening-ferry' };
  test.each<readonly [string, Readonly<Record<string, unknown>>, string]>([
    ['two kinds of one', { suppose: [{ copying, plate: {} }] }, 'INPUT_INVALID'],
    ['a signature', { suppose: [{ copying: { ...copying, signed: { who: 'Ada' } } }] }, 'INPUT_INVALID'],
    ['a name of nothing', { suppose: [{ copying: { ...copying, source: 'plate-of-none' } }] }, 'INPUT_INVALID'],
    ['more than fifty', { suppose: Array.from({ length: 51 }, () => ({ copying })) }, 'SUPPOSE_TOO_LARGE'],
    ['two moments', { asOf: { changeSet: 1, day: '2026-01-01' } }, 'INPUT_INVALID'],
    ['no day', { asOf: { day: '2026-13-01' } }, 'DATE_UNREADABLE'],
    ['a number below 0', { asOf: { changeSet: -1 } }, 'INPUT_INVALID'],
  ])('%s', async (_what, variables, code) => {
    const { errors } = await ask(api, lineage, variables);
    expect(errors?.[0]?.extensions?.['code']).toBe(code);
  });
});
