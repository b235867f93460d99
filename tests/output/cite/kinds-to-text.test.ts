import { describe, expect, test } from 'vitest';
import { bundledLocales, bundledStyles } from '../../../src/output/cite/bundled-styles.ts';
import type { CitableAgent } from '../../../src/output/cite/citable.ts';
import { cite } from '../../../src/output/cite/cite.ts';
import { toCsl } from '../../../src/output/cite/to-csl.ts';
import { toText } from '../../../src/output/cite/to-text.ts';
import { citable } from './citables.ts';

const text = (words: string, style: string, locale?: string) =>
  plain(cite([citable(words)], { format: 'TEXT', style, ...(locale === undefined ? {} : { locale }) }).text);
/** Spaces that do not break are spaces to a reader. */
const plain = (written: string | undefined) => (written ?? '').replace(/[\u00A0\u202F]/g, ' ').trimEnd();

describe('a plate in a book', () => {
  test.each([
    [
      'chicago',
      'Rook, J. “The Net Menders.” Etching. In The Painter’s Companion & Pattern Book, by Anna Doe, vol. 2, plate 4, facing p. 56. Edited by Ruth Vane, translated by Álvaro Ibáñez, 2nd ed. Library of Useful Things. London: Smith, Elder & Co., [1764?].',
    ],
    [
      'chicago-author-date',
      'Rook, J. [1764?]. “The Net Menders.” Etching. In The Painter’s Companion & Pattern Book, by Anna Doe, edited by Ruth Vane, translated by Álvaro Ibáñez, 2nd ed., 2, plate 4, facing p. 56. Library of Useful Things. London: Smith, Elder & Co.',
    ],
    [
      'mhra',
      'Rook, J., ‘The Net Menders’, in The Painter’s Companion & Pattern Book, by Anna Doe, ed. by Ruth Vane, trans. by Álvaro Ibáñez, Library of Useful Things, 2nd edn, 2 vols (London: Smith, Elder & Co., [1764?]), ii, plate 4, facing p. 56',
    ],
    [
      'iso690',
      'ROOK, J., [1764?]. The net menders. In: DOE, Anna, The painter’s companion & pattern book. 2nd ed. London: Smith, Elder & Co. Vol. 2, plate 4, facing p. 56. Library of useful things. Delineator: Marlow, Ann (probable). Lettered: A. Marlow del. J. Rook fec. State 2. Colouring: by hand.',
    ],
    [
      'apa',
      'Rook, J. (ca. 1764). The net menders (Á. Ibáñez, Trans.) [Etching]. In R. Vane (Ed.), The painter’s companion & pattern book / Anna Doe (2nd ed., Vol. 2, plate 4, facing p. 56). Smith, Elder & Co.',
    ],
    [
      'mla',
      'Rook, J. “The Net Menders.” The Painter’s Companion & Pattern Book, by Anna Doe, edited by Ruth Vane, translated by Álvaro Ibáñez, 2nd ed., vol. 2, Smith, Elder & Co., [1764?], plate 4, facing p. 56.',
    ],
  ])('in the style %s', (style, written) => {
    expect(text('net-menders', style)).toBe(written);
  });

  test('without a maker keeps the author of the book', () => {
    expect(text('tailpiece', 'chicago')).toBe(
      '“[vignette].” In Der Hase im Klee / Jörg Müßig, 117. Nürnberg: Weiß und Söhne, not after 1765.',
    );
    expect(text('tailpiece', 'mhra', 'de')).toBe(
      '„[Vignette]“, in Der Hase im Klee, von Jörg Müßig (Nürnberg: Weiß und Söhne, nicht nach 1765), S. 117',
    );
  });

  test('has its place once in a note', () => {
    expect(plain(toText([toCsl(citable('net-menders'))], { form: 'CITATION' })[0]?.text)).toBe(
      'J. Rook, “The Net Menders,” etching, in The Painter’s Companion & Pattern Book, by Anna Doe, ed. Ruth Vane, trans. Álvaro Ibáñez, 2nd ed., vol. 2, 2 vols., Library of Useful Things (London: Smith, Elder & Co., [1764?]), plate 4, facing p. 56.',
    );
  });
});

