import { describe, expect, test } from 'vitest';
import { cite } from '../../../src/output/cite/cite.ts';
import { edition, editions } from './editions.ts';

const bibtex = (words: string) => cite([edition(words)], { format: 'BIBTEX' }).text;

test('a book', () => {
  expect(bibtex('plain-book')).toBe(`@book{doe1837-plain-book,
  author = {Doe, Anna},
  title = {{Sketches of country life}},
  edition = {2},
  address = {London},
  publisher = {{Smith and Elder}},
  year = {1837},
  language = {en},
  note = {Illustrated by Ivor Pen. Engraver: Rook, J.},
}
`);
});

test('a sheet on its own', () => {
  expect(bibtex('single-sheet')).toBe(`@misc{rook1794-single-sheet,
  author = {Rook, J.},
  title = {{The boar at bay}},
  address = {London},
  howpublished = {Laurie \\& Whittle},
  year = {1794},
  month = may,
  day = {12},
  language = {en},
  note = {Delineator: Marlow, Ann.},
}
`);
});

test('what TeX would read as a command is written by name', () => {
  expect(bibtex('tex-specials')).toContain(
    'title = {{50\\% off \\#1: {\\textbraceleft}tea{\\textbraceright} \\& \\$5\\_cups {\\textasciitilde} {\\textasciicircum} {\\textbackslash} {\\textless}b{\\textgreater}bold{\\textless}/b{\\textgreater} {\\textbar} "quoted" -{}- `{}`so\'{}\' ?{}`}},',
  );
});

describe('a date BibTeX cannot hold', () => {
  const field = (words: string, name: string) => new RegExp(`  ${name} = \\{(.*)\\},`).exec(bibtex(words))?.[1];

  test.each([
    ['german-nouns', 'ca. 1764', 'Date in EDTF: 1764{\\textasciitilde}'],
    ['corporate-and', '1801–1803', 'Date in EDTF: 1801/1803'],
    ['open-date', '1834–', 'Date in EDTF: 1834/..'],
    ['decade', '1760s', 'Date in EDTF: 176X'],
    ['not-after', 'not after 1765', 'Date in EDTF: [..1765]'],
    ['one-of-two', '1727 or 1728', 'Translated by Álvaro Ibáñez. Date in EDTF: [1727,1728]'],
    ['place-unknown', '1700–99', 'by a Lady. Date in EDTF: 17XX'],
  ])('%s: worded, and kept in the note', (words, year, note) => {
    expect([field(words, 'year'), field(words, 'note')]).toEqual([year, note]);
  });

  test('one it can hold leaves no note', () => {
    expect(field('corporate-author', 'note')).toBeUndefined();
  });
});

test('citation keys are plain, distinct and the same in every list', () => {
  const keys = (of: typeof editions) =>
    [...cite(of, { format: 'BIBTEX' }).text.matchAll(/^@\w+\{([^,]+),$/gm)].map(match => match[1]!);
  const all = keys(editions);
  expect(all.length).toBe(editions.length);
  expect(new Set(all).size).toBe(editions.length);
  expect(all.filter(key => !/^[a-z0-9-]+$/i.test(key))).toEqual([]);
  expect(keys(editions.toReversed())).toEqual(all.toReversed());
  expect(all.slice(2, 4)).toEqual(['mussig1764-german-nouns', 'anon1784-greek-title']);
});

test('an edition given twice is cited once', () => {
  const twice = cite([edition('plain-book'), edition('plain-book')], { format: 'BIBTEX' });
  expect(twice.items.map(item => item.id)).toEqual(['edition-plain-book']);
  expect(twice.text).toBe(bibtex('plain-book'));
});
