import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { describe, expect, test } from 'vitest';
import { openAndMigrate } from '../../../src/store/sqlite/migrate.ts';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { batchOf, plate } from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

describe('opening a store file', () => {
  test('one that is not there is STORE_UNREACHABLE unless it is to be made', async () => {
    const file = temporaryStore();
    await expect(openSqliteStore(file)).rejects.toMatchObject({ code: 'STORE_UNREACHABLE' });
    const store = await openSqliteStore(file, { create: true });
    await store.close();
    await (await openSqliteStore(file)).close();
  });

  test('one in a folder that is not there is STORE_UNREACHABLE', async () => {
    const file = join(temporaryStore(), 'none', 'graph.store');
    await expect(openSqliteStore(file, { create: true })).rejects.toMatchObject({ code: 'STORE_UNREACHABLE' });
  });

  test('one of a newer schema is STORE_NEWER and is left as it is', async () => {
    const file = temporaryStore();
    const database = openAndMigrate(file, true);
    database.exec('PRAGMA user_version = 999');
    database.close();
    const before = readFileSync(file);
    await expect(openSqliteStore(file, { create: true })).rejects.toMatchObject({
      code: 'STORE_NEWER',
      message: expect.stringContaining('999'),
    });
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  test('a database of another program is STORE_NOT_OURS and is left as it is', async () => {
    const file = temporaryStore();
    const database = new DatabaseSync(file);
    database.exec('CREATE TABLE node (id TEXT); PRAGMA user_version = 1');
    database.close();
    const before = readFileSync(file);
    await expect(openSqliteStore(file, { create: true })).rejects.toMatchObject({ code: 'STORE_NOT_OURS' });
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  test('a file that is no database is STORE_NOT_OURS', async () => {
    const file = temporaryStore();
    writeFileSync(file, 'A catalogue of prints, not a database. '.repeat(200));
    await expect(openSqliteStore(file)).rejects.toMatchObject({ code: 'STORE_NOT_OURS' });
  });

  test('a folder in the place of the file is STORE_UNREACHABLE', async () => {
    const file = temporaryStore();
    mkdirSync(file);
    await expect(openSqliteStore(file)).rejects.toMatchObject({ code: 'STORE_UNREACHABLE' });
  });

  test('what was written is there when the file is opened again', async () => {
    const file = temporaryStore();
    const first = await openSqliteStore(file, { create: true });
    await first.write(batchOf([plate('a')]));
    await first.close();
    const second = await openSqliteStore(file);
    expect(await second.rows(['plate-of-a'])).toEqual([{ ...plate('a'), since: 1 }]);
    expect(await second.write(batchOf([plate('b')]))).toEqual({ changeSet: 2 });
    await second.close();
  });

  test('a store whose threads have closed it is one file, without a log', async () => {
    const file = temporaryStore();
    const store = await openSqliteStore(file, { create: true });
    await store.write(batchOf([plate('a')]));
    await store.close();
    expect(() => readFileSync(`${file}-wal`)).toThrow('ENOENT');
  });

  test('making a store fails whole: half a schema cannot stay', async () => {
    const file = temporaryStore();
    // The schema cannot be made whole where one of its tables is there already.
    const database = new DatabaseSync(file);
    database.exec('PRAGMA application_id = 1347179348; CREATE TABLE checkpoint (x)');
    database.close();
    await expect(openSqliteStore(file)).rejects.toMatchObject({ code: 'BROKEN_PROMISE' });
    const after = new DatabaseSync(file);
    expect(after.prepare('SELECT name FROM sqlite_schema').all()).toEqual([{ name: 'checkpoint' }]);
    expect(after.prepare('PRAGMA user_version').get()).toEqual({ user_version: 0 });
    after.close();
  });

  // The user "nobody" has this number wherever there is one; only root may become it.
  test.skipIf(process.getuid?.() !== 0)(
    'one that may not be written to is read, and a write is STORE_READ_ONLY',
    async () => {
      const file = temporaryStore();
      const store = await openSqliteStore(file, { create: true });
      await store.write(batchOf([plate('a')]));
      await store.close();
      chmodSync(dirname(file), 0o777);
      chmodSync(file, 0o444);
      const said = execFileSync(process.execPath, [join(import.meta.dirname, 'read-and-write.ts'), file], {
        uid: 65534,
        env: {},
        encoding: 'utf8',
      });
      expect(said).toBe('read plate-of-a, write STORE_READ_ONLY\n');
      rmSync(file);
    },
  );
});