describe('a cut in a number of a serial', () => {
  test.each([
    ['chicago', 'Roe, John. “The Horse Fair.” Wood engraving. The Saturday Visitor 3, no. 131 (April 26, 1834): 161.'],
    ['mhra', 'Roe, John, ‘The Horse Fair’, The Saturday Visitor, 3.131 (1834), p. 161'],
    ['iso690', 'ROE, John, 1834. The Horse Fair. The Saturday Visitor. 26 April 1834. Vol. 3, no. 131, p. 161.'],
    ['apa', 'Roe, J. (1834). The Horse Fair [Wood engraving]. The Saturday Visitor, 3(131), 161.'],
    ['mla', 'Roe, John. “The Horse Fair.” The Saturday Visitor, vol. 3, no. 131, Apr. 1834, p. 161.'],
  ])('in the style %s', (style, written) => {
    expect(text('horse-fair', style)).toBe(written);
  });

  const march = (style: string) => {
    const edition = {
      id: 'edition-a',
      title: 'The Cabinet',
      serial: true,
      number: 'March 1765',
      date: { edtf: '1765-03' },
    };
    const cut = { what: 'plate', id: 'plate-a', title: 'A light', form: 'CUT', locator: { page: '117' } } as const;
    return plain(cite([{ ...cut, edition }], { format: 'TEXT', style }).text);
  };

  test('of a month has its month in every style, once where the style gives it', () => {
    expect(bundledStyles.map(({ name }) => march(name))).toEqual([
      '“A light.” The Cabinet, March 1765, 117.',
      '“A light.” 1765. The Cabinet, March, 117.',
      '‘A light’, The Cabinet, March 1765 (1765), p. 117',
      'A light, 1765. The Cabinet. March 1765, p. 117.',
      'A light. (1765). The Cabinet, March 1765, 117.',
      '“A light.” The Cabinet, Mar. 1765, p. 117.',
    ]);
  });

  test('of a number in words has no label before it', () => {
    expect(text('magazine-cover', 'chicago')).toBe(
      '“Winter.” The Saturday Visitor, Midsummer number (Summer 1834): cover.',
    );
    expect(text('magazine-cover', 'mhra', 'fr')).toBe(
      '« Winter », The Saturday Visitor, Midsummer number (1834), couverture',
    );
  });
});

describe('pictures, objects and copies', () => {
  test.each([
    ['boar-at-bay', 'Rook, J. The Boar at Bay. Etching and engraving, 30 × 40 cm. London: Laurie & Whittle, 1755–61.'],
    ['boar-hunt', 'La Tour, Marie de. The Boar Hunt. [1750–1755?]. Oil on canvas, 60 × 80 cm.'],
    [
      'shore-dish',
      'Pike, Marlow & Co. Dish with Shore Scenes. 1766. Tin-glazed earthenware, painted in blue, diameter 38 cm.',
    ],
    ['no-title', '[tankard]. 1764 or 1766.'],
    [
      'holm-copy',
      'Doe, Anna. The Painter’s Companion & Pattern Book. Edited by Ruth Vane. Translated by Álvaro Ibáñez. 2nd ed. 2 vols. Library of Useful Things. London: Smith, Elder & Co., [1764?]. https://example.org/kb12. Holm Library, Kb 12.',
    ],
    ['boar-sheet', 'The Boar at Bay. London: Laurie & Whittle, 1755–61. Holm Library, print room.'],
    ['album', '“Album of birds,” n.d. Holm Library, Album 3.'],
    ['shore-and-kiln', 'Lindqvist, Astrid. Shore and Kiln. Flensburg: Holm Press, 1968.'],
  ])('%s in the style chicago', (words, written) => {
    expect(text(words, 'chicago')).toBe(written);
  });
});

