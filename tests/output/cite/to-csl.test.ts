import { describe, expect, test } from 'vitest';
import { toCsl } from '../../../src/output/cite/to-csl.ts';
import { edition, editions } from './editions.ts';

test('an edition with all its parts', () => {
  expect(toCsl(edition('many-hands'))).toEqual({
    id: 'edition-many-hands',
    type: 'book',
    title: 'The winter annual',
    editor: [
      { family: 'Vane', given: 'Ruth' },
      { family: 'Marlow', given: 'Ann' },
    ],
    publisher: 'Smith, Elder & Co.',
    'publisher-place': 'London',
    issued: { 'date-parts': [[1834]] },
    language: 'en',
    ISBN: '978-0-00-000000-2',
    URL: 'https://example.org/view?id=a_b%20c&page=#p1',
    note: 'Engraver: Rook, J.; Stone, K. Printer: Perkins & Bacon. Shelf catalogue A 12.',
    custom: { id: 'edition-many-hands', edtf: '1834' },
  });
});

test('a reprint names its original', () => {
  expect(toCsl(edition('reprint-dublin'))).toMatchObject({
    publisher: 'Carey and Lea',
    'original-date': { 'date-parts': [[1834]] },
    'original-publisher': 'Smith and Elder',
    'original-publisher-place': 'London',
  });
});

test('places and publishers of one imprint are parted by semicolons', () => {
  expect(toCsl(edition('several-places'))).toMatchObject({
    publisher: 'Tegg; Cumming & Co.; Griffin',
    'publisher-place': 'London; Dublin; Glasgow',
  });
});

test('a volume has its number, the set its count, the part its title', () => {
  expect(toCsl(edition('volume-of-set'))).toMatchObject({
    title: 'The naturalist’s cabinet. Birds',
    volume: '3',
    'number-of-volumes': 6,
    'collection-title': 'Library of useful things',
    author: [{ family: 'Pike', given: 'Thomas', suffix: 'Jr.' }],
  });
});

test('a number that says more than a number joins the title', () => {
  expect(toCsl({ id: 'a', title: 'The cabinet', number: 'Part the second, for May' }).title).toBe(
    'The cabinet. Part the second, for May',
  );
});

test('marks within a title stay as they are, also where something joins it', () => {
  const title = 'Views ... at that ... place! . etc.';
  const number = 'Part the second, for May';
  expect(toCsl({ id: 'a', title }).title).toBe(title);
  expect(toCsl({ id: 'a', title, number }).title).toBe(`${title} ${number}`);
  expect(toCsl({ id: 'a', title: `${title} Second`, number }).title).toBe(`${title} Second. ${number}`);
});

test('a sheet on its own is a picture by its printmaker', () => {
  expect(toCsl(edition('single-sheet'))).toMatchObject({
    type: 'graphic',
    author: [{ family: 'Rook', given: 'J.' }],
    note: 'Delineator: Marlow, Ann.',
  });
});

test('an agent named twice in one part is named once', () => {
  const agent = { name: 'Ann Marlow', sortName: 'Marlow, Ann', kind: 'person', role: 'aut' } as const;
  expect(toCsl({ id: 'a', title: 'T', agents: [agent, agent] }).author).toEqual([{ family: 'Marlow', given: 'Ann' }]);
});

/**
 * What csl-data.json allows of what is written here: name, and the JSON type of its value.
 * https://github.com/citation-style-language/schema/blob/v1.0.2/schemas/input/csl-data.json (additionalProperties: false)
 */
const allowed: Readonly<Record<string, readonly string[]>> = {
  id: ['string', 'number'],
  type: ['string'],
  title: ['string'],
  author: ['names'],
  editor: ['names'],
  compiler: ['names'],
  translator: ['names'],
  illustrator: ['names'],
  contributor: ['names'],
  edition: ['string', 'number'],
  volume: ['string', 'number'],
  'number-of-volumes': ['string', 'number'],
  publisher: ['string'],
  'publisher-place': ['string'],
  issued: ['date'],
  'original-title': ['string'],
  'original-date': ['date'],
  'original-publisher': ['string'],
  'original-publisher-place': ['string'],
  'collection-title': ['string'],
  language: ['string'],
  DOI: ['string'],
  ISBN: ['string'],
  ISSN: ['string'],
  URL: ['string'],
  note: ['string'],
  custom: ['object'],
};
const nameParts = ['family', 'given', 'dropping-particle', 'non-dropping-particle', 'suffix', 'literal'];

function typeOf(value: unknown): string {
  if (Array.isArray(value)) {
    const named = value.every(name => Object.entries(name).every(([k, v]) => nameParts.includes(k) && v !== ''));
    return named && value.length > 0 ? 'names' : 'list';
  }
  if (typeof value !== 'object' || value === null) return typeof value;
  const date = value as Record<string, unknown>;
  const keys = Object.keys(date);
  if (!keys.every(key => ['date-parts', 'season', 'circa', 'literal', 'raw'].includes(key))) return 'object';
  const parts = (date['date-parts'] ?? [[0]]) as unknown[][];
  return parts.length >= 1 && parts.length <= 2 && parts.every(p => p.length >= 1 && p.length <= 3)
    ? 'date'
    : 'bad date';
}

describe('every item keeps to the schema', () => {
  test.each(editions.map(e => [e.id, e] as const))('%s', (_, e) => {
    const item = toCsl(e);
    const wrong = Object.entries(item).filter(([key, value]) => !allowed[key]?.includes(typeOf(value)));
    expect(wrong).toEqual([]);
    expect(['book', 'graphic']).toContain(item.type);
  });
});
