import type { Citable, CitableAgent, CitableEdition } from '../../../src/output/cite/citable.ts';

const person = (sortName: string, role: string, more: Partial<CitableAgent> = {}): CitableAgent => {
  const [family, given] = sortName.split(', ');
  return { name: given === undefined ? family! : `${given} ${family}`, sortName, kind: 'person', role, ...more };
};
const firm = (name: string, role: string): CitableAgent => ({ name, kind: 'firm', role });

const patternBook: CitableEdition = {
  id: 'edition-pattern-book',
  title: 'The painter’s companion & pattern book',
  agents: [person('Doe, Anna', 'aut'), person('Vane, Ruth', 'edt'), person('Ibáñez, Álvaro', 'trl')],
  editionStatement: '2nd ed.',
  imprints: [{ place: 'London', publisher: 'Smith, Elder & Co.' }],
  date: { edtf: '1764~', asWritten: '[1764?]' },
  extent: '2 vols',
  series: ['Library of useful things'],
  languages: ['en'],
};

const magazine: CitableEdition = {
  id: 'edition-saturday-visitor-131',
  title: 'The Saturday Visitor',
  serial: true,
  number: 'Vol. 3, no. 131',
  imprints: [{ place: 'London', publisher: 'Barker' }],
  date: { edtf: '1834-04-26' },
  identifiers: [{ scheme: 'ISSN', value: '0000-0019' }],
  languages: ['en'],
};

const sheet: CitableEdition = {
  id: 'edition-boar-sheet',
  title: 'The boar at bay',
  singleSheet: true,
  imprints: [{ place: 'London', publisher: 'Laurie & Whittle' }],
  date: { edtf: '[1755..1761]' },
  languages: ['en'],
};

/** Invented records of each kind that can be cited besides editions, each with something that goes wrong easily. */
export const citables: readonly Citable[] = [
  {
    what: 'plate',
    id: 'plate-net-menders',
    title: 'The net menders',
    form: 'PLATE',
    agents: [person('Rook, J.', 'etr'), person('Marlow, Ann', 'dln', { certainty: 'probable' })],
    technique: 'etching',
    lettering: 'A. Marlow del. J. Rook fec.',
    edition: patternBook,
    locator: { volume: 'Vol. 2', page: '56', number: '4', state: 2, colouring: 'by hand' },
  },
  {
    what: 'plate',
    id: 'plate-frontispiece',
    title: 'Minerva & the Muses',
    form: 'PLATE',
    agents: [person('van der Meer, Jan', 'egr', { certainty: 'possible' })],
    edition: { ...patternBook, date: { edtf: '176X' } },
    locator: { page: 'frontispiece' },
  },
  {
    what: 'plate',
    id: 'plate-tailpiece',
    form: 'VIGNETTE',
    edition: {
      id: 'edition-german-fables',
      title: 'Der Hase im Klee',
      agents: [person('Müßig, Jörg', 'aut')],
      imprints: [{ place: 'Nürnberg', publisher: 'Weiß und Söhne' }],
      date: { edtf: '[..1765]' },
      languages: ['de'],
    },
    locator: { page: '117' },
  },
  {
    what: 'plate',
    id: 'plate-horse-fair',
    title: 'The Horse Fair',
    form: 'CUT',
    agents: [person('Roe, John', 'wde')],
    technique: 'wood engraving',
    edition: magazine,
    locator: { page: '161' },
  },
  {
    what: 'plate',
    id: 'plate-magazine-cover',
    title: 'Winter',
    form: 'COVER',
    edition: {
      ...magazine,
      id: 'edition-saturday-visitor-june',
      number: 'Midsummer number',
      date: { edtf: '1834-22' },
    },
    locator: { cover: true },
  },
  {
    what: 'plate',
    id: 'plate-boar-at-bay',
    title: 'The boar at bay',
    form: 'SINGLE_SHEET_PRINT',
    agents: [person('Rook, J.', 'egr')],
    technique: 'etching and engraving',
    size: '30 × 40 cm',
    after: [{ title: 'The Boar Hunt', agents: [person('de La Tour, Marie', 'art')] }],
    edition: sheet,
    locator: {},
  },
  { what: 'plate', id: 'plate-of-no-edition', technique: 'mezzotint', date: { edtf: '17XX' } },
  {
    what: 'artwork',
    id: 'artwork-boar-hunt',
    title: 'The Boar Hunt',
    agents: [person('de La Tour, Marie', 'art')],
    medium: 'oil on canvas',
    size: '60 × 80 cm',
    date: { edtf: '1750?/1755' },
    survival: 'LOST',
    languages: ['en'],
  },
  {
    what: 'piece',
    id: 'piece-shore-dish',
    title: 'Dish with shore scenes',
    form: 'dish',
    medium: 'tin-glazed earthenware, painted in blue',
    size: 'diameter 38 cm',
    agents: [firm('Pike, Marlow & Co.', 'mfr'), person('Ohlsen, Peter', 'art', { certainty: 'probable' })],
    date: { edtf: '1766', asWritten: 'E 1766' },
    marks: [{ reading: 'E 1766', position: 'on the foot' }, { position: 'on the rim' }],
    languages: ['en'],
  },
  { what: 'piece', id: 'piece-no-title', form: 'tankard', date: { edtf: '[1764,1766]' } },
  {
    what: 'exemplar',
    id: 'exemplar-holm-copy',
    shelfmark: 'Holm Library, Kb 12',
    wants: 'plates 3 and 7',
    access: 'https://example.org/kb12',
    edition: patternBook,
  },
  { what: 'exemplar', id: 'exemplar-boar-sheet', shelfmark: 'Holm Library, print room', edition: sheet },
  { what: 'exemplar', id: 'exemplar-album', title: 'Album of birds', shelfmark: 'Holm Library, Album 3' },
  {
    what: 'source',
    id: 'reference-shore-and-kiln',
    csl: {
      id: 'shore-and-kiln',
      type: 'book',
      title: 'Shore and kiln',
      author: [{ family: 'Lindqvist', given: 'Astrid' }],
      issued: { 'date-parts': [[1968]] },
      publisher: 'Holm Press',
      'publisher-place': 'Flensburg',
      language: 'en',
    },
  },
  { what: 'source', id: 'reference-letter', title: 'Letter of a collector' },
];

/** One of them by the words of its id. */
export function citable(words: string): Citable {
  const found = citables.find(({ id }) => id.endsWith(`-${words}`));
  if (found === undefined) throw new Error(`no ${words} among the examples`);
  return found;
}
