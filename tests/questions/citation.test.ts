import { describe, expect, test } from 'vitest';
import { askStore } from '../../src/questions/ask-store.ts';
import { citationWorld } from '../support/citation-world.ts';
import type { Planted } from '../support/demo-store.ts';

const asked = async (id: string, planted: Planted = {}, added: Parameters<typeof citationWorld>[2] = []) => {
  const store = await citationWorld('memory', planted, added);
  const { text } = await askStore(store).citation({ of: [id], format: 'CSL_JSON' });
  await store.close();
  return (JSON.parse(text) as readonly Readonly<Record<string, unknown>>[])[0];
};

describe('a plate', () => {
  test('is cited in the earliest edition that has it', async () => {
    expect(await asked('plate-net-menders')).toEqual({
      id: 'plate-net-menders',
      type: 'chapter',
      title: 'The net menders',
      author: [{ family: 'Terwiel', given: 'Jacob' }],
      'container-title': 'Vermaak aan de oever',
      page: 'plate 4',
      publisher: 'P. Hartigh in the Gilt Swan',
      'publisher-place': 'Amsterdam',
      issued: { 'date-parts': [[1751]] },
      genre: 'etching',
      language: 'nl',
      note: 'Attributed to Jacob Terwiel as etcher (probable). Lettered: J. Terwiel fec.',
      custom: {
        id: 'plate-net-menders',
        edition: 'edition-first-dutch',
        edtf: '1751',
        dateAsWritten: '1751',
        lettering: 'J. Terwiel fec.',
        technique: 'etching',
      },
    });
  });

  test('is cited in another edition by its appearance there', async () => {
    expect(await asked('appearance-menders-english')).toMatchObject({
      id: 'appearance-menders-english',
      'container-title': 'Pleasures of the shore',
      edition: 2,
      volume: '2',
      page: 'plate IV, facing p. 30',
      issued: { 'date-parts': [[1764]], circa: true },
      note: 'Attributed to Jacob Terwiel as etcher (probable). Lettered: J. Terwiel fec. State 2.',
    });
  });

  test.each([
    ['withdrawn', { standing: 'WITHDRAWN' }],
    ['not held', { stance: 'REJECTED' }],
    ['an absence', { presence: 'ABSENT' }],
  ])('is not cited by an appearance that is %s, nor in that edition', async (_, change) => {
    const planted = { 'appearance-menders-first': change };
    await expect(asked('appearance-menders-first', planted)).rejects.toMatchObject({ code: 'INPUT_INVALID' });
    expect(await asked('plate-net-menders', planted)).toMatchObject({ 'container-title': 'Pleasures of the shore' });
  });

  test('of a number of a serial has page, number and month', async () => {
    expect(await asked('plate-light-house')).toMatchObject({
      type: 'article-journal',
      'container-title': 'The Cabinet',
      page: '117',
      issued: { 'date-parts': [[1765, 3]] },
      genre: 'woodcut',
      custom: { number: 'March 1765' },
    });
    expect(await asked('plate-wind-mill')).toMatchObject({ volume: '3', issue: '27', page: '12' });
  });

  test('on a sheet of its own is a picture after its painting', async () => {
    expect(await asked('plate-evening-ferry')).toMatchObject({
      type: 'graphic',
      author: [{ family: 'Terwiel', given: 'Jacob' }],
      'original-author': [{ family: 'van der Meer', given: 'Jan' }],
      publisher: 'P. Hartigh in the Gilt Swan',
      issued: { literal: '1755–61' },
      medium: 'engraving',
      dimensions: '30 × 40 cm',
      note: 'After The ferry at evening by Jan van der Meer.',
    });
  });

  test('of no edition is a picture of its own date', async () => {
    expect(await asked('plate-in-nothing')).toMatchObject({
      type: 'graphic',
      title: '[print]',
      issued: { literal: '1700–99' },
    });
  });
});

describe('an edition', () => {
  test('that has its text unchanged from another is its reprint', async () => {
    expect(await asked('edition-dutch-reprint')).toMatchObject({
      title: 'Vermaak aan den oever',
      'original-title': 'Vermaak aan de oever',
      'original-date': { 'date-parts': [[1751]] },
      'original-publisher': 'P. Hartigh in the Gilt Swan',
      'original-publisher-place': 'Amsterdam',
    });
    expect(await asked('edition-second-english')).not.toHaveProperty('original-date');
  });

  test('that is a volume under a title of its own is cited as the set', async () => {
    expect(await asked('edition-volume-birds')).toMatchObject({ title: 'Vermaak aan de oever. Vogels', volume: '2' });
  });

  test('with alternative dates is dated one of them', async () => {
    const of = 'edition-first-dutch';
    const alternativeTo = 'alternatives-of-date';
    const added = [
      { id: alternativeTo, kind: 'Alternatives' },
      { id: 'dating-other-year', kind: 'Dating', of, event: 'PUBLISHED', date: '1753', alternativeTo },
    ];
    expect(await asked(of, { 'dating-of-edition-first-dutch': { alternativeTo } }, added)).toMatchObject({
      issued: { literal: '1751 or 1753' },
      custom: { edtf: '[1751,1753]' },
    });
  });
});

