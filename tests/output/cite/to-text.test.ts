import { describe, expect, test } from 'vitest';
import { bundledStyles } from '../../../src/output/cite/bundled-styles.ts';
import type { CitableEdition } from '../../../src/output/cite/citable.ts';
import { cite } from '../../../src/output/cite/cite.ts';
import { toCsl } from '../../../src/output/cite/to-csl.ts';
import { mostTexts, type TextOptions, toText } from '../../../src/output/cite/to-text.ts';
import { edition, editions } from './editions.ts';

const text = (of: CitableEdition, options: TextOptions) =>
  toText([toCsl(of, options.locale ?? 'en')], options)[0]!.text;

describe('Chicago, 17th edition', () => {
  // Forms: examples of chicagomanualofstyle.org/tools_citationguide for a book, worked with citeproc-js 1.4.61.
  const annual: CitableEdition = {
    id: 'a',
    title: 'The Winter Annual',
    agents: [{ name: 'E. Editor', sortName: 'Editor, E.', kind: 'person', role: 'edt' }],
    imprints: [{ place: 'London', publisher: 'Smith and Elder' }],
    date: { edtf: '1834' },
  };
  const undated = (edtf: string): CitableEdition => ({
    id: 'u',
    title: 'Undated Book',
    imprints: [{ place: 'London', publisher: 'Tegg' }],
    date: { edtf },
  });

  test('a book by an editor, as entry and as note', () => {
    expect(text(annual, {})).toBe('Editor, E., ed. The Winter Annual. London: Smith and Elder, 1834.');
    expect(text(annual, { form: 'CITATION' })).toBe(
      'E. Editor, ed., The Winter Annual (London: Smith and Elder, 1834).',
    );
  });

  test('a reprint', () => {
    expect(text(edition('reprint-dublin'), {})).toBe(
      'Doe, Anna. Sketches of Country Life. London: Smith and Elder, 1834. Reprint, Dublin: Carey and Lea, 1838.',
    );
    expect(text(edition('reprint-dublin'), { form: 'CITATION' })).toBe(
      'Anna Doe, Sketches of Country Life (London: Smith and Elder, 1834; Dublin: Carey and Lea, 1838).',
    );
  });

  test('dates that are uncertain, ranges, open or worded', () => {
    expect(['1764~', '1826/1827', '1764/..', '[..1765]', '[1760..1770]'].map(date => text(undated(date), {}))).toEqual([
      'Undated Book. London: Tegg, [1764?].',
      'Undated Book. London: Tegg, 1826–1827.',
      'Undated Book. London: Tegg, 1764–.',
      'Undated Book. London: Tegg, not after 1765.',
      'Undated Book. London: Tegg, 1760–70.',
    ]);
  });

  test('the capitals of titles in no stated or another language stay as they are', () => {
    expect(text({ id: 'x', title: 'of hares and men' }, {})).toBe('of hares and men, n.d.');
    expect(text(edition('german-nouns'), { locale: 'de' })).toBe(
      'Müßig, Jörg. Der Hase im Klee & andere Fabeln für Kinder. 2. Aufl. Nürnberg: Weiß & Söhne, [1764?].',
    );
  });
});

test('MHRA', () => {
  expect(text(edition('plain-book'), { style: 'mhra' })).toBe(
    'Doe, Anna, Sketches of Country Life, 2nd edn (London: Smith and Elder, 1837)',
  );
});

test('ISO 690 prints the edition statement, and marks an uncertain date though the style does not', () => {
  expect(text(edition('plain-book'), { style: 'iso690' })).toBe(
    'DOE, Anna, 1837. Sketches of country life. 2nd ed. London: Smith and Elder. Engraver: Rook, J.',
  );
  expect(text(edition('german-nouns'), { style: 'iso690', locale: 'de-DE' })).toBe(
    'MÜSSIG, Jörg, [1764?]. Der Hase im Klee & andere Fabeln für Kinder. Zweite Auflage. Nürnberg: Weiß & Söhne',
  );
  expect(text(edition('season'), { style: 'iso690' })).toBe('The fashion book, 1806. London: Bell.');
});

test('APA and MLA', () => {
  expect(text(edition('plain-book'), { style: 'apa' })).toBe(
    'Doe, A. (1837). Sketches of country life (I. Pen, Ill.; 2nd ed.). Smith and Elder.',
  );
  expect(text(edition('plain-book'), { style: 'mla' })).toBe(
    'Doe, Anna. Sketches of Country Life. Illustrated by Ivor Pen, 2nd ed., Smith and Elder, 1837.',
  );
});

test('each entry stands on its own though the author is the same', () => {
  const both = cite([edition('plain-book'), edition('reprint-dublin')], { format: 'TEXT', style: 'chicago' });
  expect(both.items.map(item => item.text.slice(0, 10))).toEqual(['Doe, Anna.', 'Doe, Anna.']);
});

test('an edition that has changed since it was last cited is cited anew', () => {
  const before = { id: 'same', title: 'Erstausgabe' };
  expect(text(before, {})).toBe('Erstausgabe, n.d.');
  expect(text({ ...before, title: 'Neuausgabe', date: { edtf: '1801' } }, {})).toBe('Neuausgabe, 1801.');
  expect(text({ ...before, title: 'Drittausgabe' }, { form: 'CITATION' })).toBe('Drittausgabe, n.d.');
});

test('angle brackets and lines that look like fields are text', () => {
  const odd = { id: 'x', title: 'On <i> and </b>: a & b', languages: ['fr'], identifiers: [] };
  expect(text(odd, {})).toBe('On <i> and </b>: a & b, n.d.');
  const item = { ...toCsl({ id: 'y', title: 'Title' }), note: 'publisher: Nobody\nissued: 1999' };
  expect(toText([item])[0]?.text).toBe('Title, n.d.');
});

test.each(bundledStyles.map(style => style.name))('%s names title and year of every edition', name => {
  for (const of of editions) {
    const year = /\d{4}/.exec(JSON.stringify(toCsl(of).issued ?? ''))?.[0] ?? '';
    const made = text({ ...of, title: 'Titulus', languages: ['la'] }, { style: name });
    expect(made).toContain('Titulus');
    expect(made).toContain(year);
  }
});

test('more than the limit is refused before the engine is held up', () => {
  const many = Array.from({ length: mostTexts + 1 }, (_, i) => toCsl({ id: `e${i}`, title: 'T' }));
  expect(() => toText(many)).toThrow(expect.objectContaining({ code: 'QUERY_TOO_COSTLY' }));
});
