import { beforeAll, describe, expect, test } from 'vitest';
import type { RecordOf } from '../../../src/domain/model/row.ts';
import type { Intention } from '../../../src/intake/intention.ts';
import { tableIntentions } from '../../../src/intake/table/table-intentions.ts';
import type { TableMapping } from '../../../src/intake/table/table-mapping.ts';
import { applyIntake, batchSize, takenUp } from '../../../src/questions/apply-intake.ts';
import { checksum } from '../../../src/questions/export-graph.ts';
import { emptyReport, type IntakeReport } from '../../../src/questions/intake-report.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { testWorld } from '../../support/test-world.ts';
import { header, intentionsOf, mappingOf, once, plain, rowsOf } from './tables.ts';

const { print } = plain.records;

/** Problems as `row key column: reason`, bundles as their keys. */
function told(intentions: readonly Intention[]): string[] {
  return intentions.map(intention => {
    if (intention.outcome === 'taken') return intention.origin.key;
    const { place, message } = intention.problem;
    return `${[place.record, place.key, place.field].filter(each => each !== undefined).join(' ')}: ${message}`;
  });
}

describe('rows', () => {
  test('that cannot be taken are refused with number, key, column and reason; the others are taken', async () => {
    const mapping = mappingOf({
      records: {
        edition: { kind: 'Edition', key: 'number', fields: { title: 'title', work: 'work' } },
        work: { kind: 'Work', named: 'book' },
      },
      row: 'edition',
    });
    const lines = [
      header,
      '1,Views,,,Views',
      '2,Views,,,Views,too,many',
      '3,"Views",broken"quote,,Views',
      '4,"never closed,,,Views',
      ',Views,,,Views',
      '6,,,,Views',
      '7,Views,,,',
      '1,Other,,,Views',
      '9,Views,,,Views',
    ];
    const intentions = await intentionsOf(mapping, lines, { file: 'books.csv' });
    expect(told(intentions)).toEqual([
      '1',
      '2: line 3: expected 5 values, came 7',
      '3',
      '4: line 5: a quoted value begins here and does not end',
      '5 number: expected the key of the row, came none',
      '6 6 title: expected a value for title of "edition", came none',
      '7 7 work: expected a value for work of "edition", came none',
      '8 1: expected each key once, came "1" as in row 1, with other values',
      '9',
    ]);
    expect(intentions[1]).toEqual({
      outcome: 'refused',
      problem: {
        code: 'INPUT_INVALID',
        message: 'line 3: expected 5 values, came 7',
        place: { file: 'books.csv', record: 2 },
      },
    });
  });

  test('without a source are refused; without any source at all nothing is read', async () => {
    const mapping = mappingOf({ source: '{book}' });
    expect(told(await intentionsOf(mapping, [header, '1,a,,,X', '2,b,,,']))).toEqual([
      '1',
      '2 book: expected the source of the row, came none',
    ]);
    const { source: _source, ...sourceless } = mappingOf();
    expect(told(await intentionsOf(sourceless, [header, '1,a,,,'], { source: 'Y' }))).toEqual(['1']);
    await expect(intentionsOf(sourceless, [header, '1,a,,,'])).rejects.toThrow(
      'expected the source of the rows in the mapping or given with the table, came none',
    );
  });

  test('with a key that came before are taken again where nothing differs', async () => {
    const [first, second, again] = await intentionsOf(mappingOf(), [header, '1,a,,,', '2,b,,,', '1,a,,,']);
    expect(again).toEqual({ ...first, place: { record: 3, key: '1' } });
    expect(second?.outcome).toBe('taken');
  });

  test('stand in any order of columns, and may have more: that is said once', async () => {
    const lines = ['titles,book,title,date,number,engraver', 'more,Views,Kiln,,1,', ',,Ferry,,2,'];
    const [first, second] = await intentionsOf(mappingOf(), lines, { file: 'prints.csv' });
    expect(first).toMatchObject({
      rows: [{ row: { caption: 'Kiln', columns: { titles: 'more', book: 'Views' } } }, {}],
      remarks: [
        {
          code: 'INPUT_INVALID',
          message: 'the mapping does not know the column "titles" (it resembles "title"): it is kept as a free column',
          place: { file: 'prints.csv', field: 'titles' },
        },
      ],
    });
    expect(second).toMatchObject({ remarks: [] });
  });

  test('of a table without header have the columns of the mapping', async () => {
    const mapping = mappingOf({ table: { form: 'delimited', delimiter: ';', quote: 'none', header: false } });
    const [only] = await intentionsOf(mapping, '1;"Kiln;J. Hallam;;\n');
    expect(only).toMatchObject({ rows: [{ row: { caption: '"Kiln', columns: { engraver: 'J. Hallam' } } }, {}] });
  });

  test('of an empty table are none, but a header is expected', async () => {
    expect(await intentionsOf(mappingOf({ table: { form: 'delimited', header: false } }), '')).toEqual([]);
    expect(await intentionsOf(mappingOf({ table: { form: 'json lines' } }), '\n')).toEqual([]);
    await expect(intentionsOf(mappingOf(), '')).rejects.toThrow('came none named "number", "title"');
  });

  test('dealt with before are read over', async () => {
    const lines = [header, '1,a,,,', '2,b,,,', ',c,,,', '1,d,,,', '5,e,,,'];
    const all = await intentionsOf(mappingOf(), lines);
    for (let skip = 0; skip <= all.length; skip++) {
      expect(await intentionsOf(mappingOf(), lines, { skip })).toEqual(all.slice(skip));
    }
  });
});

