import { readFileSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { rowFields } from '../../../src/domain/model/row-fields.ts';
import { kindNames, schemaText, tableOf } from '../../../src/store/sqlite/schema-text.ts';

const migration = new URL('../../../schema/sqlite/0001-graph.sql', import.meta.url);

test('the migration on disk is what the declarations of kinds give', () => {
  expect(readFileSync(migration, 'utf8')).toBe(schemaText());
});

test('every kind has a table of its own with a column for each of its fields', () => {
  const database = new DatabaseSync(':memory:');
  database.exec(schemaText());
  for (const kind of kindNames) {
    const columns = database.prepare('SELECT name FROM pragma_table_info(?)').all(tableOf(kind));
    expect(columns.map(column => column['name'])).toEqual([
      ...['_key', '_since', '_until'],
      ...rowFields(kind).map(({ name }) => name),
    ]);
  }
  expect(new Set(kindNames.map(tableOf)).size).toBe(kindNames.length);
  database.close();
});
