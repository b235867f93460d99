import { describe, expect, test } from 'vitest';
import type { CitableDate, CitablePlate } from '../../../src/output/cite/citable.ts';
import { issueNumber } from '../../../src/output/cite/issue-number.ts';
import { plateLocator } from '../../../src/output/cite/plate-locator.ts';
import { toCsl } from '../../../src/output/cite/to-csl.ts';
import { citable } from './citables.ts';

const csl = (words: string, language?: string) => toCsl(citable(words), language);

test('a plate in a book is a part of it, with its place in words', () => {
  expect(csl('net-menders')).toEqual({
    id: 'plate-net-menders',
    type: 'chapter',
    title: 'The net menders',
    author: [{ family: 'Rook', given: 'J.' }],
    'container-title': 'The painter’s companion & pattern book',
    'container-author': [{ family: 'Doe', given: 'Anna' }],
    editor: [{ family: 'Vane', given: 'Ruth' }],
    translator: [{ family: 'Ibáñez', given: 'Álvaro' }],
    edition: 2,
    volume: '2',
    'number-of-volumes': 2,
    page: 'plate 4, facing p. 56',
    publisher: 'Smith, Elder & Co.',
    'publisher-place': 'London',
    issued: { 'date-parts': [[1764]], circa: true },
    'collection-title': 'Library of useful things',
    genre: 'etching',
    language: 'en',
    note: 'Delineator: Marlow, Ann (probable). Lettered: A. Marlow del. J. Rook fec. State 2. Colouring: by hand.',
    custom: {
      id: 'plate-net-menders',
      edition: 'edition-pattern-book',
      edtf: '1764~',
      dateAsWritten: '[1764?]',
      lettering: 'A. Marlow del. J. Rook fec.',
      technique: 'etching',
      editionStatement: '2nd ed.',
    },
  });
});

test('a date of the plate itself is in the note, for it does not date the volume', () => {
  const dated = (words: string, date: CitableDate, undated = false) => {
    const plate = citable(words) as CitablePlate;
    const { date: _, ...whole } = plate.edition!;
    const { issued, note } = toCsl({ ...plate, date, ...(undated ? { edition: whole } : {}) });
    return [issued, note];
  };
  expect(dated('horse-fair', { edtf: '1833-12', asWritten: 'Dec. 1833' })).toEqual([
    { 'date-parts': [[1834, 4, 26]] },
    'Date of the plate: Dec. 1833.',
  ]);
  expect(dated('horse-fair', { edtf: '1833' }, true)).toEqual([undefined, 'Date of the plate: 1833.']);
  expect(dated('horse-fair', { edtf: '1834-04-26' })[1]).toBeUndefined();
  expect(dated('net-menders', { edtf: '1763' })[1]).toMatch(/ Lettered: .* Date of the plate: 1763\. State 2\. /);
  expect(dated('boar-at-bay', { edtf: '1763' })[1]).not.toContain('Date of the plate');
});

test('a cut in a number of a serial is an article with number, day and page', () => {
  expect(csl('horse-fair')).toEqual({
    id: 'plate-horse-fair',
    type: 'article-journal',
    title: 'The Horse Fair',
    author: [{ family: 'Roe', given: 'John' }],
    'container-title': 'The Saturday Visitor',
    volume: '3',
    issue: '131',
    page: '161',
    publisher: 'Barker',
    'publisher-place': 'London',
    issued: { 'date-parts': [[1834, 4, 26]] },
    genre: 'wood engraving',
    language: 'en',
    ISSN: '0000-0019',
    custom: {
      id: 'plate-horse-fair',
      edition: 'edition-saturday-visitor-131',
      edtf: '1834-04-26',
      technique: 'wood engraving',
    },
  });
});

test('a single-sheet print is a picture by its printmaker after its painter', () => {
  expect(csl('boar-at-bay')).toEqual({
    id: 'plate-boar-at-bay',
    type: 'graphic',
    title: 'The boar at bay',
    author: [{ family: 'Rook', given: 'J.' }],
    'original-author': [{ family: 'de La Tour', given: 'Marie' }],
    publisher: 'Laurie & Whittle',
    'publisher-place': 'London',
    issued: { literal: '1755–61' },
    medium: 'etching and engraving',
    dimensions: '30 × 40 cm',
    language: 'en',
    note: 'After The Boar Hunt by Marie de La Tour.',
    custom: {
      id: 'plate-boar-at-bay',
      edition: 'edition-boar-sheet',
      edtf: '[1755..1761]',
      technique: 'etching and engraving',
    },
  });
});

test('an artwork and a piece are pictures with medium, size and what is not sure', () => {
  expect(csl('boar-hunt')).toEqual({
    id: 'artwork-boar-hunt',
    type: 'graphic',
    title: 'The Boar Hunt',
    author: [{ family: 'de La Tour', given: 'Marie' }],
    issued: { 'date-parts': [[1750], [1755]], circa: true },
    medium: 'oil on canvas',
    dimensions: '60 × 80 cm',
    language: 'en',
    note: 'Lost.',
    custom: { id: 'artwork-boar-hunt', edtf: '1750?/1755' },
  });
  expect(csl('shore-dish')).toEqual({
    id: 'piece-shore-dish',
    type: 'graphic',
    title: 'Dish with shore scenes',
    author: [{ literal: 'Pike, Marlow & Co.' }],
    issued: { 'date-parts': [[1766]] },
    genre: 'dish',
    medium: 'tin-glazed earthenware, painted in blue',
    dimensions: 'diameter 38 cm',
    language: 'en',
    note: 'Artist: Ohlsen, Peter (probable). Marked “E 1766” on the foot.',
    custom: { id: 'piece-shore-dish', edtf: '1766', dateAsWritten: 'E 1766' },
  });
});