describe('every style in every language', () => {
  const each = ['net-menders', 'tailpiece', 'horse-fair', 'magazine-cover', 'holm-copy', 'shore-dish'].map(citable);
  const pairs = bundledStyles.flatMap(({ name }) => bundledLocales.map(locale => [name, locale] as const));

  test.each(pairs)('%s in %s writes each on a line, with title, copy and place', (style, locale) => {
    const { items } = cite(each, { format: 'TEXT', style, locale });
    for (const [i, { text: written }] of items.entries()) {
      const { title, custom, page } = toCsl(each[i]!, locale);
      expect(written).toMatch(/^[^\n\uE000-\uF8FF]+$/u);
      expect(fold(written)).toContain(fold(title));
      if (custom.shelfmark !== undefined) expect(written.endsWith(`${custom.shelfmark}.`)).toBe(true);
      if (page !== undefined) expect(fold(written)).toContain(fold(page));
      expect(written).not.toMatch(
        /\b(?:pp?|S|Nr|n|no|nr|p[aá]gs?)\.? (?:plate|Tafel|planche|tavola|lámina|plaat|cover|frontisp)/,
      );
    }
  });
});

function fold(words: string): string {
  return words.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}

describe('the order of a list', () => {
  const person = (sortName: string): CitableAgent => {
    const [family, given] = sortName.split(', ');
    return { name: `${given} ${family}`, sortName, kind: 'person', role: 'aut' };
  };
  const firm = (name: string, sortName?: string): CitableAgent => ({
    ...{ name, kind: 'firm', role: 'aut' },
    ...(sortName === undefined ? {} : { sortName }),
  });
  const listed = (style: string, agents: readonly CitableAgent[]) => {
    const books = agents.map((agent, i) => ({
      id: `edition-${i}`,
      title: `T${i}`,
      agents: [agent],
      date: { edtf: '1800' },
    }));
    return cite(books, { format: 'TEXT', style })
      .text.trimEnd()
      .split('\n')
      .map(line => agents[Number(/\bT(\d+)/.exec(line)![1])]!.name);
  };

  // Particles as each style says (CSL: demote-non-dropping-particle); Chicago sorts them apart, ISO 690 and MLA not.
  const particles = [
    person('van der Meer, Jan'),
    person('La Tour, Jean de'),
    person('de La Tour, Marie'),
    person('Zink, A.'),
  ];

  test.each([
    ['chicago', ['Jean de La Tour', 'Marie de La Tour', 'Jan van der Meer', 'A. Zink']],
    ['mhra', ['Jean de La Tour', 'Marie de La Tour', 'Jan van der Meer', 'A. Zink']],
    ['iso690', ['Marie de La Tour', 'Jean de La Tour', 'Jan van der Meer', 'A. Zink']],
    ['mla', ['Marie de La Tour', 'Jean de La Tour', 'Jan van der Meer', 'A. Zink']],
  ])('of persons with particles in the style %s', (style, names) => {
    expect(listed(style, particles)).toEqual(names);
  });

  const firms = [
    firm('The Society for Arts'),
    firm('Society of Painters'),
    firm('P. Hartigh in the Gilt Swan', 'Hartigh, P., in the Gilt Swan'),
    firm('Die Erben Homann', 'Homann Erben'),
    firm('Pike, Marlow & Co.'),
  ];
  const filed = [
    'P. Hartigh in the Gilt Swan',
    'Die Erben Homann',
    'Pike, Marlow & Co.',
    'The Society for Arts',
    'Society of Painters',
  ];

  test.each(bundledStyles.map(({ name }) => name))('of firms is as they are filed in the style %s', style => {
    expect(listed(style, firms)).toEqual(filed);
  });

  test('and each firm is named as it is', () => {
    const named = (style: string) =>
      plain(cite([{ id: 'a', title: 'T', agents: firms.slice(0, 3) }], { format: 'TEXT', style }).text);
    expect(named('chicago')).toBe(
      'The Society for Arts, Society of Painters, and P. Hartigh in the Gilt Swan. T, n.d.',
    );
    expect(named('iso690')).toBe(
      'THE SOCIETY FOR ARTS, SOCIETY OF PAINTERS, and P. HARTIGH IN THE GILT SWAN, [no date]. T.',
    );
  });
});
