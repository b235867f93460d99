import { describe, expect, test } from 'vitest';
import { columnName } from '../../../src/domain/tables/table-columns.ts';
import { openKindTable } from '../../../src/intake/kind-table/read-kind-table.ts';

const header = 'id of Plate,seen in change set,label,caption';

async function read(text: string | Buffer, file = 'Plate.csv') {
  const table = await openKindTable(
    (async function* () {
      yield Buffer.from(text);
    })(),
    file,
  );
  if (table === undefined) return undefined;
  const rows: unknown[] = [];
  for await (const row of table.rows) {
    if (row.outcome === 'refused') rows.push(row.problem.message);
    else {
      const cells = [...row.cells].map(([column, cell]) => [columnName(column, row.kind), cell]);
      rows.push({ row: row.place.record, ...Object.fromEntries(cells) });
    }
  }
  return rows;
}

const one = { row: 2, 'id of Plate': 'plate-a-b', 'seen in change set': '3', label: '', caption: 'A, b' };

describe('a table of a kind', () => {
  test.each<[string, string | Buffer]>([
    ['as it is written', `${header}\r\nplate-a-b,3,,"A, b"\r\n`],
    ['with other line ends', `${header}\nplate-a-b,3,,"A, b"`],
    ['with a byte-order mark', `\uFEFF${header}\nplate-a-b,3,,"A, b"\n`],
    ['with semicolons', `${header.replaceAll(',', ';')}\nplate-a-b;3;;A, b\n`],
    ['with tabs, as UTF-16', Buffer.from(`\uFEFF${header.replaceAll(',', '\t')}\nplate-a-b\t3\t\t"A, b"\n`, 'utf16le')],
    ['with everything quoted', `"${header.replaceAll(',', '","')}"\n"plate-a-b","3","","A, b"\n`],
    ['with empty cells and rows after the last', `${header},,\nplate-a-b,3,,"A, b",,,\n,,,,\n\n`],
  ])('is known %s', async (_what, text) => {
    expect(await read(text)).toEqual([one]);
  });

  test('may have its columns in another order, or fewer', async () => {
    expect(await read('caption,seen in change set,id of Plate\n"A, b",3,plate-a-b\n')).toEqual([
      { row: 2, caption: 'A, b', 'seen in change set': '3', 'id of Plate': 'plate-a-b' },
    ]);
  });

  test('counts rows as a spreadsheet does, whatever stands in them', async () => {
    const rows = await read(`${header}\na,1,,"one\ntwo"\n\nb,2,,'=x\nc,3,"x"y,z\nd,4\n`);
    expect(rows).toEqual([
      expect.objectContaining({ row: 2, caption: 'one\ntwo' }),
      expect.objectContaining({ row: 4, caption: '=x' }),
      'line 6: expected a delimiter after a quoted value, came other characters',
      { row: 6, 'id of Plate': 'd', 'seen in change set': '4' },
    ]);
  });

  test('may have a column whose name has line ends', async () => {
    expect(await read(`"free: a\nb",id of Plate,seen in change set\nx,plate-a-b,3\n`)).toEqual([
      { row: 2, 'free: a\nb': 'x', 'id of Plate': 'plate-a-b', 'seen in change set': '3' },
    ]);
  });

  test.each([
    ['no,title\n1,x\n'],
    ['id,seen in change set\n'],
    ['id of Plates,seen in change set\n'],
    [''],
    ['"'],
    ['{"id":"plate-a-b","kind":"Plate"}\n'],
  ])('%j is none', async text => {
    expect(await read(text)).toBe(undefined);
  });

  test.each([
    [
      `${header},captoin\n`,
      'the table of Plate has no column "captoin": name it "free: captoin" to keep it as a free column, or "caption" if that is meant',
    ],
    [`${header},label: de,label:de\n`, 'expected each column once, came "label:de" twice'],
    [
      'id of Plate,caption\n',
      'expected the column "seen in change set", which says what was seen of each row, came none',
    ],
    ['id of Plate,id of Work,seen in change set\n', 'the table of Plate has no column "id of Work"'],
  ])('%j is refused', async (text, message) => {
    await expect(read(text)).rejects.toMatchObject({
      code: 'INPUT_INVALID',
      message: expect.stringContaining(`Plate.csv, row 1: ${message}`),
      place: { file: 'Plate.csv', record: 1 },
    });
  });

  test('a value in a column without a name is refused with its row', async () => {
    expect(await read(`${header},\nplate-a-b,3,,x,stray\nplate-a-c,3,,x\n`)).toEqual([
      'expected no value in column 5, which has no name, came "stray"',
      expect.objectContaining({ row: 3, caption: 'x' }),
    ]);
  });
});
