import { openAndMigrate } from '../../src/store/sqlite/migrate.ts';
import { kindNames } from '../../src/store/sqlite/schema-text.ts';

/**
 * A store file with many editions of one work, every other one with a detail to its window: put in by SQL, since only its
 * size matters, and without tallies. Ids are `edition-no-000001` and so on.
 */
export function crowdedStore(file: string, editions: number): void {
  const database = openAndMigrate(file, true);
  const kind = kindNames.indexOf('Edition');
  const numbers = `WITH RECURSIVE n (i) AS (SELECT 2 UNION ALL SELECT i + 1 FROM n WHERE i < ${editions + 1})`;
  database.exec(`
    BEGIN;
    INSERT INTO change_set VALUES (1, '2026-01-01T00:00:00Z', 'a tester', 'a crowd', NULL);
    INSERT INTO node (key, id, kind, sort) VALUES (1, 'work-of-all', ${kindNames.indexOf('Work')}, 'all');
    INSERT INTO work (_key, _since, form) VALUES (1, 1, 'BOOK');
    INSERT INTO profile VALUES (1, 'london');
    INSERT INTO window_detail VALUES (1, '{"datings":[],"accesses":[]}');
    ${numbers} INSERT INTO node (key, id, kind, sort) SELECT i, printf('edition-no-%06d', i), ${kind}, printf('title %06d', i) FROM n;
    ${numbers} INSERT INTO edition (_key, _since, work, title) SELECT i, 1, 1, printf('Title %06d', i) FROM n;
    ${numbers} INSERT INTO edition_window SELECT i, printf('edition-no-%06d', i), 1, 2, i % 2, i * 7 % 90000 - 90000, i * 7 % 90000 - 89000, 0 FROM n;
    ${numbers} INSERT INTO link SELECT 1, 1400, i, 1, NULL FROM n;
    COMMIT;
  `);
  database.close();
}
