import { describe, expect, test } from 'vitest';
import { cite } from '../../../src/output/cite/cite.ts';
import { citable, citables } from './citables.ts';
import { edition } from './editions.ts';

const lines = (words: string) => cite([citable(words)], { format: 'RIS' }).text.split('\r\n');

test('a plate in a book', () => {
  expect(lines('net-menders')).toEqual([
    'TY  - CHAP',
    'ID  - plate-net-menders',
    'AU  - Rook, J.',
    'TI  - The net menders',
    'T2  - The painter’s companion & pattern book',
    'T3  - Library of useful things',
    'A2  - Vane, Ruth',
    'A4  - Ibáñez, Álvaro',
    'ET  - 2',
    'VL  - 2',
    'NV  - 2',
    'SP  - plate 4, facing p. 56',
    'CY  - London',
    'PB  - Smith, Elder & Co.',
    'PY  - ca. 1764',
    'LA  - en',
    'N1  - In a work by Anna Doe. Etching. Delineator: Marlow, Ann (probable). Lettered: A. Marlow del. J. Rook fec. State 2. Colouring: by hand. Date in EDTF: 1764~',
    'ER  - ',
    '',
  ]);
});

test('a cut in a number of a serial', () => {
  expect(lines('horse-fair')).toEqual([
    'TY  - JOUR',
    'ID  - plate-horse-fair',
    'AU  - Roe, John',
    'TI  - The Horse Fair',
    'T2  - The Saturday Visitor',
    'VL  - 3',
    'IS  - 131',
    'SP  - 161',
    'CY  - London',
    'PB  - Barker',
    'PY  - 1834',
    'DA  - 1834/04/26/',
    'M3  - wood engraving',
    'LA  - en',
    'SN  - 0000-0019',
    'ER  - ',
    '',
  ]);
});

test('a firm with a comma in its name is written without, and in full in the notes', () => {
  expect(lines('shore-dish')).toEqual([
    'TY  - ART',
    'ID  - piece-shore-dish',
    'AU  - Pike Marlow & Co.',
    'TI  - Dish with shore scenes',
    'PY  - 1766',
    'M3  - tin-glazed earthenware, painted in blue',
    'C3  - diameter 38 cm',
    'LA  - en',
    'N1  - Written in full: Pike, Marlow & Co. Artist: Ohlsen, Peter (probable). Marked “E 1766” on the foot.',
    'ER  - ',
    '',
  ]);
});

test('an exemplar has its holder and shelfmark as its call number', () => {
  expect(lines('holm-copy')).toContain('CN  - Holm Library, Kb 12');
});

test('records are parted by an empty line', () => {
  const { text, items } = cite(citables.slice(0, 2), { format: 'RIS' });
  expect(text).toBe(items.map(item => item.text).join('\r\n'));
});

describe('a date', () => {
  const dated = (edtf: string) =>
    cite([{ ...edition('title-only'), date: { edtf } }], { format: 'RIS' })
      .text.split('\r\n')
      .filter(line => /^(?:PY|DA|N1)/.test(line));

  test.each([
    ['1764', ['PY  - 1764']],
    ['1764-05', ['PY  - 1764', 'DA  - 1764/05//']],
    ['1764-05-12', ['PY  - 1764', 'DA  - 1764/05/12/']],
    ['1764-22', ['PY  - 1764', 'DA  - 1764///Summer']],
    ['0764', ['PY  - 0764']],
    ['-0249', ['PY  - 250 BC', 'N1  - Date in EDTF: -0249']],
    ['1764~', ['PY  - ca. 1764', 'N1  - Date in EDTF: 1764~']],
    ['1764?', ['PY  - 1764?', 'N1  - Date in EDTF: 1764?']],
    ['1764-05-12%', ['PY  - ca. 1764?', 'N1  - Date in EDTF: 1764-05-12%']],
    ['1764/1766', ['PY  - 1764–1766', 'N1  - Date in EDTF: 1764/1766']],
    ['1764/..', ['PY  - 1764–', 'N1  - Date in EDTF: 1764/..']],
    ['176X', ['PY  - 1760s', 'N1  - Date in EDTF: 176X']],
    ['[1760..1770]', ['PY  - 1760–1770', 'N1  - Date in EDTF: [1760..1770]']],
    ['[..1765]', ['PY  - not after 1765', 'N1  - Date in EDTF: [..1765]']],
  ])('%s', (edtf, written) => {
    expect(dated(edtf)).toEqual(written);
  });
});
