import { describe, expect, test } from 'vitest';
import type { FieldEntry } from '../../../src/intake/table/table-mapping.ts';
import { bundleOf, mappingOf, remarksOf, rowsOf } from './tables.ts';

/** A dating of the print by the column `date`, and what remains of that column. */
async function datingOf(date: string, value: unknown, fields: object = {}) {
  const claims = [
    { kind: 'Dating', roles: { of: 'print' }, fields: { event: { always: 'PUBLISHED' }, date: value, ...fields } },
  ];
  const bundle = await bundleOf(mappingOf({ claims }), `P-1,Kiln,,"${date}",`);
  const datings = rowsOf(bundle, 'Dating').map(({ id: _id, kind: _kind, of: _of, event: _event, ...rest }) => rest);
  return { datings, kept: rowsOf(bundle, 'Plate')[0]?.columns?.['date'], remarks: remarksOf(bundle) };
}

const museum = { column: 'date', read: 'museum date' };
const library = { column: 'date', read: 'library date' };

describe('a date', () => {
  test('is read by the grammar that the mapping names, and kept as written with rule and flags', async () => {
    expect(await datingOf('c.1795', museum)).toEqual({
      datings: [{ date: '1795~', asWritten: 'c.1795', rule: 'phrase-7-circa', flags: ['circa'] }],
      kept: undefined,
      remarks: [],
    });
  });

  test('of a library may have a copyright beside it, which is weighed', async () => {
    expect((await datingOf('1764, c1763', library)).datings).toMatchObject([
      { date: '1764', asWritten: '1764, c1763' },
      { date: '1763', asWritten: '1764, c1763', basis: 'COPYRIGHT', stance: 'WEIGHED' },
    ]);
  });

  test('that no rule reads is kept as written and reported', async () => {
    expect(await datingOf('in the old days', museum)).toEqual({
      datings: [{ asWritten: 'in the old days', rule: 'unparsed', flags: ['unparsed'] }],
      kept: undefined,
      remarks: ['date: expected a date, came "in the old days": no rule reads this phrase'],
    });
  });

  test('that is said not to be known is no fault', async () => {
    expect(await datingOf('date not known', museum)).toEqual({
      datings: [{ asWritten: 'date not known', rule: 'undated', flags: ['undated'] }],
      kept: undefined,
      remarks: [],
    });
  });

  test('without a grammar is EDTF', async () => {
    expect((await datingOf('1793-05?', 'date')).datings).toEqual([{ date: '1793-05?' }]);
    expect(await datingOf('May 1793', 'date')).toEqual({
      datings: [{ asWritten: 'May 1793' }],
      kept: undefined,
      remarks: ['date: expected a date as EDTF writes it, came "May 1793"'],
    });
  });

  test('in figures may be turned round before it is read; the words stay as they were', async () => {
    const value = { ...museum, part: '^(\\d+)/(\\d+)/(\\d+)$', written: '$2.$1.$3' };
    expect((await datingOf('5/12/1814', value)).datings).toEqual([
      { date: '1814-05-12', asWritten: '5/12/1814', rule: 'phrase-28-figures' },
    ]);
  });

  test('what the mapping says of its words stands', async () => {
    const { datings, kept } = await datingOf('c.1795', museum, { asWritten: { always: 'about 1795' } });
    expect(datings).toMatchObject([{ date: '1795~', asWritten: 'about 1795' }]);
    expect(kept).toBe('c.1795');
  });

  test('of a kind without a field for words stays among the free columns', async () => {
    const mapping = mappingOf({
      records: {
        ...mappingOf().records,
        maker: { kind: 'Agent', named: 'engraver' },
        town: { kind: 'Place', key: 'book', fields: { labels: 'book' } },
      },
      claims: [{ kind: 'Stay', roles: { who: 'maker', where: 'town' }, fields: { from: museum } }],
    });
    const bundle = await bundleOf(mapping, 'P-1,Kiln,J. Hallam,c.1795,Delft');
    expect(rowsOf(bundle, 'Stay')).toMatchObject([{ from: '1795~' }]);
    expect(rowsOf(bundle, 'Plate')).toMatchObject([{ columns: { date: 'c.1795' } }]);
  });
});

