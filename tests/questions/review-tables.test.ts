import { beforeEach, describe, expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { applyReview } from '../../src/questions/apply-review.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { writeRows } from '../support/all-kinds-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { nextChange, reviewOf } from '../support/tables.ts';

const work: AnyRow = { id: 'work-a-b', kind: 'Work', labels: [{ text: 'Views' }], languages: ['en', 'de'] };
const edition: AnyRow = {
  ...{ id: 'edition-a-b', kind: 'Edition', work: 'work-a-b', title: 'Views', extent: '1-2', format: '007' },
  columns: { shelf: 'A 1' },
};
const dating: AnyRow = {
  ...{ id: 'dating-a-b', kind: 'Dating', of: 'edition-a-b', event: 'PUBLISHED', date: '1790-06' },
  evidence: [{ words: 'June 1790' }],
};

let store: GraphStore;
beforeEach(async () => {
  store = checkedGraphStore(memoryStore());
  await writeRows(store, [work, edition, dating]);
});

/** A row is written again with other values. */
async function changeIt(row: AnyRow, values: object): Promise<void> {
  await applyChanges(store, { rows: [{ ...row, ...values } as AnyRow], added: new Set(), changeSet: nextChange });
}

const editions = (...lines: readonly string[]) =>
  reviewOf(store, {
    'Edition.csv': ['id of Edition,seen in change set,title,extent,format,free: shelf', ...lines].join('\n'),
  });
const datings = (...lines: readonly string[]) =>
  reviewOf(store, { 'Dating.csv': ['id of Dating,seen in change set,of,event,date,evidence', ...lines].join('\n') });

/** What was refused, as a person reads it. */
async function refusalsOf(review: ReturnType<typeof editions>): Promise<readonly string[]> {
  return (await review).refused.flatMap(({ problems }) =>
    problems.map(
      ({ code, message, place: { file, record, field } }) => `${code} ${file} ${record} ${field}: ${message}`,
    ),
  );
}

const same = 'edition-a-b,1,Views,1-2,007,A 1';

describe('a row of a table', () => {
  test('that says the same is no difference', async () => {
    expect(await editions(same)).toEqual({ rows: 1, changed: [], added: [], refused: [] });
  });

  test('is told with its place, its cells and what it comes to', async () => {
    expect(await editions('edition-a-b,1,Other views,1-2,007,A 2')).toEqual({
      ...{ rows: 1, added: [], refused: [] },
      changed: [
        {
          place: { file: 'Edition.csv', record: 2, key: 'edition-a-b' },
          row: { ...edition, title: 'Other views', columns: { shelf: 'A 2' } },
          cells: [
            { column: 'title', before: 'Views', after: 'Other views' },
            { column: 'free: shelf', before: 'A 1', after: 'A 2' },
          ],
          ...{ seen: 1, now: 1 },
        },
      ],
    });
  });

  test('without an id and change set is new, with the same id each time, and is added once', async () => {
    const text = [
      'id of Edition,seen in change set,title,work',
      ...['New views', 'New views', 'Newest views'].map(title => `,,${title},work-a-b`),
    ].join('\n');
    const first = await reviewOf(store, { 'a.csv': text });
    const ids = first.added.map(({ row }) => row.id);
    expect(new Set(ids).size).toBe(3);
    expect(first.added[0]!.row).toEqual({ id: ids[0], kind: 'Edition', title: 'New views', work: 'work-a-b' });
    expect((await reviewOf(store, { 'a.csv': text })).added.map(({ row }) => row.id)).toEqual(ids);
    await applyReview(store, first, nextChange);
    const again = `${text}\n`.replaceAll('\n', ',\r\n');
    expect(await reviewOf(store, { 'b.csv': again })).toEqual({ rows: 3, changed: [], added: [], refused: [] });

    const elsewhere = checkedGraphStore(memoryStore());
    await applyChanges(elsewhere, { rows: [work], added: new Set([work.id]), changeSet: { ...nextChange, who: 'B' } });
    const { added } = await reviewOf(elsewhere, { 'a.csv': text });
    expect(added.map(({ row }) => ids.includes(row.id))).toEqual([false, false, false]);
  });

  test('that brings its own id is new once, and can be named by others, in other tables too', async () => {
    const files = {
      'Edition.csv': 'id of Edition,seen in change set,title,work\nedition-c-d,,C,work-c-d\n',
      'Work.csv': 'id of Work,seen in change set,label: en\nwork-c-d,,C\n',
    };
    const review = await reviewOf(store, files);
    expect(review.added.map(({ row }) => row.id)).toEqual(['edition-c-d', 'work-c-d']);
    await applyReview(store, review, nextChange);
    expect(await reviewOf(store, files)).toEqual({ rows: 2, changed: [], added: [], refused: [] });
  });

  test('that is missing, or has fewer columns, takes nothing away', async () => {
    const text = 'id of Edition,seen in change set,title\nedition-a-b,1,C\n';
    const { changed } = await reviewOf(store, { 'a.csv': text });
    expect(changed.map(({ row }) => row)).toEqual([{ ...edition, title: 'C' }]);
  });
});

describe('a row that was changed since its table was made', () => {
  test('keeps what was changed there in other columns', async () => {
    await changeIt(edition, { extent: '48 pages', columns: { shelf: 'A 1', more: 'x' } });
    const { changed, refused } = await editions('edition-a-b,1,Other views,1-2,007,A 2');
    expect(refused).toEqual([]);
    expect(changed).toMatchObject([{ seen: 1, now: 2, cells: [{ column: 'title' }, { column: 'free: shelf' }] }]);
    expect(changed[0]!.row).toEqual({
      ...edition,
      ...{ title: 'Other views', extent: '48 pages', columns: { shelf: 'A 2', more: 'x' } },
    });
  });

  test('in the same cell is refused whole, with what the table, it and the store say', async () => {
    await changeIt(edition, { title: 'Their views' });
    const { changed, refused } = await editions('edition-a-b,1,My views,48 pages,007,A 1');
    expect(changed).toEqual([]);
    expect(refused).toEqual([
      {
        place: { file: 'Edition.csv', record: 2, key: 'edition-a-b' },
        problems: [
          {
            code: 'REVISION_MOVED',
            message:
              'the table changes "Views" into "My views", but it was changed into "Their views" since: decide, and take the table out anew',
            place: { file: 'Edition.csv', record: 2, key: 'edition-a-b', field: 'title' },
            moved: { column: 'title', before: 'Views', after: 'My views', now: 'Their views' },
          },
        ],
      },
    ]);
  });

  test('into the same is no difference', async () => {
    await changeIt(edition, { title: 'My views' });
    expect(await editions('edition-a-b,1,My views,1-2,007,A 1')).toMatchObject({ changed: [], refused: [] });
  });

  test('between review and writing is not written over', async () => {
    const review = await editions('edition-a-b,1,My views,1-2,007,A 1');
    await changeIt(edition, { title: 'Their views' });
    await expect(applyReview(store, review, nextChange)).rejects.toMatchObject({
      code: 'REVISION_MOVED',
      message: expect.stringContaining('edition-a-b'),
    });
    expect(await store.lastChangeSet()).toBe(2);
  });
});

describe('a row that was taken out', () => {
  const takeOut = (id: string) => store.write({ changeSet: nextChange, put: [], remove: [{ id }] });

  test('since its table was made is told so', async () => {
    await takeOut('dating-a-b');
    expect(await refusalsOf(datings('dating-a-b,1,edition-a-b,PUBLISHED,1790-07,words: June 1790'))).toEqual([
      'REVISION_MOVED Dating.csv 2 id of Dating: "dating-a-b" was taken out of the store since change set 1',
    ]);
  });

  test('can be added again', async () => {
    await takeOut('dating-a-b');
    const review = await datings('dating-a-b,,edition-a-b,PUBLISHED,1790-07,words: July 1790');
    expect(await applyReview(store, review, nextChange)).toEqual({ changeSet: 3, problems: [] });
    expect(await store.rows(['dating-a-b'])).toMatchObject([{ date: '1790-07', since: 3 }]);
  });
});

describe('what is refused is told with file, row and column', () => {
  test.each<[string, readonly string[], readonly string[]]>([
    [
      'an id that is none',
      ['edition_x,1,C'],
      ['KIND_MISMATCH Edition.csv 2 id of Edition: expected an id of Edition, came "edition_x"'],
    ],
    [
      'an id of another kind',
      ['work-a-b,1,C'],
      ['KIND_MISMATCH Edition.csv 2 id of Edition: expected an id of Edition, came "work-a-b"'],
    ],
    [
      'an id that is nowhere',
      ['edition-a-c,1,C'],
      [
        'NOT_FOUND Edition.csv 2 id of Edition: "edition-a-c" is not in the store: is the table of another one, or was the id changed? A new row has no change set',
      ],
    ],
    [
      'no id',
      [',1,C'],
      [
        'INPUT_INVALID Edition.csv 2 id of Edition: expected the id of the row that was seen in change set 1, came none',
      ],
    ],
    [
      'no change set',
      ['edition-a-b,,C'],
      [
        'INPUT_INVALID Edition.csv 2 seen in change set: "edition-a-b" is in the store: expected the change set in which it was seen, or another id for a new row, came none',
      ],
    ],
    [
      'a change set that did not write it',
      ['edition-a-b,7,C'],
      [
        'INPUT_INVALID Edition.csv 2 seen in change set: expected the change set in which "edition-a-b" was seen, came "7", which did not write it: is the table of another store?',
      ],
    ],
    [
      'what is no change set',
      ['edition-a-b,Jan,C'],
      [
        'INPUT_INVALID Edition.csv 2 seen in change set: expected the change set in which "edition-a-b" was seen, came "Jan", which did not write it: is the table of another store?',
      ],
    ],
    [
      'a required value that is taken away',
      ['edition-a-b,1,,1-2,007,A 1'],
      ['INPUT_INVALID Edition.csv 2 title: expected a value, came none'],
    ],
    [
      'a new row that has nothing but its id',
      ['edition-g-h,,,,,'],
      ['INPUT_INVALID Edition.csv 2 work: expected a value, came none'],
    ],
    [
      'a row that ends before a value',
      ['edition-a-b,1,C,1-2,007'],
      [
        'INPUT_INVALID Edition.csv 2 free: shelf: expected "A 1" or another value, came the end of the row: is the table whole?',
      ],
    ],
    [
      'what a spreadsheet makes of a text',
      ['edition-a-b,1,Views,02-Jan,7,A 1'],
      [
        'INPUT_INVALID Edition.csv 2 extent: expected a text, came "02-Jan", which a spreadsheet seems to have made of "1-2": give the column the format of text, and put back what was there',
        'INPUT_INVALID Edition.csv 2 format: expected a text, came "7", which a spreadsheet seems to have made of "007": give the column the format of text, and put back what was there',
      ],
    ],
    [
      'one id in two rows, both of them',
      ['edition-a-b,1,C,1-2,007,A 1', same],
      [
        'INPUT_INVALID Edition.csv 2 undefined: the id stands in row 3 too: a copied row becomes a new one without its id and change set',
        'INPUT_INVALID Edition.csv 3 undefined: "edition-a-b" stands in row 2 too: a copied row becomes a new one without its id and change set',
      ],
    ],
  ])('%s', async (_what, lines, messages) => {
    const review = editions(...lines);
    expect(await refusalsOf(review)).toEqual(messages);
    expect(await review).toMatchObject({ rows: lines.length, changed: [], added: [] });
  });

  test.each<[string, string, string]>([
    [
      'a date that a spreadsheet has made its own',
      'dating-a-b,1,edition-a-b,PUBLISHED,Jun-90,words: June 1790',
      'DATE_UNREADABLE Dating.csv 2 date: expected a date such as 1790-06, came "Jun-90", which a spreadsheet seems to have made of "1790-06": give the column the format of text, and put back what was there',
    ],
    [
      'a date that cannot be read',
      'dating-a-b,1,edition-a-b,PUBLISHED,June,words: June 1790',
      'DATE_UNREADABLE Dating.csv 2 date: ',
    ],
    [
      'a word that is none',
      'dating-a-b,1,edition-a-b,PUBLISH,1790-06,words: June 1790',
      'INPUT_INVALID Dating.csv 2 event: expected one of MADE, ',
    ],
    [
      'a name that is nowhere',
      'dating-a-b,1,edition-a-c,PUBLISHED,1790-06,words: June 1790',
      'NOT_FOUND Dating.csv 2 undefined: names "edition-a-c", which is neither in the store nor in a table',
    ],
    [
      'a name of a kind that cannot stand there',
      'dating-a-b,1,edition-a-b,PUBLISHED,1790-06,reference: work-a-b',
      'KIND_MISMATCH Dating.csv 2 evidence: expected Reference, came "work-a-b"',
    ],
  ])('%s', async (_what, line, message) => {
    expect(await refusalsOf(datings(line))).toEqual([expect.stringContaining(message)]);
  });

  test('a row that names a refused one, and what names that', async () => {
    const review = await reviewOf(store, {
      'Work.csv': 'id of Work,seen in change set,form\nwork-c-d,,BOOKLET\n',
      'Edition.csv': 'id of Edition,seen in change set,title,work\nedition-c-d,,C,work-c-d\n',
      'Dating.csv': 'id of Dating,seen in change set,of,event\n,,edition-c-d,PUBLISHED\n',
    });
    expect(review).toMatchObject({ rows: 3, added: [] });
    expect(review.refused.map(({ place: { file }, problems }) => [file, problems[0]!.code])).toEqual([
      ['Work.csv', 'INPUT_INVALID'],
      ['Edition.csv', 'NOT_FOUND'],
      ['Dating.csv', 'NOT_FOUND'],
    ]);
  });

  test('a claim that does not fit its group of alternatives, and the others are taken', async () => {
    const group: AnyRow = { id: 'alternatives-a-b', kind: 'Alternatives' };
    await applyChanges(store, { rows: [group], added: new Set([group.id]), changeSet: nextChange });
    const review = reviewOf(store, {
      'Dating.csv': [
        'id of Dating,seen in change set,of,event,date,alternativeTo',
        ',,edition-a-b,PUBLISHED,1790,alternatives-a-b',
        ',,edition-a-b,MADE,1791,alternatives-a-b',
        ',,edition-a-b,PUBLISHED,1792,alternatives-a-b',
      ].join('\n'),
    });
    expect((await review).added.map(({ place }) => place.record)).toEqual([2, 4]);
    expect(await refusalsOf(review)).toEqual([
      expect.stringMatching(
        /^INPUT_INVALID Dating\.csv 3 alternativeTo: expected what dating-\w+ in "alternatives-a-b" is, a Dating of "edition-a-b", PUBLISHED, came a Dating of "edition-a-b", MADE$/,
      ),
    ]);
  });

  test('characters that were lost, but not those that were lost before', async () => {
    await writeRows(store, [{ id: 'edition-e-f', kind: 'Edition', work: 'work-a-b', title: 'Vu\uFFFD' }]);
    const windows1252 = Buffer.from('edition-a-b,1,Vués,1-2,007,A 1\n', 'latin1');
    const head = 'id of Edition,seen in change set,title,extent,format,free: shelf\nedition-e-f,2,Vu\uFFFD,1\n';
    const review = await reviewOf(store, { 'Edition.csv': Buffer.concat([Buffer.from(head), windows1252]) });
    expect(review.changed.map(({ row }) => row.id)).toEqual(['edition-e-f']);
    expect(await refusalsOf(Promise.resolve(review))).toEqual([
      'INPUT_INVALID Edition.csv 3 title: expected "Vu\uFFFDs" in whole characters, came one that was lost: save the table as UTF-8',
    ]);
  });
});

test('more than one change can hold is refused before anything is written', async () => {
  const lines = Array.from({ length: 20_001 }, (_, i) => `work-many-${i},`);
  const works = ['id of Work,seen in change set', ...lines];
  expect((await reviewOf(store, { 'Work.csv': works.slice(0, -1).join('\n') })).added.length).toBe(20_000);
  await expect(reviewOf(store, { 'Work.csv': works.join('\n') })).rejects.toMatchObject({
    code: 'INPUT_INVALID',
    message: expect.stringMatching(
      /^expected at most 20,000 changed and new rows at once, .* take the tables in parts/,
    ),
  });
});

test('one change set is written for all, which is no run of an intake: what it edits counts as edited here', async () => {
  const review = await reviewOf(store, {
    'Edition.csv': 'id of Edition,seen in change set,title,work\nedition-a-b,1,C,work-a-b\n,,D,work-a-b\n',
    'Work.csv': 'id of Work,seen in change set,languages\nwork-a-b,1,de | en | fr\n',
  });
  expect(await applyReview(store, review, nextChange)).toEqual({ changeSet: 2, problems: [] });
  expect(await store.changeSets([2])).toEqual([{ number: 2, ...nextChange }]);
  expect(await store.rows(['work-a-b'])).toMatchObject([{ since: 2, languages: ['de', 'en', 'fr'] }]);
  expect(await applyReview(store, { rows: 0, changed: [], added: [], refused: [] }, nextChange)).toBe(undefined);
});
