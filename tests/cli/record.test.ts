import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { actNames, acts } from '../../src/domain/acts/acts.ts';
import { demoFiles } from '../support/demo-store.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const demo = temporaryStore();

beforeAll(async () => {
  expect(await runCli(['intake', 'graph', ...demoFiles, '--store', demo])).toMatchObject({ code: 0, err: '' });
});

/** A copy of the demo world, and a folder for files beside it. */
function world(): { readonly store: readonly string[]; file(name: string, text: string): string } {
  const copy = temporaryStore();
  copyFileSync(demo, copy);
  const file = (name: string, text: string) => {
    const path = join(copy, '..', name);
    writeFileSync(path, text);
    return path;
  };
  return { store: ['--store', copy], file };
}

const changeSets = async (store: readonly string[]) =>
  ((await jsonOf(['ask', 'differences', '0', '--first', '200', ...store])) as { nodes: unknown[] }).nodes.length;

const wordsOf = (line: string) => [...line.matchAll(/"((?:\\.|[^"])*)"|\S+/g)].map(([word, quoted]) => quoted ?? word);

describe('every act', () => {
  test.each(actNames)('%s has an example in its help that can be done', async name => {
    const { command } = acts[name];
    const { out } = await runCli(['record', command, '--help']);
    const [, line = ''] = new RegExp(`^ {2}platestemma (record ${command} --(?!help|.*\\[).*)$`, 'm').exec(out) ?? [];
    const done = await runCli([...wordsOf(line), ...world().store]);
    expect(done).toMatchObject({
      code: 0,
      err: '',
      out: expect.stringMatching(/^Recorded as change set \d+: \d+ record/),
    });
  });

  test('all are named in the help of the command', async () => {
    const { out } = await runCli(['record', '--help']);
    for (const name of actNames) expect(out).toMatch(new RegExp(`^ {2}${acts[name].command} {2,}\\S`, 'm'));
  });
});

describe('in options', () => {
  const mug = ['record', 'piece', '--piece-name', 'Mug', '--motif', 'A ferry', '--picture', 'plate-evening-ferry'];

  test('what was recorded is told by name and id', async () => {
    const { store } = world();
    const { out } = await runCli([...mug, '--handedness', 'in reverse', ...store]);
    expect(out.replaceAll(/-[0-9a-z]{13}\b/g, '-…')).toMatch(
      /^Recorded as change set \d+: 3 records and claims\.\n {2}piece {9}Mug \(piece-…\)\n {2}motifs {8}A ferry \(motif-…\)\n {2}copyings {6}“A ferry” was copied from “De Avondveer”: in reverse \(copying-…\)\n$/,
    );
  });

  test('as JSON with the names of the API, and with who and why', async () => {
    const { store } = world();
    const { piece, copyings, madeAt, changeSet, problems } = (await jsonOf([
      ...mug,
      '--who',
      'Ada',
      '--why',
      'a find',
      ...store,
    ])) as {
      piece: { id: string };
      copyings: object[];
      madeAt: null;
      changeSet: number;
      problems: unknown[];
    };
    expect(piece).toEqual({ id: piece.id, kind: 'Piece', labels: [{ text: 'Mug' }] });
    expect(copyings).toMatchObject([{ kind: 'Copying', source: 'plate-evening-ferry' }]);
    expect([madeAt, problems]).toEqual([null, []]);
    const { out } = await runCli(['ask', 'history', piece.id, ...store]);
    expect(out).toContain(`${changeSet}  `);
    expect(out).toContain('Ada: a find');
  });

  test('contradictions are told', async () => {
    const { store } = world();
    const late = [
      '--piece-name',
      'Mug',
      '--motif',
      'A pilot',
      '--picture',
      'plate-pilot-mezzotint',
      '--decorated',
      '1770',
    ];
    const { code, out } = await runCli(['record', 'piece', ...late, ...store]);
    expect([code, out.includes('What cannot all be right')]).toEqual([0, true]);
  });

  test('a trial writes nothing', async () => {
    const { store } = world();
    const before = await changeSets(store);
    expect(await runCli([...mug, '--dry-run', ...store])).toEqual({
      code: 0,
      out: 'Nothing is written: 3 records and claims can be.\n',
      err: '',
    });
    expect(await changeSets(store)).toBe(before);
  });

  test('twice the same says that it is there', async () => {
    const { store } = world();
    const copies = ['record', 'copies', '--copies', 'motif-dish-ferry', '--sources', 'plate-cabinet-lighthouse'];
    await runCli([...copies, ...store]);
    expect((await runCli([...copies, ...store])).out).toMatch(/^All of it is recorded already\.\n {2}copyings/);
  });

  test('the first store is made by it', async () => {
    const done = await runCli([
      'record',
      'piece',
      '--piece-name',
      'Mug',
      '--motif',
      'A gull',
      '--store',
      temporaryStore(),
    ]);
    expect(done).toMatchObject({ code: 0, out: expect.stringMatching(/^Recorded as change set 1: 2 records/) });
  });

  test.each([
    [[], 2, 'expected options of piece, or a file, came neither: --help shows how\n'],
    [['x.csv', '--piece-name', 'Mug'], 2, 'expected options or a file, came both, the file "x.csv"\n'],
    [['--rows', 'two'], 2, '--rows: expected a number such as 12 or 52.37, came "two"\n'],
    [['--piece-name', ' '], 2, 'expected a value for --piece-name, came none\n'],
    [['--motif', 'A ferry'], 1, 'INPUT_INVALID: --piece: expected piece or pieceName, came neither\n'],
    [
      ['--piece-name', 'Mug', '--motifs', 'caption: a; picture: plate-that-is-none'],
      1,
      'NOT_FOUND: --motifs[0].picture: expected the id of what is there, came "plate-that-is-none"\n',
    ],
    [
      ['--piece-name', 'Mug', '--made-as-written', 'long ago'],
      1,
      'DATE_UNREADABLE: --made-as-written: expected a date that can be read, or the date in EDTF beside it, came "long ago": no rule reads this phrase\n',
    ],
  ])('%j is refused', async (args, code, err) => {
    const { store } = world();
    expect(await runCli(['record', 'piece', ...args, ...store])).toEqual({ code, out: '', err });
  });
});

