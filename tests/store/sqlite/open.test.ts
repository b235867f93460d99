import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { describe, expect, test } from 'vitest';
import { openAndMigrate } from '../../../src/store/sqlite/migrate.ts';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { batchOf, plate } from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

describe('opening a store file', () => {
  test('a folder in the place of the file is STORE_UNREACHABLE', async () => {
    const file = temporaryStore();
    mkdirSync(file);
    await expect(openSqliteStore(file)).rejects.toMatchObject({ code: 'STORE_UNREACHABLE' });
  });

  test('a new one is in the mode in which readers never wait for the writer', () => {
    const file = temporaryStore();
    openAndMigrate(file, true).close();
    const database = new DatabaseSync(file, { readOnly: true });
    expect(database.prepare('PRAGMA journal_mode').get()).toEqual({ journal_mode: 'wal' });
    database.close();
  });

  test('a store whose threads have closed it is one file, without a log', async () => {
    const file = temporaryStore();
    const store = await openSqliteStore(file, { create: true });
    await store.write(batchOf([plate('a')]));
    await store.close();
    expect(() => readFileSync(`${file}-wal`)).toThrow('ENOENT');
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
