import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { openAndMigrate } from '../../../src/store/sqlite/migrate.ts';
import { sqliteError } from '../../../src/store/sqlite/sqlite-error.ts';
import { Writer } from '../../../src/store/sqlite/writer.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

function errorOf(action: () => unknown): unknown {
  try {
    action();
  } catch (error) {
    return sqliteError(error, 'graph.store');
  }
  return undefined;
}

test('a full disk is STORE_FULL and may be tried again; the batch is taken back', () => {
  const file = temporaryStore();
  openAndMigrate(file, true).close();
  const database = new DatabaseSync(file);
  // SQLite says the same where a file may not grow as where a disk is full.
  database.exec('PRAGMA max_page_count = 150');
  const writer = new Writer(database);
  const plates = Array.from({ length: 500 }, (_, i) => [6, `plate-no-${i}`, true, 'x'.repeat(500), 'x'] as const);
  const error = errorOf(() =>
    writer.write({
      changeSet: ['2026-01-01T00:00:00Z', 'a tester', 'too much', null],
      packed: [],
      put: plates.map(row => [...row, ...Array.from({ length: 12 }, () => null)]),
      remove: [],
      seen: [],
      dated: [],
      windows: [],
      origins: [],
      await: [],
      arrived: [],
      recount: false,
      checkpoint: null,
      keepsMoment: false,
    }),
  );
  expect(error).toMatchObject({ code: 'STORE_FULL', message: expect.stringContaining('graph.store') });
  expect(database.prepare('SELECT count(*) AS n FROM node').get()).toEqual({ n: 0 });
  expect(database.isTransaction).toBe(false);
  database.close();
});

test('errors that mean nothing to a user are broken promises, and those of others pass as they are', () => {
  const database = new DatabaseSync(':memory:');
  expect(errorOf(() => database.exec('SELECT * FROM none'))).toMatchObject({ code: 'BROKEN_PROMISE' });
  expect(errorOf(() => database.exec('PRAGMA query_only = 1; CREATE TABLE t (x)'))).toMatchObject({
    code: 'STORE_READ_ONLY',
  });
  const other = new TypeError('no');
  expect(sqliteError(other, 'graph.store')).toBe(other);
  database.close();
});
