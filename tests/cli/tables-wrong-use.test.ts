import { beforeAll, expect, test } from 'vitest';
import { demoFiles } from '../support/demo-store.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const store = ['--store', temporaryStore()];
const file = demoFiles[0]!;
beforeAll(() => jsonOf(['intake', 'graph', file, ...store]));

test.each<[readonly string[], string]>([
  [
    ['export', '--format', 'table'],
    'expected a folder for the tables: -o <folder>, or one kind for standard output: --kinds <kind>',
  ],
  [
    ['export', '--format', 'table', '--kinds', 'Plate,Work'],
    'expected a folder for the tables: -o <folder>, or one kind for standard output: --kinds <kind>',
  ],
  [
    ['export', '--format', 'table', '--kinds', 'Plat'],
    'expected kinds of records and claims for --kinds, such as Edition,Plate, came "Plat" (did you mean "Plate"?)',
  ],
  [
    ['export', '--format', 'table', '--canonical', '-o', 'x'],
    '--canonical is for graph files, came with --format table',
  ],
  [['export', '--kinds', 'Plate'], '--kinds is for tables, came without --format table'],
  [['export', '--bom'], '--bom is for tables, came without --format table'],
  [['intake', 'graph', file, '--apply'], '--apply is for tables that "export --format table" wrote, came with graph'],
  [['intake', 'table', file, '--apply', '--dry-run'], 'expected one of --apply and --dry-run, came both'],
  [
    ['intake', 'table', file],
    `expected a mapping file for the table: --map <file>, or a table that "export --format table" wrote; came none, and "${file}" has no column such as "id of Plate"`,
  ],
])('%j is wrong use', async (args, message) => {
  expect(await runCli([...args, ...store])).toEqual({ code: 2, out: '', err: `${message}\n` });
});
