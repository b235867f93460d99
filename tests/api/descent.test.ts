import { expect, test } from 'vitest';
import { codes, data } from './ask.ts';
import { demoApi } from './demo-api.ts';

const demo = await demoApi();

const document = `query ($of: ID!) {
  descent(of: $of) {
    asked { id label }
    editions {
      edition { id title }
      depth
      published { first last }
      recorded { first last }
      plates { plate { id caption } fate fromPlate { id } fromEdition { id } restsOn { ... on Node { id } } }
    }
    steps { id says text leave surfaces }
    contradictions { code message daysShort involved { ... on Node { id } } }
    cut
    grounds { supposed claims(first: 200) { nodes { id } } conventions { key version } }
  }
}`;

test('a descent is told whole', async () => {
  const of1758 = { first: '1758-01-01', last: '1758-12-31' };
  const of1751 = { first: '1751-01-01', last: '1751-12-31' };
  expect(await data(demo.api, document, { of: 'edition-shore-leipzig-1758' })).toEqual({
    descent: {
      asked: { id: 'edition-shore-leipzig-1758', label: 'Lust am Ufer, in zwölf Kupfern' },
      editions: [
        {
          edition: { id: 'edition-shore-amsterdam-1751', title: 'Vermaak aan de oever, in twaalf printen' },
          depth: 0,
          published: of1751,
          recorded: of1751,
          plates: [
            {
              plate: { id: 'plate-shore-4-net-menders', caption: 'The net menders' },
              fate: 'NEW',
              fromPlate: null,
              fromEdition: null,
              restsOn: [{ id: 'appearance-menders-amsterdam-1751' }],
            },
            {
              plate: { id: 'plate-shore-6-craft', caption: 'Negen vaartuigen' },
              fate: 'NEW',
              fromPlate: null,
              fromEdition: null,
              restsOn: [{ id: 'appearance-nine-craft-amsterdam-1751' }],
            },
          ],
        },
        {
          edition: { id: 'edition-shore-leipzig-1758', title: 'Lust am Ufer, in zwölf Kupfern' },
          depth: 1,
          published: of1758,
          recorded: of1758,
          plates: [
            {
              plate: { id: 'plate-ufer-4-net-menders', caption: 'Die Netzflicker' },
              fate: 'COPIED',
              fromPlate: { id: 'plate-shore-4-net-menders' },
              fromEdition: { id: 'edition-shore-amsterdam-1751' },
              restsOn: [
                { id: 'appearance-netzflicker-leipzig' },
                { id: 'appearance-menders-amsterdam-1751' },
                { id: 'copying-leipzig-menders' },
              ],
            },
            {
              plate: { id: 'plate-shore-6-craft', caption: 'Negen vaartuigen' },
              fate: 'NOT_KNOWN',
              fromPlate: { id: 'plate-shore-6-craft' },
              fromEdition: { id: 'edition-shore-amsterdam-1751' },
              restsOn: [{ id: 'appearance-nine-craft-amsterdam-1751' }],
            },
          ],
        },
      ],
      steps: [
        {
          id: 'editiondescent-leipzig-from-amsterdam',
          says: 'Lust am Ufer, in zwölf Kupfern was made from Vermaak aan de oever, in twaalf printen',
          text: 'TRANSLATED',
          leave: 'WITHOUT_LEAVE',
          surfaces: 'COPIED',
        },
      ],
      contradictions: [],
      cut: false,
      grounds: {
        supposed: false,
        claims: { nodes: expect.arrayContaining([{ id: 'editiondescent-leipzig-from-amsterdam' }]) },
        conventions: expect.arrayContaining([{ key: 'limit.lineage', version: 1 }]),
      },
    },
  });
});

test('what is no work or edition, or not there, is told', async () => {
  const of = (id: string) => `{ descent(of: "${id}") { cut } }`;
  expect(await codes(demo.api, of('plate-evening-ferry'))).toEqual(['KIND_MISMATCH']);
  expect(await codes(demo.api, of('work-never-made'))).toEqual(['INPUT_INVALID']);
});

test('the store is asked as often for many editions as for one', async () => {
  const asked = async (of: string) => {
    demo.calls.length = 0;
    await data(demo.api, document, { of });
    return demo.calls.map(({ method }) => method);
  };
  const one = await asked('edition-ferry-sheet');
  expect(await asked('edition-shore-amsterdam-1768')).toEqual(one);
  expect(one).toEqual(['list', 'rows', 'rows', 'walk', 'linked', 'linked', 'rows', 'walk', 'rows']);
  expect(await asked('work-shore-pleasures')).toEqual(['list', 'rows', 'rows', 'linked', ...one.slice(3)]);
});