describe('a digest', () => {
  async function digestOf(mapping: TableMapping, row: string): Promise<string> {
    const [only] = await intentionsOf(mapping, [header, row]);
    return only?.outcome === 'taken' ? only.digest : '';
  }

  test('is that of the values and of what the mapping says', async () => {
    const digest = await digestOf(mappingOf(), '1,a,,,');
    expect(digest).toMatch(/^[0-9a-f]{32}$/);
    expect(await digestOf(mappingOf({ about: 'other words' }), '1,a,,,')).toBe(digest);
    expect(await digestOf(mappingOf(), '1,a,b,,')).not.toBe(digest);
    expect(await digestOf(mappingOf(), '1,,a,,')).not.toBe(digest);
    expect(await digestOf(mappingOf({ source: 'Y' }), '1,a,,,')).not.toBe(digest);
    const other = mappingOf({ records: { print: { ...print, fields: { lettering: 'title' } } } });
    expect(await digestOf(other, '1,a,,,')).not.toBe(digest);
  });
});

describe('several rows that make one record', () => {
  const mapping = mappingOf({
    table: { form: 'delimited', rowsPerRecord: 'several' },
    records: { print, maker: { kind: 'Agent', named: 'engraver' } },
    claims: [
      { kind: 'Attribution', roles: { record: 'print', agent: 'maker' }, fields: { role: { always: 'egr' } } },
      { kind: 'Dating', roles: { of: 'print' }, fields: { event: { always: 'MADE' }, date: 'date' } },
    ],
  });

  test('follow one another with one key: fields of the first, claims of all, and nothing is lost', async () => {
    const lines = [header, '1,Kiln,A,1793,Views', '1,,B,1793,Views', '1,The Kiln,A,1793,More', '2,Ferry,A,,'];
    const [first, second] = await intentionsOf(mapping, lines);
    if (first?.outcome !== 'taken') throw new Error('the first record is taken');
    expect(rowsOf(first, 'Plate')).toEqual([
      { id: '@print', kind: 'Plate', caption: 'Kiln', columns: { book: 'Views | More', title: 'The Kiln' } },
    ]);
    expect(rowsOf(first, 'Attribution').map(({ agent }) => agent)).toEqual(['@maker', '@maker.2']);
    expect(rowsOf(first, 'Dating')).toHaveLength(1);
    expect(second).toMatchObject({ origin: { key: '2' }, place: { record: 4 } });
  });

  test('are refused where they stand apart', async () => {
    expect(told(await intentionsOf(mapping, [header, '1,Kiln,A,,', '2,Ferry,A,,', '1,Kiln,B,,']))).toEqual([
      '1',
      '2',
      '3 1: expected each key once, came "1" as in row 1, with other values',
    ]);
  });

  test('do not follow one another where a row between is refused', async () => {
    expect(told(await intentionsOf(mapping, [header, '1,Kiln,A,,', ',,,,x', '1,Kiln,B,,']))).toEqual([
      '1',
      '2 number: expected the key of the row, came none',
      '3 1: expected each key once, came "1" as in row 1, with other values',
    ]);
  });
});