test('a painter is the author of a piece whose maker is not known', () => {
  const painter = { name: 'P. Ohlsen', kind: 'person', role: 'art', certainty: 'possible' } as const;
  expect(toCsl({ what: 'piece', id: 'piece-a', title: 'Dish', agents: [painter] })).toMatchObject({
    author: [{ literal: 'P. Ohlsen' }],
    note: 'Attributed to P. Ohlsen as artist (possible).',
  });
});

test('an exemplar is its edition with holder, shelfmark and what it wants', () => {
  expect(csl('holm-copy')).toMatchObject({
    id: 'exemplar-holm-copy',
    type: 'book',
    title: 'The painter’s companion & pattern book',
    archive: 'Holm Library, Kb 12',
    URL: 'https://example.org/kb12',
    note: 'Wants plates 3 and 7.',
    custom: { id: 'exemplar-holm-copy', edition: 'edition-pattern-book', shelfmark: 'Holm Library, Kb 12' },
  });
  expect(csl('album')).toEqual({
    id: 'exemplar-album',
    type: 'collection',
    title: 'Album of birds',
    archive: 'Holm Library, Album 3',
    custom: { id: 'exemplar-album', shelfmark: 'Holm Library, Album 3' },
  });
});

describe('a secondary source', () => {
  const source = (item: unknown) => toCsl({ what: 'source', id: 'reference-a', title: 'A', csl: item });

  test('is the item that is recorded, in the forms written here', () => {
    expect(
      source({
        id: 'own-id',
        type: 'chapter',
        title: 'On tiles',
        volume: 3,
        author: [{ family: 'Berg', given: 'Jan', 'non-dropping-particle': 'van den' }],
        issued: { 'date-parts': [['1968', '5']], circa: 1 },
        accessed: { raw: '2020-01-02' },
      }),
    ).toEqual({
      id: 'reference-a',
      type: 'chapter',
      title: 'On tiles',
      volume: '3',
      author: [{ family: 'van den Berg', given: 'Jan' }],
      issued: { 'date-parts': [[1968, 5]], circa: true },
      accessed: { literal: '2020-01-02' },
      custom: { id: 'reference-a' },
    });
  });

  test.each([[null], ['a book'], [[]], [{ title: 'no type' }], [{ type: 'book', title: 7 }]])('%j is refused', item => {
    expect(() => source(item)).toThrow(
      expect.objectContaining({ code: 'INPUT_INVALID', place: { key: 'reference-a', field: 'csl' } }),
    );
  });
});

describe('where a plate stands', () => {
  const at = (form: 'PLATE' | 'CUT' | 'VIGNETTE' | undefined, locator: object, language = 'en') =>
    plateLocator({ what: 'plate', id: 'plate-a', locator, ...(form === undefined ? {} : { form }) }, language);

  test.each([
    ['PLATE', { page: '56' }, 'plate facing p. 56'],
    ['PLATE', { number: '4' }, 'plate 4'],
    ['PLATE', { page: 'xii', number: 'IV' }, 'plate IV, facing p. xii'],
    ['PLATE', { page: 'facing the title' }, 'facing the title'],
    ['CUT', { page: '117' }, '117'],
    ['CUT', { page: '117', number: '3' }, '117, cut 3'],
    ['VIGNETTE', { number: '2' }, 'vignette 2'],
    [undefined, { page: '9' }, '9'],
    [undefined, { number: '9' }, 'no. 9'],
    ['CUT', { cover: true, page: '1' }, 'cover'],
    ['PLATE', {}, undefined],
  ] as const)('%s at %j', (form, locator, words) => {
    expect(at(form, locator)).toBe(words);
  });

  test('is said in the language of the citation', () => {
    const said = ['de-DE', 'fr', 'it', 'es', 'nl', 'pl'].map(language =>
      at('PLATE', { page: '56', number: '4' }, language),
    );
    expect(said).toEqual([
      'Tafel 4, gegenüber S. 56',
      'planche 4, en regard de la p. 56',
      'tavola 4, di fronte a p. 56',
      'lámina 4, frente a la p. 56',
      'plaat 4, tegenover p. 56',
      'plate 4, facing p. 56',
    ]);
  });

  test('and what it is called without a caption', () => {
    expect([csl('tailpiece').title, csl('tailpiece', 'de').title, csl('no-edition').title]).toEqual([
      '[vignette]',
      '[Vignette]',
      '[print]',
    ]);
  });
});

describe('the number of a serial', () => {
  test.each([
    ['Vol. 3, no. 131', { volume: '3', issue: '131' }],
    ['Bd. 2, Heft 5', { volume: '2', issue: '5' }],
    ['tome IV. n° 12', { volume: 'IV', issue: '12' }],
    ['No. 131', { issue: '131' }],
    ['131', { issue: '131' }],
    ['Vol. 3', { volume: '3' }],
    ['March 1765', {}],
    ['April 1765', { issue: 'April 1765' }],
    ['Midsummer number', { issue: 'Midsummer number' }],
    [undefined, {}],
  ])('%s', (number, parts) => {
    const edition = { id: 'edition-a', title: 'A', date: { edtf: '1765-03' } };
    expect(issueNumber(number === undefined ? edition : { ...edition, number })).toEqual(parts);
  });
});