/** A field of the print filled from the column `title`, and what remains of that column. */
async function plateOf(name: string, entry: FieldEntry | object, title = 'The Ferry; The Kiln') {
  const records = { print: { kind: 'Plate', key: 'number', fields: { [name]: entry } } };
  const bundle = await bundleOf(mappingOf({ records }), `P-1,"${title}",,,`);
  const [{ id: _id, kind: _kind, ...plate } = { id: '', kind: '' }] = rowsOf(bundle, 'Plate');
  return { plate, remarks: remarksOf(bundle) };
}

describe('a field', () => {
  test('of one text gets several joined', async () => {
    expect(await plateOf('caption', { column: 'title', split: ';' })).toEqual({
      plate: { caption: 'The Ferry; The Kiln' },
      remarks: [],
    });
  });

  test('of many texts gets each', async () => {
    expect((await plateOf('notes', { column: 'title', split: ';' })).plate).toEqual({
      notes: ['The Ferry', 'The Kiln'],
    });
  });

  test('of names takes a value, or names with their language', async () => {
    expect((await plateOf('labels', { column: 'title', split: ';' })).plate).toEqual({
      labels: [{ text: 'The Ferry' }, { text: 'The Kiln' }],
    });
    expect((await plateOf('labels', [{ text: 'title', language: { always: 'eng' } }])).plate).toEqual({
      labels: [{ text: 'The Ferry; The Kiln', language: 'en' }],
    });
  });

  test('of items makes one for each text of the part that gives several', async () => {
    const lettered = [{ name: { column: 'title', split: ';' }, roles: { always: 'egr' } }];
    expect((await plateOf('letteredNames', lettered)).plate).toEqual({
      letteredNames: [
        { name: 'The Ferry', roles: ['egr'] },
        { name: 'The Kiln', roles: ['egr'] },
      ],
    });
  });

  test('whose text it cannot take stays empty, and the text among the free columns', async () => {
    expect(await plateOf('sameAs', 'title', 'www.example.org')).toEqual({
      plate: { columns: { title: 'www.example.org' } },
      remarks: ['title: expected an absolute address, came "www.example.org"'],
    });
    expect(await plateOf('form', { column: 'title', words: { cut: 'CUT' } }, 'cutt')).toEqual({
      plate: { columns: { title: 'cutt' } },
      remarks: ['title: expected one of "cut", came "cutt"'],
    });
  });

  test('whose text only a part was taken of leaves the whole among the free columns', async () => {
    expect((await plateOf('caption', { column: 'title', part: '^(.+);' })).plate).toEqual({
      caption: 'The Ferry',
      columns: { title: 'The Ferry; The Kiln' },
    });
  });
});

describe('a role', () => {
  async function rolesOf(words: string) {
    const mapping = mappingOf({
      records: { ...mappingOf().records, maker: { kind: 'Agent', named: { always: 'J. Hallam' } } },
      claims: [
        {
          kind: 'Attribution',
          roles: { record: 'print', agent: 'maker' },
          fields: { role: { column: 'engraver', read: 'relator' } },
        },
      ],
    });
    const bundle = await bundleOf(mapping, `P-1,Kiln,${words},,`);
    return [
      ...rowsOf(bundle, 'Attribution').map(({ role, asWritten }) => `${role} (${asWritten})`),
      ...remarksOf(bundle),
    ];
  }

  test('is read by the MARC relators, their terms and abbreviations', async () => {
    expect(await rolesOf('Engraver')).toEqual(['egr (Engraver)']);
    expect(await rolesOf('sculpt.')).toEqual(['egr (sculpt.)']);
  });

  test('that nobody knows is another role, and reported', async () => {
    expect(await rolesOf('onlooker')).toEqual([
      'oth (onlooker)',
      'engraver: expected a relator term of MARC, came "onlooker": taken as another role',
    ]);
  });

  test('that is not given makes no claim', async () => {
    expect(await rolesOf('')).toEqual([]);
  });
});
