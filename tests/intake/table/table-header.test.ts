import { expect, test } from 'vitest';
import { readHeader } from '../../../src/intake/table/table-header.ts';

const expected = ['number', 'title', 'engraver'];

test('columns come in any order; others are told with the name that they resemble', () => {
  expect(readHeader(['title', 'engraver', 'engravers', ' number ', 'shelf'], expected, {})).toEqual({
    columns: ['title', 'engraver', 'engravers', 'number', 'shelf'],
    unexpected: [{ name: 'engravers', near: 'engraver' }, { name: 'shelf' }],
  });
});

test.each([
  [['number', 'titel', 'engraver'], 'came none named "title" (is it "titel"?)'],
  [['number'], 'came none named "title", "engraver"'],
  [['number;title;engraver'], 'expected 3 columns, came one, "number;title;engraver": is the delimiter right?'],
  [[], 'came none named "number", "title", "engraver"'],
  [['number', 'title', 'title', 'engraver'], 'expected each column once, came "title" twice'],
  [['number', '', 'title', 'engraver'], 'expected a name for each column, came none for column 2'],
])('%j is refused', (cells, message) => {
  const place = { file: 'prints.csv' };
  const read = () => readHeader(cells, expected, place);
  expect(read).toThrow('the row of prints.csv that names the columns: ');
  expect(read).toThrow(message);
  expect(read).toThrow(expect.objectContaining({ code: 'INPUT_INVALID', place }));
});
