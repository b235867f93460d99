import { expect, test } from 'vitest';
import { codes, data } from './ask.ts';
import { demoApi } from './demo-api.ts';

const demo = await demoApi();
const { api } = demo;

const document = `query ($of: ID!, $towards: Towards, $depth: Int) {
  lineage(of: $of, towards: $towards, depth: $depth) {
    picture { id label }
    links {
      nodes {
        record { id label }
        depth made { first last } recorded { first last } handedness inPart regionUnknown
        appearances { appearance { id } edition { id title } locator published { first last } }
      }
      steps {
        __typename
        ... on Copying { id says manner handedness }
        ... on PrintedFrom { id }
        ... on Casting { id }
        ... on DetailStep { detail { id } whole { id } }
      }
    }
    earliest { id }
    latest { id }
    contradictions { code message daysShort involved { ... on Node { id } } }
    missingLinks { code message claim { id } }
    cut
    grounds { basis supposed asOf cautions claims(first: 200) { nodes { id } } conventions { key version } }
  }
}`;

const open = { first: null, last: null };

test('a lineage is told whole', async () => {
  expect(await data(api, document, { of: 'motif-dish-ferry', towards: 'SOURCES' })).toEqual({
    lineage: {
      picture: { id: 'motif-dish-ferry', label: 'A ferry with a cow' },
      links: {
        nodes: [
          {
            record: { id: 'motif-dish-ferry', label: 'A ferry with a cow' },
            depth: 0,
            made: { first: '1766-01-01', last: null },
            recorded: open,
            handedness: 'SAME',
            inPart: false,
            regionUnknown: false,
            appearances: [],
          },
          {
            record: { id: 'plate-evening-ferry', label: 'De Avondveer' },
            depth: 1,
            made: { first: null, last: '1761-12-31' },
            recorded: open,
            handedness: 'SAME',
            inPart: false,
            regionUnknown: false,
            appearances: [
              {
                appearance: { id: 'appearance-ferry-sheet' },
                edition: { id: 'edition-ferry-sheet', title: 'De Avondveer' },
                locator: null,
                published: { first: '1755-01-01', last: '1761-12-31' },
              },
            ],
          },
          {
            record: { id: 'artwork-evening-ferry', label: 'The Ferry at Evening' },
            depth: 2,
            made: { first: null, last: '1761-12-31' },
            recorded: open,
            handedness: 'SAME',
            inPart: false,
            regionUnknown: false,
            appearances: [],
          },
        ],
        steps: [
          {
            __typename: 'Copying',
            id: 'copying-dish-ferry',
            says: 'A ferry with a cow was copied from De Avondveer',
            manner: 'BY_EYE',
            handedness: 'SAME',
          },
          {
            __typename: 'Copying',
            id: 'copying-ferry-print',
            says: 'De Avondveer was copied from The Ferry at Evening',
            manner: 'BY_EYE',
            handedness: 'SAME',
          },
        ],
      },
      earliest: [{ id: 'artwork-evening-ferry' }],
      latest: [{ id: 'motif-dish-ferry' }],
      contradictions: [],
      missingLinks: [],
      cut: false,
      grounds: {
        basis: 'claims still said, held, and at least possible',
        supposed: false,
        asOf: null,
        cautions: [expect.stringContaining('About the recorded claims')],
        claims: { nodes: expect.arrayContaining([{ id: 'appearance-ferry-sheet' }, { id: 'copying-ferry-print' }]) },
        conventions: expect.arrayContaining([
          { key: 'limit.depth', version: 1 },
          { key: 'limit.lineage', version: 1 },
        ]),
      },
    },
  });
});

test('a depth and a direction limit it', async () => {
  const query = (args: string) =>
    `{ lineage(of: "plate-evening-ferry"${args}) { cut links { nodes { record { id } } } } }`;
  const found = async (args: string) => {
    const { lineage } = (await data(api, query(args))) as {
      lineage: { cut: boolean; links: { nodes: { record: { id: string } }[] } };
    };
    return [lineage.links.nodes.map(node => node.record.id), lineage.cut];
  };
  expect(await found('')).toEqual([['plate-evening-ferry', 'artwork-evening-ferry', 'motif-dish-ferry'], false]);
  expect(await found(', towards: COPIES')).toEqual([['plate-evening-ferry', 'motif-dish-ferry'], false]);
  expect(await found(', depth: 0')).toEqual([['plate-evening-ferry'], true]);
  expect(await found(', towards: null, depth: null')).toEqual(await found(''));
});

test('what is no picture, or not there, is told', async () => {
  const of = (id: string) => `{ lineage(of: "${id}") { cut } }`;
  expect(await codes(api, of('edition-ferry-sheet'))).toEqual(['KIND_MISMATCH']);
  expect(await codes(api, of('plate-never-made'))).toEqual(['INPUT_INVALID']);
  expect(await codes(api, of('nonsense'))).toEqual(['INPUT_INVALID']);
  expect(await codes(api, '{ lineage(of: "plate-evening-ferry", depth: 31) { cut } }')).toEqual(['INPUT_INVALID']);
});

test('the store is asked as often for a long lineage as for a short one, and not again for what was read', async () => {
  const asked = async (of: string, selection = document) => {
    demo.calls.length = 0;
    await data(api, selection, { of });
    return demo.calls.map(({ method }) => method);
  };
  const one = await asked('motif-dish-lighthouse');
  expect(await asked('plate-shore-4-net-menders')).toEqual(one);
  // The walk, with what dates the pictures, beside the conventions in force.
  expect(one).toEqual(['walk', 'list', 'rows']);
});