describe('other records', () => {
  test('a piece has its maker, what is sure of its painter, and its marks', async () => {
    expect(await asked('piece-shore-dish')).toEqual({
      id: 'piece-shore-dish',
      type: 'graphic',
      title: 'Dish with shore scenes',
      author: [{ literal: 'Shore faience works' }],
      issued: { 'date-parts': [[1766]] },
      genre: 'dish',
      medium: 'painted faience',
      dimensions: 'diameter 38 cm',
      language: 'en',
      note: 'Artist: Ohlsen, Peter (probable). Marked “E 1766” on the foot.',
      custom: { id: 'piece-shore-dish', edtf: '1766', dateAsWritten: 'E 1766' },
    });
  });

  test('a firm is filed as its record says', async () => {
    const planted = { 'attribution-dish-works': { agent: 'agent-old-pottery' } };
    expect(await asked('piece-shore-dish', planted)).toMatchObject({
      author: [{ literal: 'The Old Hill Pottery' }],
      custom: { filedAs: { 'The Old Hill Pottery': 'Hill Pottery, The Old' } },
    });
  });

  test('an artwork has its medium and is said to be lost', async () => {
    expect(await asked('artwork-ferry-painting')).toEqual({
      id: 'artwork-ferry-painting',
      type: 'graphic',
      title: 'The ferry at evening',
      author: [{ family: 'van der Meer', given: 'Jan' }],
      medium: 'oil on panel',
      language: 'en',
      note: 'Lost.',
      custom: { id: 'artwork-ferry-painting' },
    });
  });

  test('an exemplar has edition, holder and shelfmark, and what it wants', async () => {
    expect(await asked('exemplar-first-copy')).toMatchObject({
      type: 'book',
      title: 'Vermaak aan de oever',
      archive: 'Holm Library, Kb 12',
      URL: 'https://example.org/kb12',
      note: 'Wants plate 7.',
    });
    expect(await asked('exemplar-made-up')).toMatchObject({ type: 'collection', title: 'Album of shore scenes' });
    expect(await asked('exemplar-without-name')).toMatchObject({ title: 'Holm Library, Album 4' });
  });

  test('a reference is cited by its own CSL-JSON, or by its name', async () => {
    expect(await asked('reference-with-item')).toMatchObject({
      id: 'reference-with-item',
      type: 'book',
      title: 'Shore and kiln',
    });
    expect(await asked('reference-without-item')).toMatchObject({ type: 'document', title: 'A letter' });
  });

  test.each([
    ['work-ferry-sheet', 'INPUT_INVALID'],
    ['agent-jan-painter', 'INPUT_INVALID'],
    ['dating-of-piece-shore-dish', 'INPUT_INVALID'],
    ['plate-never-made', 'NOT_FOUND'],
    ['nonsense', 'INPUT_INVALID'],
  ])('%s cannot be cited: %s', async (id, code) => {
    await expect(asked(id)).rejects.toMatchObject({ code });
  });
});

test('a piece is named in the language of the citation where it has a name in it', async () => {
  const store = await citationWorld('memory');
  const inLanguage = async (locale: string) =>
    (await askStore(store).citation({ of: ['piece-shore-dish'], format: 'TEXT', style: 'mhra', locale })).text;
  expect(await inLanguage('de-DE')).toContain('Schüssel mit Uferszenen');
  expect(await inLanguage('fr-FR')).toContain('Dish with Shore Scenes');
  await store.close();
});

test('each citation names what it is of: an appearance its plate', async () => {
  const store = await citationWorld('memory');
  const { items } = await askStore(store).citation({
    of: ['appearance-menders-english', 'piece-shore-dish'],
    format: 'RIS',
  });
  expect(items.map(({ id, record }) => [id, record])).toEqual([
    ['appearance-menders-english', 'plate-net-menders'],
    ['piece-shore-dish', 'piece-shore-dish'],
  ]);
  await store.close();
});

test('memory and SQLite are cited to equal bytes, in seven questions at most however many are cited', async () => {
  const of = [
    'plate-net-menders',
    'appearance-menders-english',
    'piece-shore-dish',
    'exemplar-first-copy',
    'edition-dutch-reprint',
  ];
  const all: string[] = [];
  for (const engine of ['memory', 'SQLite'] as const) {
    const store = await citationWorld(engine);
    let questions = 0;
    const counting = new Proxy(store, {
      get: (target, name) => {
        const value = Reflect.get(target, name) as unknown;
        if (typeof value !== 'function') return value;
        return (...args: readonly unknown[]) => {
          questions++;
          return Reflect.apply(value, target, args) as unknown;
        };
      },
    });
    for (const format of ['TEXT', 'CSL_JSON', 'BIBTEX', 'RIS'] as const)
      all.push(JSON.stringify(await askStore(counting).citation({ of, format })));
    expect(questions).toBeLessThanOrEqual(4 * 7);
    await store.close();
  }
  expect(all.slice(4)).toEqual(all.slice(0, 4));
});
