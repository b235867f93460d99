import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitCells } from '../../../src/intake/table/split-cells.ts';

const comma = { delimiter: ',', quote: '"' };

describe('the values of a row', () => {
  // RFC 4180, section 2, rules 5 to 7.
  test.each([
    ['aaa,bbb,ccc', ['aaa', 'bbb', 'ccc']],
    ['"aaa","bbb","ccc"', ['aaa', 'bbb', 'ccc']],
    ['"aaa","b\r\nbb","ccc"', ['aaa', 'b\r\nbb', 'ccc']],
    ['"aaa","b""bb","ccc"', ['aaa', 'b"bb', 'ccc']],
    ['a,b,', ['a', 'b', '']],
    ['"",""', ['', '']],
    ['', ['']],
  ])('%j', (text, cells) => {
    expect(splitCells(text, comma)).toEqual(cells);
  });

  test('a mark within a value that does not begin with one stands for itself', () => {
    expect(splitCells('Battle ("Sussex" on print),1814', comma)).toEqual(['Battle ("Sussex" on print)', '1814']);
  });

  test('without a quotation mark every character stands for itself', () => {
    expect(splitCells('"The Spy"\t"a', { delimiter: '\t', quote: undefined })).toEqual(['"The Spy"', '"a']);
  });

  test('a quoted value that does not end is open, one that ends too early is stray', () => {
    expect(splitCells('1,"The Ferry', comma)).toBe('open');
    expect(splitCells('1,"The "Ferry"",2', comma)).toBe('stray');
  });

  test('agree with another reader on every table that is written by the rules', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', 'é', ' ', ',', ';', '"', "'", '\n', '\t') });
    fc.assert(
      fc.property(
        fc.array(cell, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(',', ';', '\t'),
        (cells, delimiter) => {
          const text = cells.map(each => `"${each.replaceAll('"', '""')}"`).join(delimiter);
          expect(splitCells(text, { delimiter, quote: '"' })).toEqual(cells);
          expect(parse(text, { delimiter })).toEqual([cells]);
        },
      ),
    );
  });
});
