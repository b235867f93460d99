import { expect, test } from 'vitest';
import { openAndMigrate } from '../../../src/store/sqlite/migrate.ts';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { kindNumber } from '../../../src/store/sqlite/row-codec.ts';
import { walkFrom } from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

/** A plate with very many copies: put in by SQL, since only their number matters. */
function crowdedFamily(file: string, copies: number): void {
  const database = openAndMigrate(file, true);
  const numbers = `WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < ${copies})`;
  database.exec(`
    BEGIN;
    INSERT INTO change_set VALUES (1, '2026-01-01T00:00:00Z', 'a tester', 'a crowd', NULL);
    INSERT INTO node (key, id, kind, sort) VALUES (0, 'plate-of-all', ${kindNumber('Plate')}, 'all');
    INSERT INTO plate (_key, _since, caption) VALUES (0, 1, 'all');
    ${numbers} INSERT INTO node (key, id, kind, sort) SELECT i, printf('plate-no-%06d', i), ${kindNumber('Plate')}, '' FROM n;
    ${numbers} INSERT INTO plate (_key, _since) SELECT i, 1 FROM n;
    ${numbers} INSERT INTO node (key, id, kind, sort) SELECT ${copies} + i, printf('copying-no-%06d', i), ${kindNumber('Copying')}, NULL FROM n;
    ${numbers} INSERT INTO copying (_key, _since, copy, source) SELECT ${copies} + i, 1, i, 0 FROM n;
    COMMIT;
  `);
  database.close();
}

test('a walk past its limit is ended, and the store goes on', async () => {
  const file = temporaryStore();
  crowdedFamily(file, 200_000);
  const store = await openSqliteStore(file, { questionLimit: 40 });
  await store.lastChangeSet();
  await expect(store.walk(walkFrom(['plate-of-all']))).rejects.toMatchObject({ code: 'STORE_TIMEOUT' });
  await store.close();

  const patient = await openSqliteStore(file);
  const { records, depth, claims, frontier, cut } = await patient.walk(walkFrom(['plate-of-all'], { limit: 3 }));
  expect(records.map(row => row.id)).toEqual(['plate-of-all', 'plate-no-000001', 'plate-no-000002']);
  expect([depth, claims.length, frontier, cut]).toEqual([[0, 1, 1], 2, ['plate-of-all'], true]);
  await patient.close();
});
