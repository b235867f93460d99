import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CellRow, cellRows, delimitedRows } from '../../../src/intake/table/delimited-rows.ts';
import { textLines } from '../../../src/intake/table/table-text.ts';
import { all, once } from './tables.ts';

const comma = { delimiter: ',', quote: '"' };

function rowsIn(text: string, width?: number): Promise<CellRow[]> {
  return all(cellRows(textLines(once(text)), comma, width));
}

describe('rows of delimited text', () => {
  test('run over lines where a quoted value does', async () => {
    expect(await rowsIn('1,"The Ferry\nat Dusk"\r\n2,Kiln\n')).toEqual([
      { line: 1, cells: ['1', 'The Ferry\nat Dusk'] },
      { line: 3, cells: ['2', 'Kiln'] },
    ]);
  });

  test('pass over lines without any value', async () => {
    expect(await rowsIn('1,a\n\n,\n  ,\n2,b')).toEqual([
      { line: 1, cells: ['1', 'a'] },
      { line: 5, cells: ['2', 'b'] },
    ]);
  });

  test('a mark that is never closed spoils its own line alone', async () => {
    expect(await rowsIn('1,a\n2,"b\n3,c\n4,d')).toEqual([
      { line: 1, cells: ['1', 'a'] },
      { line: 2, fault: 'line 2: a quoted value begins here and does not end' },
      { line: 3, cells: ['3', 'c'] },
      { line: 4, cells: ['4', 'd'] },
    ]);
  });

  test('nor does one that another line seems to close', async () => {
    expect(await rowsIn('1,a\n2,"b\n3,"c"\n4,d')).toEqual([
      { line: 1, cells: ['1', 'a'] },
      { line: 2, fault: 'line 2: expected a delimiter after a quoted value, came other characters' },
      { line: 3, cells: ['3', 'c'] },
      { line: 4, cells: ['4', 'd'] },
    ]);
    expect(await rowsIn('1,a\n"2,b\n3,c"\n4,d')).toEqual([
      { line: 1, cells: ['1', 'a'] },
      { line: 2, fault: 'line 2: expected a delimiter after a quoted value, came other characters' },
      { line: 3, cells: ['3', 'c"'] },
      { line: 4, cells: ['4', 'd'] },
    ]);
  });

  test('a value that never ends is given up after 1,000 lines', async () => {
    const rows = await rowsIn(`0,"x\n${'1,a\n'.repeat(3000)}`);
    expect(rows.filter(row => 'fault' in row).length).toBe(1);
    expect(rows).toHaveLength(3001);
  });

  test('are as many as another reader finds, with the same values', async () => {
    const cell = fc.string({ unit: fc.constantFrom('a', 'é', ' ', ',', '"', '\n') });
    const table = fc.array(fc.tuple(cell, cell, fc.constantFrom('x', 'y z')), { maxLength: 5 });
    await fc.assert(
      fc.asyncProperty(table, async written => {
        const text = written.map(row => row.map(each => `"${each.replaceAll('"', '""')}"`).join(',')).join('\r\n');
        const rows = await rowsIn(text);
        expect(rows.map(row => ('cells' in row ? row.cells : row.fault))).toEqual(parse(text));
      }),
    );
  });
});

test('values stand under the names of their columns; a row of another length is broken', async () => {
  const rows = delimitedRows(cellRows(textLines(once('1,a\n2,\n3,c,d\n')), comma, 2), ['number', 'title']);
  expect(await all(rows)).toEqual([
    {
      number: 1,
      cells: new Map([
        ['number', '1'],
        ['title', 'a'],
      ]),
      lists: new Map(),
    },
    { number: 2, cells: new Map([['number', '2']]), lists: new Map() },
    { number: 3, fault: 'line 3: expected 2 values, came 3' },
  ]);
});
