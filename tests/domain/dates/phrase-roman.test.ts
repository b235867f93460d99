import { describe, expect, test } from 'vitest';
import { romanYear, smallRoman } from '../../../src/domain/dates/phrase-roman.ts';

describe('a year in Roman numerals', () => {
  // MCCCCLXXXII and MCCCCCXXIX are additive forms met on title pages; the rest are common practice of printers.
  test.each([
    ['MDCCLXIV', 1764],
    ['MCCCCLXXXII', 1482],
    ['MCCCCCXXIX', 1529],
    ['M. D. CC. LXXXXIIII', 1794],
    ['MDCCCXLIX', 1849],
    ['MDCCCIIX', 1808],
    ['MDCCLXUJ', 1766],
    ['CIↃIↃCCLXIV', 1764],
    ['cIɔ Iɔ CC LXIV', 1764],
    ['(I)I)CCLXIV', 1764],
    ['MM', 2000],
  ])('%s is %i', (text, year) => expect(romanYear(text)).toBe(year));

  test.each(['M', 'DCCLXIV', 'MMCI', 'MDIM', 'IVM', 'mdcclxiv', 'MAX', '', 'MMM', 'MDCCLXXXXXX'])('%j is none', text =>
    expect(romanYear(text)).toBeUndefined(),
  );
});

test('small numerals go up to XXXIX', () => {
  expect(['VII', 'xiv', 'XVIII', 'XXXIX'].map(smallRoman)).toEqual([7, 14, 18, 39]);
  expect(['', 'IIX1', 'C', 'XL'].map(smallRoman)).toEqual([undefined, undefined, undefined, undefined]);
});
