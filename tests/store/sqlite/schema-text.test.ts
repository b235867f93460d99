import { readFileSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { rowFields } from '../../../src/domain/model/row-fields.ts';
import { openAndMigrate } from '../../../src/store/sqlite/migrate.ts';
import {
  addedText,
  kindNames,
  kindSince,
  schemaNumber,
  schemaText,
  tableOf,
} from '../../../src/store/sqlite/schema-text.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

function committed(name: string): string {
  return readFileSync(new URL(`../../../schema/sqlite/${name}`, import.meta.url), 'utf8');
}

test('the migrations on disk are what the declarations of kinds give', () => {
  expect(committed('0001-graph.sql')).toBe(schemaText());
  expect(committed('0003-kinds.sql')).toBe(addedText(3));
});

test('every kind has a table of its own with a column for each of its fields', () => {
  const file = temporaryStore();
  openAndMigrate(file, true).close();
  const database = new DatabaseSync(file, { readOnly: true });
  for (const kind of kindNames) {
    const columns = database.prepare('SELECT name FROM pragma_table_info(?)').all(tableOf(kind));
    const expected = ['_key', '_since', '_until', ...rowFields(kind).map(({ name }) => name)];
    expect(columns.map(column => column['name']).toSorted(), kind).toEqual(expected.toSorted());
  }
  expect(new Set(kindNames.map(tableOf)).size).toBe(kindNames.length);
  database.close();
});

test('nothing came with a schema that there is not', () => {
  const since = kindNames.flatMap(kind => [kindSince(kind), ...rowFields(kind).map(field => field.since ?? 1)]);
  expect([...new Set(since)].toSorted()).toEqual([1, 3]);
  expect(Math.max(...since)).toBeLessThanOrEqual(schemaNumber);
});

test('the kinds that stores had first keep their numbers', () => {
  expect(kindNames.slice(0, 31).map((kind, number) => `${number} ${kind}`)).toEqual([
    ...['0 Agent', '1 Place', '2 Workshop', '3 Work', '4 Edition', '5 Exemplar', '6 Plate', '7 Matrix', '8 State'],
    ...['9 Artwork', '10 Piece', '11 Motif', '12 Detail', '13 Reference', '14 Convention', '15 Alternatives'],
    ...['16 Imprint', '17 Dating', '18 Appearance', '19 Copying', '20 EditionDescent', '21 PartOf', '22 PrintedFrom'],
    ...['23 Casting', '24 Attribution', '25 MadeAt', '26 Stay', '27 Depiction', '28 Access', '29 Sequence'],
    '30 Identity',
  ]);
});
