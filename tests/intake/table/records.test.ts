import { describe, expect, test } from 'vitest';
import { bundleOf, keysOf, mappingOf, plain, remarksOf, rowsOf } from './tables.ts';

const { print } = plain.records;

function withRecords(records: object, more: object = {}) {
  return mappingOf({ records: { print, ...records }, ...more });
}

describe('the record that a row is about', () => {
  test('comes first, and the Reference of the table after it', async () => {
    const bundle = await bundleOf(
      mappingOf({ reference: { title: 'List', key: 'list', csl: { type: 'book' } } }),
      'P-1,Kiln,,,',
    );
    expect(bundle.rows).toEqual([
      { row: { id: '@print', kind: 'Plate', caption: 'Kiln' }, origin: { source: 'X', key: 'P-1' } },
      {
        row: { id: '@catalogue', kind: 'Reference', labels: [{ text: 'List' }], csl: { type: 'book', title: 'List' } },
        origin: { source: 'X', key: 'list' },
      },
    ]);
  });

  test('keeps every column that is used nowhere', async () => {
    const bundle = await bundleOf(mappingOf(), 'P-1,Kiln, J.  Hallam ,c.1795,Views');
    expect(rowsOf(bundle, 'Plate')).toEqual([
      {
        id: '@print',
        kind: 'Plate',
        caption: 'Kiln',
        columns: { engraver: 'J. Hallam', date: 'c.1795', book: 'Views' },
      },
    ]);
  });

  test('takes its source from a column where the mapping says so', async () => {
    const mapping = mappingOf({ source: 'Museum {book}', reference: { title: 'Prints of {book}' } });
    const bundle = await bundleOf(mapping, 'P-1,Kiln,,,A');
    expect(bundle.origin).toEqual({ source: 'Museum A', key: 'P-1' });
    expect(rowsOf(bundle, 'Reference')).toMatchObject([{ labels: [{ text: 'Prints of A' }] }]);
    expect(rowsOf(bundle, 'Plate')).toEqual([{ id: '@print', kind: 'Plate', caption: 'Kiln' }]);
  });
});

describe('another record', () => {
  test('has the key that the mapping makes', async () => {
    const mapping = withRecords({ drawing: { kind: 'Artwork', key: { text: '{number}:drawing' } } });
    expect(keysOf(await bundleOf(mapping, 'P-1,Kiln,,,'))).toEqual(['P-1', 'P-1:drawing']);
  });

  test('is not made where its condition does not hold or its key is empty', async () => {
    const mapping = withRecords({
      drawing: { kind: 'Artwork', key: 'book' },
      other: { kind: 'Artwork', key: 'number', if: { column: 'title', is: 'Ferry' } },
    });
    expect(keysOf(await bundleOf(mapping, 'P-1,Kiln,,,'))).toEqual(['P-1']);
  });

  test('is recognised by its name, case, accents and punctuation aside', async () => {
    const mapping = withRecords({
      maker: { kind: 'Agent', named: 'engraver', fields: { form: { always: 'PERSON' } } },
      book: { kind: 'Edition', named: 'book', fields: { work: 'work', title: 'book' } },
      work: { kind: 'Work', named: 'book' },
    });
    const rows = ['P-1,Kiln,"HALLAM, Jan.",,Vues d’été', 'P-1,Kiln,"Hallam, Ján",,"Vues d\'Été,"'];
    const bundles = await Promise.all(rows.map(row => bundleOf(mapping, row)));
    for (const bundle of bundles) {
      expect(keysOf(bundle)).toEqual(['P-1', 'agent:person:hallam ian', 'edition:uues d ete', 'work:uues d ete']);
    }
    expect(rowsOf(bundles[0]!, 'Agent')).toEqual([
      { id: '@maker', kind: 'Agent', labels: [{ text: 'HALLAM, Jan' }], form: 'PERSON' },
    ]);
    expect(rowsOf(bundles[0]!, 'Edition')).toEqual([
      { id: '@book', kind: 'Edition', work: '@work', title: 'Vues d’été' },
    ]);
    expect(rowsOf(bundles[0]!, 'Work')).toEqual([{ id: '@work', kind: 'Work', labels: [{ text: 'Vues d’été' }] }]);
  });

  test('is made once for each text of a value; the same key twice is one record', async () => {
    const mapping = withRecords({
      maker: {
        kind: 'Agent',
        each: { column: 'engraver', split: ';' },
        named: 'each',
        fields: { notes: { text: 'as {each}' } },
      },
      artist: { kind: 'Agent', named: 'book' },
    });
    const bundle = await bundleOf(mapping, 'P-1,Kiln,J. Hallam; R. Voss; J. HALLAM,,R. Voss');
    expect(rowsOf(bundle, 'Agent')).toEqual([
      { id: '@maker', kind: 'Agent', labels: [{ text: 'J. Hallam' }], notes: ['as J. Hallam'] },
      { id: '@maker.2', kind: 'Agent', labels: [{ text: 'R. Voss' }], notes: ['as R. Voss'] },
    ]);
    expect(rowsOf(bundle, 'Plate')[0]?.columns).toBeUndefined();
  });

  test('is made once for each element of a list of JSON', async () => {
    const mapping = mappingOf({
      table: { form: 'json lines' },
      columns: ['number', 'title', 'makers'],
      records: {
        print,
        maker: { kind: 'Agent', each: 'makers', named: 'each.name', fields: { sortName: 'each.filed' } },
      },
    });
    const row = {
      number: 7,
      title: 'Kiln',
      makers: [{ name: 'J. Hallam', filed: 'Hallam, J.', no: 3 }, { name: 'R. Voss' }],
    };
    const bundle = await bundleOf(mapping, JSON.stringify(row));
    expect(rowsOf(bundle, 'Agent')).toEqual([
      { id: '@maker', kind: 'Agent', labels: [{ text: 'J. Hallam' }], sortName: 'Hallam, J.' },
      { id: '@maker.2', kind: 'Agent', labels: [{ text: 'R. Voss' }] },
    ]);
    expect(rowsOf(bundle, 'Plate')).toEqual([
      { id: '@print', kind: 'Plate', caption: 'Kiln', columns: { 'makers.0.no': '3' } },
    ]);
  });

  test('that lacks what its kind must have is not made, and reported', async () => {
    const mapping = withRecords({
      book: { kind: 'Edition', key: 'book', fields: { work: 'work', title: 'engraver' } },
      work: { kind: 'Work', named: 'book' },
      state: { kind: 'State', key: { text: '{number}:1' }, fields: { matrix: 'matrix', order: { always: '1' } } },
      matrix: { kind: 'Matrix', key: 'date' },
    });
    const bundle = await bundleOf(mapping, 'P-1,Kiln,,,Views');
    expect(keysOf(bundle)).toEqual(['P-1', 'work:uiews']);
    expect(remarksOf(bundle)).toEqual([
      'engraver: expected a value for title of "book", came none',
      'matrix: expected a value for matrix of "state", came none',
    ]);
  });
});

