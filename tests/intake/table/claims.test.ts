import { describe, expect, test } from 'vitest';
import { bundleOf, locatorsOf, mappingOf, plain, remarksOf, rowsOf } from './tables.ts';

const { print } = plain.records;
const records = {
  print,
  maker: { kind: 'Agent', each: { column: 'engraver', split: ';' }, named: 'each' },
  book: { kind: 'Edition', named: 'book', fields: { work: 'work', title: 'book' } },
  work: { kind: 'Work', named: 'book' },
};
const engraved = {
  kind: 'Attribution',
  roles: { record: 'print', agent: 'maker' },
  fields: { role: { always: 'egr' } },
};
const appears = {
  kind: 'Appearance',
  roles: { plate: 'print', edition: 'book' },
  fields: { presence: { always: 'PRESENT' }, page: 'date' },
};

function withClaims(...claims: readonly object[]) {
  return mappingOf({ records, claims });
}

describe('a claim', () => {
  test('connects records of the row, with the Reference, the key of the row and the columns as evidence', async () => {
    const bundle = await bundleOf(withClaims(appears), 'P-1,Kiln,,12,Views');
    expect(bundle.rows.at(-1)).toEqual({
      row: {
        id: '@appearance-1',
        kind: 'Appearance',
        plate: '@print',
        edition: '@book',
        presence: 'PRESENT',
        page: '12',
        evidence: [{ reference: '@catalogue', locator: 'P-1 book, date' }],
      },
    });
  });

  test('is made once for each record of an entry, each with a locator of its own', async () => {
    const bundle = await bundleOf(withClaims(engraved), 'P-1,Kiln,J. Hallam; R. Voss,,');
    expect(rowsOf(bundle, 'Attribution').map(({ agent, role }) => [agent, role])).toEqual([
      ['@maker', 'egr'],
      ['@maker.2', 'egr'],
    ]);
    expect(locatorsOf(bundle, 'Attribution')).toEqual(['P-1 engraver', 'P-1 engraver #2']);
  });

  test('is made once where a name stands twice', async () => {
    const bundle = await bundleOf(withClaims(engraved), 'P-1,Kiln,J. Hallam; J. Hallam,,');
    expect(rowsOf(bundle, 'Attribution')).toHaveLength(1);
  });

  test('takes fields from the element that its record came from', async () => {
    const mapping = mappingOf({
      table: { form: 'json lines' },
      columns: ['number', 'title', 'makers'],
      records: { print, maker: { kind: 'Agent', each: 'makers', named: 'each.name' } },
      claims: [{ ...engraved, fields: { role: { column: 'each.as', read: 'relator' } } }],
    });
    const makers = [
      { name: 'A', as: 'engraver' },
      { name: 'B', as: 'etcher' },
    ];
    const bundle = await bundleOf(mapping, JSON.stringify({ number: 1, title: 'Kiln', makers }));
    expect(rowsOf(bundle, 'Attribution').map(({ agent, role }) => [agent, role])).toEqual([
      ['@maker', 'egr'],
      ['@maker.2', 'etr'],
    ]);
    expect(locatorsOf(bundle, 'Attribution')).toEqual(['1 makers.0.name, makers.0.as', '1 makers.1.name, makers.1.as']);
  });

  test('is made once for each text of a value of its own', async () => {
    const shows = {
      kind: 'Depiction',
      roles: { picture: 'print' },
      each: { column: 'date', split: ';' },
      fields: { named: 'each' },
    };
    const bundle = await bundleOf(withClaims(shows), 'P-1,Kiln,,boats; dusk,');
    expect(rowsOf(bundle, 'Depiction').map(({ named }) => named)).toEqual(['boats', 'dusk']);
    expect(rowsOf(bundle, 'Plate')[0]?.columns).toBeUndefined();
    expect(locatorsOf(bundle, 'Depiction')).toEqual(['P-1 date', 'P-1 date #2']);
  });

  test('says which columns say it where the mapping does, with a note', async () => {
    const claim = { ...appears, said: ['book', 'title'], note: { text: 'seen in {book}' } };
    const noted = await bundleOf(withClaims({ ...appears, note: 'title' }), 'P-1,Kiln,,12,Views');
    expect(locatorsOf(noted, 'Appearance')).toEqual(['P-1 book, date']);
    const bundle = await bundleOf(withClaims(claim), 'P-1,Kiln,,12,Views');
    expect(bundle.rows.at(-1)?.row).toMatchObject({
      evidence: [{ reference: '@catalogue', locator: 'P-1 book, title', note: 'seen in Views' }],
    });
  });

  test('has certainty and stance as the mapping says', async () => {
    const claim = { ...appears, fields: { ...appears.fields, certainty: { always: 'possible' }, stance: 'engraver' } };
    const bundle = await bundleOf(withClaims(claim), 'P-1,Kiln,weighed,12,Views');
    expect(rowsOf(bundle, 'Appearance')).toMatchObject([{ certainty: 'POSSIBLE', stance: 'WEIGHED' }]);
  });

  test.each([
    ['a condition does not hold', { ...appears, if: { column: 'book', is: 'Other' } }],
    ['a record it must name is not there', appears, ''],
    ['a field it must have is empty', { ...appears, fields: { presence: { column: 'engraver' } } }],
    [
      'a dating has no date',
      { kind: 'Dating', roles: { of: 'print' }, fields: { event: { always: 'MADE' }, date: 'engraver' } },
    ],
    ['a depiction has no subject', { kind: 'Depiction', roles: { picture: 'print' }, fields: { named: 'engraver' } }],
  ])('is not made where %s', async (_when, claim, book = 'Views') => {
    const bundle = await bundleOf(withClaims(claim), `P-1,Kiln,,12,${book}`);
    expect(bundle.rows.filter(({ origin }) => origin === undefined)).toEqual([]);
    expect(remarksOf(bundle)).toEqual([]);
  });
});

