import { describe, expect, test } from 'vitest';
import { claimKindNames, recordKindNames } from '../../../src/domain/model/kinds.ts';
import type { AnyRow } from '../../../src/domain/model/row.ts';
import { rowFields } from '../../../src/domain/model/row-fields.ts';
import { textIn, type ValueColumn, valueIn, withValue } from '../../../src/domain/tables/column-value.ts';
import { ColumnsFound, columnName, columnNamed, kindOfIdColumn } from '../../../src/domain/tables/table-columns.ts';

const place: AnyRow = {
  id: 'place-a-b',
  kind: 'Place',
  latitude: 52.37,
  labels: [{ text: 'A', language: 'nl' }, { text: 'B' }, { text: 'C', language: 'nl' }],
  columns: { country: 'free', ' x: y': '2' },
};

function columnsOf(...rows: readonly AnyRow[]) {
  const found = new ColumnsFound();
  for (const row of rows) found.meet(row);
  return found.columns(rows[0]!.kind);
}

describe('columns', () => {
  test('are the id, the change set, labels by language, what is declared, and free columns', () => {
    expect(columnsOf(place).map(column => columnName(column, 'Place'))).toEqual([
      ...['id of Place', 'seen in change set', 'label', 'label: nl'],
      ...['latitude', 'longitude', 'within', 'country', 'harbour', 'sameAs', 'notes', 'notebook'],
      ...['free:  x: y', 'free: country'],
    ]);
  });

  test.each([...recordKindNames, ...claimKindNames])('of %s have names of their own, by which they are known', kind => {
    const columns = columnsOf({ ...place, id: `${kind.toLowerCase()}-a-b`, kind } as unknown as AnyRow);
    const names = columns.map(column => columnName(column, kind));
    expect(new Set(names).size).toBe(names.length);
    expect(kindOfIdColumn(names[0]!)).toBe(kind);
    const isRecord = recordKindNames.includes(kind as never);
    for (const [i, column] of columns.entries()) {
      const known = columnNamed(names[i]!, kind);
      expect(known).toEqual(!isRecord && /^(?:label|free)/.test(names[i]!) ? undefined : column);
    }
    const shown = new Set(columns.flatMap(column => (column.holds === 'field' ? [column.name] : [])));
    const left = rowFields(kind).flatMap(({ name }) => (shown.has(name) ? [] : [name]));
    expect(left).toEqual(isRecord ? ['labels', 'columns'] : []);
  });

  test.each(['titel', 'id of Plate', 'Label', 'label:', 'free', 'labels', 'columns', 'id', 'kind'])(
    '%j is none',
    name => {
      expect(columnNamed(name, 'Place')).toBe(undefined);
    },
  );
});

describe('a row with another value', () => {
  const label = (language?: string): ValueColumn => ({
    holds: 'label',
    ...(language === undefined ? {} : { language }),
  });
  const labels = (language: string | undefined, texts: readonly string[] | undefined) =>
    (withValue(place, label(language), texts) as typeof place & { labels?: object }).labels;

  test('in labels of a language keeps the others where they stand', () => {
    expect(valueIn(place, label('nl'))).toEqual(['A', 'C']);
    expect(textIn(place, label('nl'))).toBe('A | C');
    expect(labels('nl', ['A', 'D', 'E'])).toEqual([
      { text: 'A', language: 'nl' },
      { text: 'B' },
      { text: 'D', language: 'nl' },
      { text: 'E', language: 'nl' },
    ]);
    expect(labels('nl', ['F'])).toEqual([{ text: 'F', language: 'nl' }, { text: 'B' }]);
    expect(labels('fr', ['G'])).toEqual([...place.labels!, { text: 'G', language: 'fr' }]);
    expect(labels('nl', undefined)).toEqual([{ text: 'B' }]);
  });

  test('has nothing left where the last is taken away', () => {
    const bare: AnyRow = { id: 'place-a-b', kind: 'Place', labels: [{ text: 'B' }], columns: { a: '1' } };
    expect(withValue(bare, label(), undefined)).toEqual({ id: 'place-a-b', kind: 'Place', columns: { a: '1' } });
    expect(withValue(bare, { holds: 'free', name: 'a' }, undefined)).toEqual({
      id: 'place-a-b',
      kind: 'Place',
      labels: [{ text: 'B' }],
    });
  });
});