describe('in a file', () => {
  const table = `piece-name,material,motif,picture,handedness,painter-name
Tile panel,tin-glazed earthenware,A ferry,plate-evening-ferry,reversed,Jens Ohlsen
Tile panel,,A lighthouse,plate-cabinet-lighthouse,unknown,Jens Ohlsen
Mug,,A mill,,,Jens Ohlsen
`;

  test('a row of a table is an act, a name one record, and the file one change that is undone as one', async () => {
    const { store, file } = world();
    const before = await changeSets(store);
    const path = file('tiles.csv', table);
    const answer = (await jsonOf(['record', 'piece', path, ...store])) as {
      acts: { piece: { id: string }; named: { id: string }[]; motifs: { order: number }[] }[];
      changeSet: number;
      refused: unknown[];
    };
    const [first, second, third] = answer.acts;
    expect([answer.acts.length, answer.refused]).toEqual([3, []]);
    expect([second!.piece.id === first!.piece.id, third!.piece.id === first!.piece.id]).toEqual([true, false]);
    expect(new Set(answer.acts.map(({ named }) => named[0]!.id)).size).toBe(1);
    expect(answer.acts.map(({ motifs }) => motifs.map(({ order }) => order))).toEqual([[1], [2], [1]]);
    const { out } = await runCli(['undo', String(answer.changeSet), ...store]);
    // Two pieces, three motifs, a painter, two copyings, two attributions.
    expect(out).toContain('0 as before, 10 not there any more');
    expect(await changeSets(store)).toBe(before);
  });

  test('all rows are checked before any is written, each refusal with its row and column', async () => {
    const { store, file } = world();
    const before = await changeSets(store);
    const path = file(
      'tiles.csv',
      `${table}Jug,,A gull,plate-that-is-none,,\nTile panel,stoneware,A gull,,,\n,,A gull,,,\nCan,,A gull,,sideways,Peter Ohlsen\nBowl,,,,,"unclosed\n`,
    );
    const refused = [
      [5, 'picture', 'NOT_FOUND'],
      [6, 'material', 'INPUT_INVALID'],
      [7, 'piece', 'INPUT_INVALID'],
      [8, 'handedness', 'INPUT_INVALID'],
      [9, undefined, 'INPUT_INVALID'],
    ];
    const { code, out } = await runCli(['record', 'piece', path, '--json', ...store]);
    const told = (JSON.parse(out) as { refused: { record: number; field?: string; code: string }[] }).refused;
    expect([code, told.map(({ record, field, code }) => [record, field, code])]).toEqual([1, refused]);
    expect(await changeSets(store)).toBe(before);
    const text = await runCli(['record', 'piece', path, ...store]);
    expect([text.code, text.err, text.out.replaceAll(path, 'tiles.csv')]).toEqual([
      1,
      '',
      `Nothing is recorded: 5 of 8 rows are refused.
  NOT_FOUND tiles.csv, row 5, picture: expected the id of what is there, came "plate-that-is-none"
  INPUT_INVALID tiles.csv, row 6, material: expected "tin-glazed earthenware", as it was given before, came "stoneware"
  INPUT_INVALID tiles.csv, row 7, piece: expected piece or pieceName, came neither
  INPUT_INVALID tiles.csv, row 8, handedness: expected one of SAME, REVERSED, UNKNOWN, came "sideways"
  INPUT_INVALID tiles.csv, row 9: line 9: a quoted value begins here and does not end
`,
    ]);
  });

  test('a JSON object is one act, a list of them are several, and standard input is a file', async () => {
    const { store, file } = world();
    const one = { pieceName: 'Mug', motifs: [{ caption: 'A ferry' }] };
    expect(await jsonOf(['record', 'piece', file('mug.json', JSON.stringify(one)), ...store])).toMatchObject({
      piece: { labels: [{ text: 'Mug' }] },
      motifs: [{ caption: 'A ferry' }],
    });
    const list = JSON.stringify([{ pieceName: 'Jug' }, { pieceName: 'Can' }]);
    const { out } = await runCli(['record', 'piece', '-', '--json', ...store], list);
    expect((JSON.parse(out) as { acts: unknown[] }).acts).toHaveLength(2);
  });

  test('a fault in the one object of a file names the file and the field', async () => {
    const { store, file } = world();
    const path = file('mug.json', '{"pieceName": "Mug", "motifs": [{"captoin": "a"}]}');
    expect(await runCli(['record', 'piece', path, ...store])).toEqual({
      code: 1,
      out: '',
      err: `INPUT_INVALID: ${path}, motifs[0].captoin: there is no such field (did you mean "caption"?)\n`,
    });
  });

  test('a file that is not there is refused', async () => {
    const { store } = world();
    const { code, err } = await runCli(['record', 'piece', '/no/such.csv', ...store]);
    expect([code, err.split(':')[0]]).toEqual([1, 'SOURCE_REFUSED']);
  });
});
