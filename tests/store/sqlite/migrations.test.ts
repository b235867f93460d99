import { DatabaseSync } from 'node:sqlite';
import { describe, expect, test } from 'vitest';
import type { AnyRow } from '../../../src/domain/model/row.ts';
import { openAndMigrate } from '../../../src/store/sqlite/migrate.ts';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { schemaNumber } from '../../../src/store/sqlite/schema-text.ts';
import { batchOf, copying, dating, plate, thing } from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';
import { makeOldStore } from './old-store.ts';

const same: AnyRow = {
  ...{ id: 'identity-of-a', kind: 'Identity', one: 'plate-of-a', other: 'plate-of-b', verdict: 'SAME' },
  ...{ points: 12, by: 'Ada' },
};
const rowsOfThen: readonly AnyRow[] = [
  thing('Artwork', 'x'),
  copying('c', 'plate-of-a', 'artwork-of-x'),
  dating('d', 'plate-of-a', '1764'),
  same,
  plate('a', { caption: 'dog at gate' }),
  plate('b'),
];
const feature: AnyRow = { id: 'feature-of-dog', kind: 'Feature', what: 'the dog at the gate', form: 'PECULIARITY' };
const comparison: AnyRow = {
  ...{ id: 'comparison-of-a', kind: 'Comparison', picture: 'plate-of-a', against: 'artwork-of-x' },
  points: [{ feature: 'feature-of-dog', agreement: 'SHARED' }],
};

async function oldStore(number: 1 | 2) {
  const file = temporaryStore();
  makeOldStore(file, number);
  return openSqliteStore(file);
}

describe.each([1, 2] as const)('a store of schema %i', number => {
  test('is brought to the newest, and has its rows and their whole history', async () => {
    const store = await oldStore(number);
    expect(await store.facts()).toMatchObject({ schema: schemaNumber, records: 3, claims: 3 });
    const rows = await store.rows(rowsOfThen.map(({ id }) => id));
    expect(rows.map(row => ({ ...row, since: undefined }))).toEqual(
      rowsOfThen.map(row => ({ ...row, since: undefined })),
    );
    expect((await store.changesAfter(0, 9)).map(({ put }) => put.map(({ id }) => id))).toEqual([
      ['plate-of-a', 'plate-of-b', 'artwork-of-x', 'copying-of-c', 'dating-of-d'],
      ['plate-of-a', 'identity-of-a'],
    ]);
    const text = { whole: 'dog', tokens: ['dog'], few: 9 };
    const found = await store.search({ text, filter: { kinds: ['Plate'] }, limit: 9, cap: 9 });
    expect(found.hits.map(({ id }) => id)).toEqual(['plate-of-a']);
    await store.close();
  });

  test('takes kinds and fields that came later, beside those that it has', async () => {
    const store = await oldStore(number);
    const lines = [{ says: 'the same lettering', points: 12 }];
    const added: readonly AnyRow[] = [comparison, feature, { ...same, lines } as AnyRow];
    await store.write(batchOf(added));
    const ids = added.map(({ id }) => id);
    expect(await store.rows(ids)).toEqual(added.map(row => ({ ...row, since: 3 })));
    expect(await store.versions('identity-of-a')).toEqual([
      { ...same, since: 2, until: 3 },
      { ...same, lines, since: 3 },
    ]);
    expect(await store.facts()).toMatchObject({ records: 4, claims: 4 });
    const via = [{ kind: 'Comparison', name: 'picture' } as const, { kind: 'Copying', name: 'copy' } as const];
    const [linked] = await store.linked(['plate-of-a'], via);
    expect(linked?.map(({ id }) => id)).toEqual(['comparison-of-a', 'copying-of-c']);
    await store.close();
  });

  test('has the same tables, columns and indexes as a new one', () => {
    const [old, made] = [temporaryStore(), temporaryStore()];
    makeOldStore(old, number);
    expect(schemaOf(old)).toEqual(schemaOf(made));
  });
});

function schemaOf(file: string): unknown {
  openAndMigrate(file, true).close();
  const database = new DatabaseSync(file, { readOnly: true });
  const parts = database.prepare('SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY name').all();
  database.close();
  return parts;
}
