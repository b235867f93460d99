import { expect, test } from 'vitest';
import { jsonRows } from '../../../src/intake/table/json-rows.ts';
import { textLines } from '../../../src/intake/table/table-text.ts';
import { all, once } from './tables.ts';

function rowsIn(text: string) {
  return all(jsonRows(textLines(once(text))));
}

test('what stands in objects and lists has a path; null and empty texts are no value', async () => {
  const text =
    '{"id":"T1","size":{"h":12.5,"unit":"mm"},"makers":[{"name":"A"},{"name":"B"}],"note":null,"x":"","ok":true}';
  expect(await rowsIn(`${text}\n\n`)).toEqual([
    {
      number: 1,
      cells: new Map([
        ['id', 'T1'],
        ['size.h', '12.5'],
        ['size.unit', 'mm'],
        ['makers.0.name', 'A'],
        ['makers.1.name', 'B'],
        ['ok', 'true'],
      ]),
      lists: new Map([['makers', 2]]),
    },
  ]);
});

test('a line that is no object is broken, and reading goes on', async () => {
  const rows = await rowsIn('{"id":1}\n[1]\n{"id":\n{"id":2}');
  expect(rows.map(row => ('fault' in row ? row.fault : row.cells.get('id')))).toEqual([
    '1',
    'line 2: expected one JSON object, came "[1]"',
    expect.stringContaining('line 3: expected one JSON object, came "{"id":": '),
    '2',
  ]);
});

test('depth without end is kept as JSON', async () => {
  const deep = `${'{"a":'.repeat(40)}1${'}'.repeat(40)}`;
  const [row] = await rowsIn(deep);
  const cells = row !== undefined && 'cells' in row ? [...row.cells] : [];
  expect(cells.map(([name, text]) => [name.split('.').length, text])).toEqual([
    [21, `${'{"a":'.repeat(19)}1${'}'.repeat(19)}`],
  ]);
});