test('a value that stands in several places is remarked upon once', async () => {
  const mapping = mappingOf({
    values: { name: { column: 'engraver', words: { A: 'Ada' } } },
    records: { print, maker: { kind: 'Agent', named: 'name' }, other: { kind: 'Work', named: 'name' } },
  });
  expect(remarksOf(await bundleOf(mapping, 'P-1,Kiln,B,,'))).toEqual(['engraver: expected one of "A", came "B"']);
});

describe('a place by its name', () => {
  const mapping = withRecords({
    town: { kind: 'Place', named: 'book', fields: { country: 'engraver' } },
  });

  test('is the town that the name means, with its coordinates', async () => {
    const bundle = await bundleOf(mapping, 'P-1,Kiln,,,Lugduni Batavorum');
    expect(rowsOf(bundle, 'Place')).toMatchObject([{ labels: [{ text: 'Leiden' }], country: 'ne' }]);
    expect(keysOf(bundle)[1]).toBe('place:ne-leiden');
    expect(remarksOf(bundle)).toEqual([]);
  });

  test('may be several', async () => {
    const bundle = await bundleOf(mapping, 'P-1,Kiln,,,Edinburgh and London');
    expect(rowsOf(bundle, 'Place').map(place => [place.id, place.labels?.[0]?.text])).toEqual([
      ['@town', 'Edinburgh'],
      ['@town.2', 'London'],
    ]);
  });

  test('that several towns have is chosen by the country, or reported', async () => {
    expect(rowsOf(await bundleOf(mapping, 'P-1,Kiln,mau,,Northampton'), 'Place')).toMatchObject([{ country: 'mau' }]);
    expect(remarksOf(await bundleOf(mapping, 'P-1,Kiln,,,Northampton'))).toEqual([
      'book: expected a town that is known, came "Northampton": it may be Northampton (enk), Northampton (mau)',
    ]);
  });

  test('that nobody knows is kept under its name and reported', async () => {
    const bundle = await bundleOf(mapping, 'P-1,Kiln,,,Ellerholm');
    expect(rowsOf(bundle, 'Place')).toEqual([{ id: '@town', kind: 'Place', labels: [{ text: 'Ellerholm' }] }]);
    expect(remarksOf(bundle)).toEqual([
      'book: expected a town that is known, came "Ellerholm": it is not among the towns that are known',
    ]);
  });
});