describe('a table in a store', () => {
  const mapping = mappingOf({
    records: {
      print,
      maker: { kind: 'Agent', named: 'engraver' },
      book: { kind: 'Edition', named: 'book', fields: { work: 'work', title: 'book' } },
      work: { kind: 'Work', named: 'book' },
    },
    claims: [
      { kind: 'Attribution', roles: { record: 'print', agent: 'maker' }, fields: { role: { always: 'egr' } } },
      { kind: 'Appearance', roles: { plate: 'print', edition: 'book' }, fields: { presence: { always: 'PRESENT' } } },
      {
        kind: 'Dating',
        roles: { of: 'print' },
        fields: { event: { always: 'MADE' }, date: { column: 'date', read: 'museum date' } },
      },
    ],
  });
  const rows = Array.from({ length: 2 * batchSize + 50 }, (_, i) =>
    i % 100 === 50 ? `,lost ${i},,,` : `P-${i},Print ${i},Engraver ${i % 7},c.${1700 + (i % 90)},Book ${i % 30}`,
  );
  const text = [header, ...rows].join('\n');

  async function take(store: GraphStore, seed: number, stop?: { after: number }): Promise<IntakeReport> {
    const begun = await takenUp(store, 'prints', 'run');
    const control = new AbortController();
    const options = {
      intake: 'prints',
      who: 'intake',
      why: 'table',
      signal: control.signal,
      onProgress: ({ records }: IntakeReport) => {
        if (stop !== undefined && records >= stop.after) control.abort();
      },
    };
    const intentions = tableIntentions(once(text), { mapping, skip: begun.records });
    return applyIntake(store, testWorld(seed), intentions, begun, options);
  }

  let whole: GraphStore;
  let report: IntakeReport;
  let content: string;

  beforeAll(async () => {
    whole = memoryStore();
    report = await take(whole, 1);
    content = await checksum(whole);
  });

  test('accounts for every row', () => {
    const bad = rows.filter(row => row.startsWith(',')).length;
    expect(report).toMatchObject({
      records: rows.length,
      taken: rows.length - bad,
      known: 0,
      refused: bad,
      complete: true,
    });
    expect(report.problems).toHaveLength(bad);
  });

  test('adds nothing when it comes again', async () => {
    const before = await whole.lastChangeSet();
    const again = await take(whole, 2);
    expect(again).toMatchObject({ taken: 0, edited: 0, differing: 0, known: report.taken, refused: report.refused });
    expect([await checksum(whole), await whole.lastChangeSet()]).toEqual([content, before]);
  });

  test('has the same content whether the run was broken off and taken up or not', async () => {
    const broken = memoryStore();
    const first = await take(broken, 2, { after: batchSize });
    expect(first.complete).toBe(false);
    expect(first.records).toBeLessThan(rows.length);
    expect(await take(broken, 3)).toMatchObject({ records: rows.length, complete: true });
    expect(await checksum(broken)).toBe(content);
  });

  test('taken up a row too late is not the same', async () => {
    const few = [header, ...rows.slice(0, 40)].join('\n');
    const apply = (store: GraphStore, intentions: AsyncIterable<Intention>, seed: number) =>
      applyIntake(store, testWorld(seed), intentions, emptyReport('run'), {
        intake: 'few',
        who: 'intake',
        why: 'table',
      });
    const contents: string[] = [];
    for (const skip of [0, 30, 31]) {
      const store = memoryStore();
      const begun = await intentionsOf(mapping, few);
      await apply(store, once(...begun.slice(0, Math.min(skip, 30))), 1);
      await apply(store, tableIntentions(once(few), { mapping, skip }), 2);
      contents.push(await checksum(store));
    }
    expect(contents[1]).toBe(contents[0]);
    expect(contents[2]).not.toBe(contents[0]);
  });

  test('joins a record of another table that comes before or after it', async () => {
    const joined = mappingOf({
      claims: [
        {
          kind: 'Appearance',
          roles: { plate: 'print', edition: { source: 'B', key: 'book' } },
          fields: { presence: { always: 'PRESENT' } },
        },
      ],
    });
    const books = mappingOf({
      source: 'B',
      row: 'book',
      records: {
        book: { kind: 'Edition', key: 'number', fields: { title: 'title', work: 'work' } },
        work: { kind: 'Work', named: 'title' },
      },
    });
    const tables = [
      { mapping: joined, lines: [header, '1,Kiln,,,B-1'] },
      { mapping: books, lines: [header, 'B-1,Views,,,'] },
    ];
    for (const order of [tables, tables.toReversed()]) {
      const store = memoryStore();
      for (const [i, { mapping, lines }] of order.entries()) {
        const intentions = tableIntentions(once(lines.join('\n')), { mapping });
        await applyIntake(store, testWorld(i), intentions, await takenUp(store, `table ${i}`, 'run'), {
          intake: `table ${i}`,
          who: 'intake',
          why: 'table',
        });
      }
      const [plate, edition] = await store.byOrigin([
        { source: 'X', key: '1' },
        { source: 'B', key: 'B-1' },
      ]);
      const [appearances] = await store.linked([plate!.id], [{ kind: 'Appearance', name: 'plate' }]);
      expect(appearances).toMatchObject([{ edition: edition!.id, presence: 'PRESENT' }]);
      const [row] = await store.rows([edition!.id]);
      expect((row as RecordOf<'Edition'>).title).toBe('Views');
    }
  });
});
