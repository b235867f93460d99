import { describe, expect, test } from 'vitest';
import { acts } from '../../../src/domain/acts/acts.ts';
import { readActs } from '../../../src/intake/acts/read-acts.ts';

const read = (text: string | Uint8Array) =>
  readActs(
    (async function* () {
      yield Buffer.from(text);
    })(),
    acts.recordPiece,
    'tiles.csv',
  );

const given = async (text: string) => (await read(text)).acts.map(act => act.given);

describe('a table', () => {
  test.each([
    ['commas', 'piece-name,motif,picture\nMug,A ferry,plate-evening-ferry\n'],
    ['semicolons', 'Piece name;Motif;Picture\r\nMug;A ferry;plate-evening-ferry\r\n'],
    ['tabs', 'pieceName\tmotif\tpicture\nMug\tA ferry\tplate-evening-ferry'],
    [
      'a byte order mark, quotes, blank rows and empty columns',
      '\uFEFF"piece name",motif,,picture,rows\n\n,,,,\n"Mug","A ferry",,plate-evening-ferry,\n',
    ],
  ])('with %s', async (_, text) => {
    expect(await given(text)).toEqual([{ pieceName: 'Mug', motif: 'A ferry', picture: 'plate-evening-ferry' }]);
  });

  test('a cell that was guarded against formulas is read without its guard', async () => {
    expect(await given("piece-name\n'=1766\n")).toEqual([{ pieceName: '=1766' }]);
  });

  test('rows have the number that a spreadsheet shows, and faults the name of their column', async () => {
    const { acts: all, isSingle } = await read('Piece name,Rows\nMug,2\n\nJug,two\nCan,2,x\n');
    expect(isSingle).toBe(false);
    expect(all.map(({ record, faults }) => [record, faults])).toEqual([
      [2, []],
      [4, [{ code: 'INPUT_INVALID', field: 'rows', message: 'expected a number such as 12 or 52.37, came "two"' }]],
      [5, [{ code: 'INPUT_INVALID', message: 'expected no value in column 3, which has no name, came "x"' }]],
    ]);
    expect(all[1]!.columns!.get('rows')).toBe('Rows');
  });

  test('a quotation mark that is not closed spoils one row', async () => {
    const { acts: all } = await read('piece-name,motif\nMug,"A ferry\nJug,A mill\n');
    expect(all.map(({ faults, given }) => [faults.map(({ message }) => message), given])).toEqual([
      [['line 2: a quoted value begins here and does not end'], {}],
      [[], { pieceName: 'Jug', motif: 'A mill' }],
    ]);
  });
});

describe('JSON', () => {
  test('an object is one act, and a list are several', async () => {
    const mug = { pieceName: 'Mug' };
    expect(await read(JSON.stringify(mug))).toEqual({ isSingle: true, acts: [{ record: 1, given: mug, faults: [] }] });
    expect((await read(` [${JSON.stringify(mug)}, 7]`)).acts.map(({ record, given }) => [record, given])).toEqual([
      [1, mug],
      [2, 7],
    ]);
  });
});

test.each([
  ['', 'tiles.csv: expected a JSON object, or a table whose first row names options of piece, came neither'],
  [
    'colour,taste\nred,sour\n',
    'tiles.csv: expected a JSON object, or a table whose first row names options of piece, came neither',
  ],
  [
    'piece-name,pictur\nMug,x\n',
    'tiles.csv: row 1: expected names of options of piece, came "pictur" (did you mean "picture"?)',
  ],
  ['piece-name,Piece name\nMug,x\n', 'tiles.csv: row 1: expected each column once, came "Piece name" twice'],
  ['piece-name\n\n', 'tiles.csv: expected at least one row or object for recordPiece, came none'],
  ['[]', 'tiles.csv: expected at least one row or object for recordPiece, came none'],
  [`piece-name\n${'Mug\n'.repeat(5_001)}`, 'tiles.csv: expected at most 5,000 rows, came 5,001'],
])('%j is refused as a whole', async (text, message) => {
  await expect(read(text)).rejects.toMatchObject({ code: 'INPUT_INVALID', message, place: { file: 'tiles.csv' } });
});

test('JSON that is none, or no UTF-8, is refused', async () => {
  await expect(read('{"pieceName": ')).rejects.toMatchObject({
    code: 'INPUT_INVALID',
    message: expect.stringMatching(/^tiles\.csv: expected JSON, came another text: /),
  });
  await expect(read(Buffer.from([0x7b, 0xff, 0x7d]))).rejects.toMatchObject({ code: 'INPUT_INVALID' });
});