describe('a claim with a record of another table', () => {
  const mapping = mappingOf({
    claims: [{ ...appears, roles: { plate: 'print', edition: { source: 'Books of {engraver}', key: 'book' } } }],
  });

  test('waits for it', async () => {
    const bundle = await bundleOf(mapping, 'P-1,Kiln,Y,12,B-7');
    expect(bundle.links).toEqual([
      {
        row: {
          id: '@appearance-1',
          kind: 'Appearance',
          plate: '@print',
          edition: '',
          presence: 'PRESENT',
          page: '12',
          evidence: [{ reference: '@catalogue', locator: 'P-1 book, date' }],
        },
        role: 'edition',
        target: { source: 'Books of Y', key: 'B-7' },
      },
    ]);
  });

  test('is not made where the key is empty', async () => {
    expect((await bundleOf(mapping, 'P-1,Kiln,Y,12,')).links).toEqual([]);
  });

  test('is in the source of the row where no other is named', async () => {
    const own = mappingOf({ claims: [{ ...appears, roles: { plate: 'print', edition: { key: 'book' } } }] });
    expect((await bundleOf(own, 'P-1,Kiln,Y,12,B-7')).links).toMatchObject([{ target: { source: 'X', key: 'B-7' } }]);
  });
});

describe('an imprint in the words of a title page', () => {
  const imprint = { place: 'engraver', agent: 'date' };
  const { maker: _maker, ...others } = records;
  const mapping = mappingOf({ records: others, claims: [{ kind: 'Imprint', roles: { edition: 'book' }, imprint }] });

  async function imprintsOf(place: string, agent: string) {
    const bundle = await bundleOf(mapping, `P-1,Kiln,"${place}","${agent}",Views`);
    const names = new Map(bundle.rows.map(({ row }) => [row.id, 'labels' in row ? row.labels?.[0]?.text : undefined]));
    const name = (id: string | undefined) => (id === undefined ? '-' : (names.get(id) ?? '-'));
    return {
      imprints: rowsOf(bundle, 'Imprint').map(each => `${name(each.place)} / ${name(each.agent)} / ${each.role}`),
      columns: rowsOf(bundle, 'Plate')[0]?.columns,
      locators: locatorsOf(bundle, 'Imprint'),
    };
  }

  test('names a place and who took which part', async () => {
    expect(await imprintsOf('London; Vienna [printed]', 'printed for J. Harding; sold by T. Hookham')).toEqual({
      imprints: ['London / J. Harding / PUBLISHER', 'London / T. Hookham / BOOKSELLER', 'Wien / - / PRINTER'],
      columns: undefined,
      locators: ['P-1 book, engraver, date', 'P-1 book, engraver, date #2', 'P-1 book, engraver, date #3'],
    });
  });

  test('may be a whole imprint in the column of the place', async () => {
    expect(await imprintsOf('pp. 144. Fraser: London; Stevenson: Cambridge, 1836', '')).toMatchObject({
      imprints: ['London / Fraser / PUBLISHER', 'Cambridge / Stevenson / PUBLISHER'],
      columns: { engraver: 'pp. 144. Fraser: London; Stevenson: Cambridge, 1836' },
    });
  });

  test('may say that it names no place; without any words there is none', async () => {
    expect(await imprintsOf('S.l.', '')).toMatchObject({ imprints: ['- / - / PUBLISHER'], columns: undefined });
    expect(await imprintsOf('', '')).toEqual({ imprints: [], columns: undefined, locators: [] });
  });
});
