import { readFileSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { rowFields } from '../../../src/store/row-fields.ts';
import { openAndMigrate } from '../../../src/store/sqlite/migrate.ts';
import { kindNames, schemaText, tableOf } from '../../../src/store/sqlite/schema-text.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

test('the first migration is what the declarations of the kinds say now', () => {
  expect(readFileSync('schema/sqlite/0001-graph.sql', 'utf8')).toBe(schemaText());
});

test('a store has a table a kind, with a column a field', () => {
  const database = openAndMigrate(temporaryStore(), true);
  for (const kind of kindNames) {
    const columns = database.prepare('SELECT name FROM pragma_table_info(?)').all(tableOf(kind));
    const fields = rowFields(kind).map(({ name }) => name);
    expect(columns.map(column => column['name'])).toEqual(['_key', '_since', '_until', ...fields]);
  }
  database.close();
});

test('a new store is in the mode in which readers never wait for the writer', () => {
  const file = temporaryStore();
  openAndMigrate(file, true).close();
  const database = new DatabaseSync(file, { readOnly: true });
  expect(database.prepare('PRAGMA journal_mode').get()).toEqual({ journal_mode: 'wal' });
  database.close();
});
