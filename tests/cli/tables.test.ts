import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { beforeEach, describe, expect, test } from 'vitest';
import { demoFiles } from '../support/demo-store.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

let store: readonly string[];
let folder: string;
beforeEach(async () => {
  const path = temporaryStore();
  store = ['--store', path];
  folder = join(dirname(path), 'tables');
  await jsonOf(['intake', 'graph', ...demoFiles, ...store]);
  expect(await runCli(['export', '--format', 'table', '-o', folder, ...store])).toEqual({ code: 0, out: '', err: '' });
});

const file = (kind: string) => join(folder, `${kind}.csv`);

/** Writes a table again with one text in place of another. */
function edit(kind: string, before: string, after: string): void {
  const text = readFileSync(file(kind), 'utf8');
  expect(text.split(before).length, `${before} once in ${kind}`).toBe(2);
  writeFileSync(file(kind), text.replace(before, after));
}

const review = (kinds: readonly string[], ...more: readonly string[]) =>
  runCli(['intake', 'table', ...kinds.map(file), ...more, ...store]);

describe('export --format table', () => {
  test('writes a table a kind that has rows, and leaves nothing unfinished', () => {
    expect(readdirSync(folder)).toEqual(
      [
        ...['Agent', 'Alternatives', 'Appearance', 'Artwork', 'Attribution', 'Casting', 'Copying', 'Dating'],
        ...['Depiction', 'Detail', 'Edition', 'EditionDescent', 'Exemplar', 'Imprint', 'Matrix', 'Motif', 'Piece'],
        ...['Place', 'Plate', 'PrintedFrom', 'Reference', 'State', 'Stay', 'Work', 'Workshop'],
      ].map(kind => `${kind}.csv`),
    );
    const rows = parse(readFileSync(file('Piece')), { columns: true });
    expect(rows[0]).toMatchObject({
      'id of Piece': 'piece-shore-dish',
      'seen in change set': '3',
      'label: en': 'Dish with shore scenes',
      marks:
        'id: mark-1; form: YEAR_MARK; reading: E 1766; position: on the foot | id: mark-2; form: SIGNATURE; reading: P.O.; position: on the rim',
    });
  });

  test('writes one kind to standard output, with a byte-order mark where it is asked for', async () => {
    const { out } = await runCli(['export', '--format', 'table', '--kinds', 'plate', ...store]);
    expect(out).toBe(readFileSync(file('Plate'), 'utf8'));
    const marked = await runCli(['export', '--format', 'table', '--kinds', 'Plate', '--bom', ...store]);
    expect(marked.out).toBe(`\uFEFF${out}`);
  });

  test('writes the names of columns alone for a kind that was asked for and has no rows', async () => {
    const { out } = await runCli(['export', '--format', 'table', '--kinds', 'Feature', ...store]);
    expect(out).toBe('id of Feature,seen in change set,label,what,form,priorReading,zone,sameAs,notes,notebook\r\n');
  });

  test('does not write over tables that are there', async () => {
    edit('Agent', 'Hartigh', 'Hartich');
    const before = readFileSync(file('Agent'), 'utf8');
    expect(await runCli(['export', '--format', 'table', '-o', folder, ...store])).toEqual({
      ...{ code: 1, out: '' },
      err: `TARGET_NOT_EMPTY: expected no table at "${file('Agent')}", came one: name another folder\n`,
    });
    expect(readFileSync(file('Agent'), 'utf8')).toBe(before);
  });
});

