import { describe, expect, test } from 'vitest';
import { isRewritten, isSpreadsheetDate } from '../../../src/domain/tables/rewritten-cell.ts';

describe('what spreadsheets make of texts (common practice)', () => {
  test.each([
    ['1790-06', 'Jun-90'],
    ['1-2', '02-Jan'],
    ['1-2', '2. Jan'],
    ['3/4', '04/03/2026'],
    ['1901-06-05', '05.06.1901'],
    ['1901-06-05', '5/6/1901 0:00'],
    ['March 1764', 'Mar-64'],
    ['Mai 1790', 'Mai 90'],
    ['févr. 1790', 'févr-90'],
    ['007', '7'],
    ['1.10', '1.1'],
    ['1E10', '1E+10'],
    ['1234567890123456', '1.23457E+15'],
  ])('%j becomes %j', (before, after) => {
    expect(isRewritten(before, after)).toBe(true);
  });

  test.each([
    ['1790-06', '1790-07'],
    ['1-2', '3-4'],
    ['1-2', '12-Mar'],
    ['Plate 12', 'Plates 12'],
    ['Marble 12', 'Marbles 12'],
    ['12', '13'],
    ['007', '008'],
    ['', 'Jun-90'],
    ['Views', 'views'],
  ])('%j may become %j', (before, after) => {
    expect(isRewritten(before, after)).toBe(false);
  });
});

test.each(['Jun-90', '2. Jan', '06/01/1990', '1.1.90', '01-Jun-1790'])('%j is written by a spreadsheet', text => {
  expect(isSpreadsheetDate(text)).toBe(true);
});

test.each(['1790-06', '1790/1795', '17XX', '1790?', '1790-06-01', '-0100', 'Plate 12', ''])(
  '%j is not written by a spreadsheet',
  text => {
    expect(isSpreadsheetDate(text)).toBe(false);
  },
);
