import { describe, expect, test } from 'vitest';
import { createApi } from '../../src/api/create-api.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { citationWorld } from '../support/citation-world.ts';
import { codes, data } from './ask.ts';

const store = await citationWorld('memory');
const api = createApi({ store, questions: askStore(store), log: () => undefined });

interface Cited {
  readonly text: string;
  readonly style: string | null;
  readonly locale: string | null;
  readonly items: readonly { readonly record: { readonly id: string }; readonly text: string }[];
}

const of = [
  ...['plate-net-menders', 'appearance-menders-english', 'plate-light-house', 'artwork-ferry-painting'],
  ...['piece-shore-dish', 'exemplar-first-copy', 'edition-second-english', 'reference-with-item'],
];

async function cited(format: string, more: object = {}): Promise<Cited> {
  const query = `query Cite($of: [ID!]!, $format: CitationFormat, $style: String, $locale: LanguageTag) {
    citation(of: $of, format: $format, style: $style, locale: $locale) { text style locale items { record { id } text } }
  }`;
  return ((await data(api, query, { of, format, ...more })) as { readonly citation: Cited }).citation;
}

describe('citation of records of each kind', () => {
  test('as text in a style and a language', async () => {
    const { items, style, locale } = await cited('TEXT', { style: 'mhra', locale: 'de-DE' });
    expect([style, locale]).toEqual(['mhra', 'de-DE']);
    expect(items.map(item => item.text.replaceAll('\u00A0', ' '))).toEqual([
      'Terwiel, Jacob, „The net menders“, in Vermaak aan de oever (Amsterdam: P. Hartigh in the Gilt Swan, 1751), Tafel 4',
      'Terwiel, Jacob, „The Net Menders“, in Pleasures of the Shore, 2. Aufl. (London: T. Calloway & Co., [1764?]), ii, Tafel IV, gegenüber S. 30',
      '„A light-house“, The Cabinet, March 1765 (1765), S. 117',
      'van der Meer, Jan, The Ferry at Evening, oil on panel',
      'Shore faience works, Schüssel mit Uferszenen, 1766, painted faience, diameter 38 cm',
      'Vermaak aan de oever (Amsterdam: P. Hartigh in the Gilt Swan, 1751) <https://example.org/kb12>. Holm Library, Kb 12.',
      'Pleasures of the Shore, 2. Aufl. (London: T. Calloway & Co., [1764?])',
      'Lindqvist, Astrid, Shore and kiln',
    ]);
  });

  test('names the record, of an appearance its plate', async () => {
    const { items } = await cited('BIBTEX');
    expect(items.map(item => item.record.id)).toEqual(
      of.map(id => id.replace('appearance-menders-english', 'plate-net-menders')),
    );
  });

  test('as BibTeX, RIS and CSL-JSON', async () => {
    const [bibtex, ris, csl] = [await cited('BIBTEX'), await cited('RIS'), await cited('CSL_JSON')];
    expect([...bibtex.text.matchAll(/^@(\w+)/gm)].map(([, type]) => type)).toEqual([
      ...['incollection', 'incollection', 'article', 'misc', 'misc', 'book', 'book', 'book'],
    ]);
    expect([...ris.text.matchAll(/^TY {2}- (\w+)\r$/gm)].map(([, type]) => type)).toEqual([
      ...['CHAP', 'CHAP', 'JOUR', 'ART', 'ART', 'BOOK', 'BOOK', 'BOOK'],
    ]);
    expect((JSON.parse(csl.text) as readonly { readonly id: string }[]).map(item => item.id)).toEqual(of);
    expect([ris.style, ris.locale]).toEqual([null, null]);
  });

  test.each([
    ['a work', '{ citation(of: ["work-ferry-sheet"]) { text } }', 'INPUT_INVALID'],
    ['what is not there', '{ citation(of: ["piece-no-such"], format: RIS) { text } }', 'NOT_FOUND'],
    ['a mistyped id', '{ citation(of: ["plate-7h3k9q2m4xtdq"]) { text } }', 'ID_MISTYPED'],
    ['a style that is none', '{ citation(of: ["piece-shore-dish"], style: "nope") { text } }', 'INPUT_INVALID'],
  ])('refuses %s', async (_, query, code) => {
    expect(await codes(api, query)).toEqual([code]);
  });
});

test('the schema shows the notice of the engine where citations are asked for', async () => {
  const query = '{ __type(name: "Query") { fields { name description } } }';
  const { __type } = (await data(api, query)) as { __type: { fields: { name: string; description: string }[] } };
  expect(__type.fields.find(field => field.name === 'citation')?.description).toContain(
    'Attribution Copyright Notice: (c) Frank Bennett. citeproc-js implements the Citation Style Language.\nhttps://citationstyles.org/',
  );
});
