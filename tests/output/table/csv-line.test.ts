import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvLine } from '../../../src/output/table/csv-line.ts';

test.each([
  [['a', 'b'], 'a,b'],
  [['', 'a,b', 'a"b', 'a\nb'], ',"a,b","a""b","a\nb"'],
  [[' a', 'a\t', '\uFEFFa'], '" a","a\t","\uFEFFa"'],
])('%j', (cells, line) => {
  expect(csvLine(cells)).toBe(line);
});

test('another reader finds every cell again', () => {
  const cell = fc.string({ unit: fc.constantFrom(...'",;\r\n\t \uFEFF\'a花') });
  const rows = fc
    .integer({ min: 1, max: 5 })
    .chain(width => fc.array(fc.array(cell, { minLength: width, maxLength: width })));
  fc.assert(
    fc.property(rows, table => {
      const text = table.map(cells => `${csvLine(['x', ...cells])}\r\n`).join('');
      expect(parse(text, { record_delimiter: '\r\n' })).toEqual(table.map(cells => ['x', ...cells]));
    }),
    { numRuns: 500 },
  );
});
