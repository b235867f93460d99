import { describe, expect, test } from 'vitest';
import { readUnstructuredImprint } from '../../../src/intake/marcxml/unstructured-imprint.ts';
import { processorTime } from '../../support/processor-time.ts';

const read = (text: string) => {
  const imprint = readUnstructuredImprint(text);
  if (imprint === undefined) return undefined;
  const pairs = imprint.pairs.map(({ agent, place }) => {
    const where = place === undefined ? '-' : [place.name, place.country, place.role].filter(Boolean).join('/');
    return `${agent ?? '-'} @ ${where}`;
  });
  return [imprint.extent ?? '-', ...pairs, imprint.date ?? '-'];
};

// Statements as the British Library's records of nineteenth-century books give them in MARC 260 $a (CC0).
describe('an imprint in one string', () => {
  test.each([
    [
      'pp. vi. 225. Whittaker & Co.; Ward & Lock: London, [1863.]',
      ['pp. vi. 225', 'Whittaker & Co. @ London', 'Ward & Lock @ London', '[1863]'],
    ],
    ['pp. 78. 16. John Hearne: London, 1822.', ['pp. 78. 16', 'John Hearne @ London', '1822']],
    ['pp. xv. 616. T. Cadell, jun.: London, 1801.', ['pp. xv. 616', 'T. Cadell, jun. @ London', '1801']],
    ['pp. 168. D. Lothrop & Co.: Boston [1878].', ['pp. 168', 'D. Lothrop & Co. @ Boston', '[1878]']],
    ['pp. lviii. 171. Macmillan & Co., London, 1879.', ['pp. lviii. 171', 'Macmillan & Co. @ London', '1879']],
    [
      'pp. 31. J. B. Nichols & Sons: [London;] J. H. Parker: Oxford & London; G. Bell: [London,] 1854.',
      [
        'pp. 31',
        'J. B. Nichols & Sons @ London',
        'J. H. Parker @ Oxford',
        'J. H. Parker @ London',
        'G. Bell @ London',
        '1854',
      ],
    ],
    [
      '2 pt. Dieterich: Goettingen: Williams & Norgate: London, 1858.',
      ['2 pt', 'Dieterich @ Goettingen', 'Williams & Norgate @ London', '1858'],
    ],
    ['pp. 24. Salmon Wilder: New-Ipswich, N.H., [1812.]', ['pp. 24', 'Salmon Wilder @ New-Ipswich/nhu', '[1812]']],
    ['pp. 16. H. J. Howland: Worcester, [Mass. 1853.]', ['pp. 16', 'H. J. Howland @ Worcester/mau', '[1853]']],
    [
      '[A folding card.] J. & A. Churchill: London, [1885.]',
      ['[A folding card.]', 'J. & A. Churchill @ London', '[1885]'],
    ],
    ['pp. x. 147. Longman, Green, etc.: 1865.', ['pp. x. 147', 'Longman, Green, etc. @ -', '1865']],
  ])('names before the place: %s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  test.each([
    [
      'Manchester: John Heywood; London: F. Pitman, [1875?].',
      ['-', 'John Heywood @ Manchester', 'F. Pitman @ London', '[1875?]'],
    ],
    [
      'London: Longman, Hurst, Rees, Orme & Browne, 1816.',
      ['-', 'Longman, Hurst, Rees, Orme & Browne @ London', '1816'],
    ],
    [
      "Knaresbro': printed by M. Brodbelt; Fort-Montague: sold by Governor Hill, [ca. 1810].",
      ['-', "printed by M. Brodbelt @ Knaresbro'", 'sold by Governor Hill @ Fort-Montague', '[ca. 1810]'],
    ],
    [
      'London: C. Law: T. N. Longman & O. Rees, & T. Hurst, 1803.',
      ['-', 'C. Law @ London', 'T. N. Longman & O. Rees, & T. Hurst @ London', '1803'],
    ],
  ])('place before the names: %s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  test.each([
    ['pp. 48. Holt, Norfolk, 1827.', ['pp. 48', '- @ Holt/enk', '1827']],
    ['2 Abt. London; Paris, 1833 [1832, 33].', ['2 Abt', '- @ London', '- @ Paris', '1833 [1832, 33]']],
    ['pp. xii. Paris, an IX, 1800.', ['pp. xii', '- @ Paris', 'an IX, 1800']],
    ['pp. 62. Paris, an 10 [1802].', ['pp. 62', '- @ Paris', 'an 10 [1802]']],
    ['pp. 43. ἐν Σμυρνῃ, 1867.', ['pp. 43', '- @ ἐν Σμυρνῃ', '1867']],
    ['pp. 147. v Praze, 1872.', ['pp. 147', '- @ v Praze', '1872']],
    ['pp. 48. 16. Kristianast, 1837.', ['pp. 48. 16', '- @ Kristianast', '1837']],
    ['pp. 84. 41. 1836.', ['pp. 84. 41', '1836']],
    ['[ca. 1850].', ['-', '[ca. 1850]']],
  ])('no names: %s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  test.each([
    [
      'pp. 96. Universalist Publishing House: Boston; Cambridge [Mass. printed], 1888.',
      ['pp. 96', 'Universalist Publishing House @ Boston', '- @ Cambridge/mau/printer', '1888'],
    ],
    [
      '[Dean & Son: London; printed in Holland, 1892.]',
      ['-', 'Dean & Son @ London', '- @ Holland/ne/printer', '[1892]'],
    ],
    [
      'pp. 150. Leipzig, Wien, Teschen; Wien [printed], 1871.',
      ['pp. 150', '- @ Leipzig', '- @ Wien', '- @ Teschen', '- @ Wien/printer', '1871'],
    ],
  ])('printed elsewhere: %s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  test.each([
    'London :',
    'Oxford & London :',
    'Marcus Ward & Co. :',
    'pp. vi. 362. Montpeyroux, Montpellier, 1864.',
    'Judaeo-Span. [Smyrna, 1878.]',
    '',
    `pp. 1. ${'x'.repeat(1000)}`,
  ])('is left whole: %s', text => {
    expect(readUnstructuredImprint(text)).toBeUndefined();
  });

  test('the marks of the place are kept', () => {
    expect(readUnstructuredImprint('R. Lindsay: [Edinburgh? 1820?]')).toEqual({
      pairs: [{ place: { name: 'Edinburgh', supplied: true, uncertain: true, known: true }, agent: 'R. Lindsay' }],
      date: '[1820?]',
    });
  });

  test('hostile texts end in little time', () => {
    const texts = [
      'pp. '.repeat(250),
      '[1'.repeat(500),
      'a: '.repeat(333),
      '1800 '.repeat(199),
      `${'1800,'.repeat(199)}x`,
    ];
    const start = processorTime();
    for (const text of texts) readUnstructuredImprint(text);
    expect(processorTime() - start).toBeLessThan(500);
  });
});