describe('intake table of our own tables', () => {
  test('shows what was changed and writes nothing, until it is told to', async () => {
    edit(
      'Edition',
      'The Monthly Cabinet,,,London: T. Calloway,48 pages,,yes,,,August',
      'Monthly Cabinet,,,London: T. Calloway,48 pages,,yes,,,August',
    );
    edit(
      'Copying',
      'plate-almanack-lighthouse,plate-cabinet-lighthouse,,CUT_ANEW,REVERSED',
      'plate-almanack-lighthouse,plate-cabinet-lighthouse,,CUT_ANEW,UNKNOWN',
    );
    const shown = await review(['Edition', 'Copying']);
    expect(shown).toMatchObject({ code: 0, err: '' });
    expect(shown.out.split('\n')).toEqual([
      '31 rows read: 2 cells changed in 2 rows, 0 new rows, 0 refused; nothing was written: --apply writes it',
      'Changed:',
      `  edition-cabinet-august-1757, “Monthly Cabinet” (${file('Edition')}, row 3)`,
      '    title: "The Monthly Cabinet" becomes "Monthly Cabinet"',
      `  copying-almanack-lighthouse, “A light-house was copied from A light-house on the coast of Jutland” (${file('Copying')}, row 2)`,
      '    handedness: "REVERSED" becomes "UNKNOWN"',
      '',
    ]);
    expect(await jsonOf(['check', ...store])).toMatchObject({ changeSets: 5 });
    expect((await review(['Edition', 'Copying'], '--apply', '--who', 'Ada')).out).toContain(
      '; written as change set 6\n',
    );
    expect((await review(['Edition', 'Copying'], '--apply')).out).toBe(
      '31 rows read: 0 cells changed in 0 rows, 0 new rows, 0 refused; nothing was written\n',
    );
    const { out } = await runCli(['ask', 'history', 'edition-cabinet-august-1757', ...store]);
    expect(out).toContain('Ada');
    expect(out).toContain('table Edition.csv, Copying.csv');
    expect(await jsonOf(['check', ...store])).toMatchObject({ changeSets: 6, faults: [] });
  });

  test('takes what can be taken, names the rest with row, column and reason, and ends with 1', async () => {
    edit('Dating', ',1757-08,', ',Aug-57,');
    edit('Edition', '48 pages,,yes,,,August', '47 pages,,yes,,,August');
    const report = join(folder, 'report.json');
    const { code, out } = await review(['Edition', 'Dating'], '--apply', '--json', '--report', report);
    expect(code).toBe(1);
    expect(JSON.parse(readFileSync(report, 'utf8'))).toEqual(JSON.parse(out));
    expect(JSON.parse(out)).toEqual({
      ...{
        rows: expect.any(Number),
        seconds: expect.any(Number),
        refused: 1,
        changeSet: 6,
        contradictions: [],
        added: [],
      },
      changed: [
        {
          ...{ file: file('Edition'), record: 3, id: 'edition-cabinet-august-1757', label: 'The Monthly Cabinet' },
          ...{ seen: 4, now: 4, cells: [{ column: 'extent', before: '48 pages', after: '47 pages' }] },
        },
      ],
      problems: [
        {
          ...{ file: file('Dating'), record: 3, key: 'dating-cabinet-august-1757', field: 'date' },
          code: 'DATE_UNREADABLE',
          message: expect.stringMatching(/^expected a date such as 1790-06, came "Aug-57", which a spreadsheet seems/),
        },
      ],
    });
  });

  test('a row that was changed here too is put together, or told with both', async () => {
    const second = join(folder, 'second');
    mkdirSync(second);
    for (const kind of ['Edition']) writeFileSync(join(second, `${kind}.csv`), readFileSync(file(kind)));
    edit('Edition', '48 pages,,yes,,,August', '47 pages,,yes,,,August');
    await review(['Edition'], '--apply');
    const text = readFileSync(join(second, 'Edition.csv'), 'utf8');
    const take = (from: string, to: string) => {
      expect(text).toContain(from);
      writeFileSync(join(second, 'Edition.csv'), text.replace(from, to));
      return runCli(['intake', 'table', join(second, 'Edition.csv'), ...store]);
    };
    const other = await take(',,yes,,,August', ',,no,,,August');
    expect(other.out).toContain(
      '    illustrated: "yes" becomes "no"\n    other columns were changed by change set 6 since, and stay so\n',
    );
    const both = await take('48 pages,,yes,,,August', '46 pages,,yes,,,August');
    expect(both.code).toBe(1);
    expect(both.out).toContain(
      'column extent: the table changes "48 pages" into "46 pages", but it was changed into "47 pages" since',
    );
  });

  test('what it brings into contradiction is told, and written all the same', async () => {
    const text = 'id of Dating,seen in change set,of,event,date\n,,edition-shore-leipzig-1758,PUBLISHED,1761\n';
    const { code, out } = await runCli(['intake', 'table', '-', '--apply', ...store], text);
    expect(code).toBe(0);
    expect(out).toContain('1 row read: 0 cells changed in 0 rows, 1 new row, 0 refused; written as change set 6\n');
    expect(out).toMatch(/dating-shore-leipzig-1758/);
  });

  test('is read from standard input', async () => {
    const text = readFileSync(file('Work'), 'utf8').replace('ANNUAL', 'SERIAL');
    const { out } = await runCli(['intake', 'table', '-', ...store], text);
    expect(out).toContain('(standard input, row 2)\n    form: "ANNUAL" becomes "SERIAL"');
  });

  test('needs a store that is there, and makes none', async () => {
    rmSync(store[1]!);
    expect(await review(['Work'])).toMatchObject({ code: 3, err: expect.stringMatching(/^STORE_UNREACHABLE/) });
  });
});

test('the program itself takes tables out and in, and says so with its exit code', () => {
  const main = join(import.meta.dirname, '../../src/main.ts');
  const run = (...args: readonly string[]) =>
    spawnSync(process.execPath, [main, ...args, ...store], { encoding: 'utf8' });
  const out = run('export', '--format', 'table', '--kinds', 'Work').stdout;
  writeFileSync(file('Work'), out.replace('ANNUAL', 'SERIAL').replace('PATTERN_BOOK', 'PATTERN'));
  const { status, stdout, stderr } = run('intake', 'table', file('Work'), '--apply');
  expect([status, stderr]).toEqual([1, '']);
  expect(stdout).toContain('1 cell changed in 1 row, 0 new rows, 1 refused; written as change set 6');
  expect(stdout).toContain(
    'column form: expected one of BOOK, SERIAL, ANNUAL, PRINT_SERIES, PATTERN_BOOK, SINGLE_SHEET, came "PATTERN"',
  );
});
