import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { applicationId, schemaNumber } from '../../../src/store/sqlite/schema-text.ts';
import { batchOf, plate } from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

async function refusal(file: string, create = false): Promise<unknown> {
  return openSqliteStore(file, { create }).then(
    async store => {
      await store.close();
      return 'opened';
    },
    (error: { code?: unknown }) => error.code,
  );
}

function database(file: string, text: string): void {
  const made = new DatabaseSync(file);
  made.exec(text);
  made.close();
}

test('a store that is not there is unreachable, and is not made by asking for it', async () => {
  const file = temporaryStore();
  expect(await refusal(file)).toBe('STORE_UNREACHABLE');
  expect(existsSync(file)).toBe(false);
});

test('a store in a folder that is not there is unreachable, also when it is to be made', async () => {
  expect(await refusal(`${temporaryStore()}/no/such`, true)).toBe('STORE_UNREACHABLE');
});

test('what was written is there when the store is opened again', async () => {
  const file = temporaryStore();
  const first = await openSqliteStore(file, { create: true });
  await first.write(batchOf([plate('a')]));
  await first.close();
  const again = await openSqliteStore(file);
  expect(await again.rows(['plate-of-a'])).toEqual([{ ...plate('a'), since: 1 }]);
  await again.close();
});

test.each(['x', 'no database\n'.repeat(1000)])('a text file is not ours and stays as it was', async text => {
  const file = temporaryStore();
  writeFileSync(file, text);
  expect(await refusal(file, true)).toBe('STORE_NOT_OURS');
  expect(readFileSync(file, 'utf8')).toBe(text);
});

test.each(['CREATE TABLE shelf (a)', 'PRAGMA application_id = 7', 'PRAGMA user_version = 7'])(
  'another database is not ours and stays as it was: %s',
  async text => {
    const file = temporaryStore();
    database(file, text);
    const before = readFileSync(file);
    expect(await refusal(file, true)).toBe('STORE_NOT_OURS');
    expect(readFileSync(file).equals(before)).toBe(true);
  },
);

test('a store of a newer schema is left to the newer program', async () => {
  const file = temporaryStore();
  expect(await refusal(file, true)).toBe('opened');
  database(file, `PRAGMA user_version = ${schemaNumber + 1}`);
  expect(await refusal(file, true)).toBe('STORE_NEWER');
});

test('a migration that fails leaves no part of itself', async () => {
  const file = temporaryStore();
  database(file, `CREATE TABLE plate (mine); INSERT INTO plate VALUES (1); PRAGMA application_id = ${applicationId}`);
  await expect(openSqliteStore(file)).rejects.toMatchObject({
    code: 'STORE_NOT_OURS',
    message: `"${file}" is a store of this program, but not whole: table "plate" already exists. Nothing in it was changed; put a backup in its place`,
  });
  const left = new DatabaseSync(file);
  expect(left.prepare('SELECT name FROM sqlite_schema').all()).toEqual([{ name: 'plate' }]);
  expect(left.prepare('SELECT mine FROM plate').all()).toEqual([{ mine: 1 }]);
  left.close();
});

test.each(['comparison', 'tally', 'copying_by_source'])(
  'a store of the newest schema that lacks a part of it is told at once: %s',
  async name => {
    const file = temporaryStore();
    expect(await refusal(file, true)).toBe('opened');
    const isIndex = name.includes('_by_');
    database(file, `DROP ${isIndex ? 'INDEX' : 'TABLE'} ${name}`);
    const before = readFileSync(file);
    await expect(openSqliteStore(file)).rejects.toMatchObject({
      code: 'STORE_NOT_OURS',
      message: expect.stringContaining(`not whole: "${name}" is missing`),
    });
    expect(readFileSync(file).equals(before)).toBe(true);
  },
);

test('half of a file is told to be damaged', async () => {
  const file = temporaryStore();
  const store = await openSqliteStore(file, { create: true });
  await store.write(batchOf(Array.from({ length: 500 }, (_, i) => plate(`${i}`))));
  await store.close();
  const whole = readFileSync(file);
  writeFileSync(file, whole.subarray(0, whole.length / 2));
  const end = await openSqliteStore(file).then(
    async half => {
      const asked = await half.scan(undefined, 9999).catch((error: { code: string }) => error.code);
      await half.close();
      return asked;
    },
    (error: { code: string }) => error.code,
  );
  expect(end).toBe('STORE_NOT_OURS');
});
