import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { Compile } from 'typebox/schema';
import { describe, expect, test } from 'vitest';
import { PlatestemmaError } from '../../../src/errors.ts';
import { readMapping } from '../../../src/intake/table/read-mapping.ts';
import { mappingOf, plain } from './tables.ts';

const { print } = plain.records;
const agent = { kind: 'Agent', each: { column: 'engraver', split: ';' }, named: 'each' };
const book = { kind: 'Edition', named: 'book', fields: { work: 'work', title: 'book' } };
const work = { kind: 'Work', named: 'book' };
const records = { print, agent, book, work };
const attributed = {
  kind: 'Attribution',
  roles: { record: 'print', agent: 'agent' },
  fields: { role: { always: 'egr' } },
};
const appears = {
  kind: 'Appearance',
  roles: { plate: 'print', edition: 'book' },
  fields: { presence: { always: 'PRESENT' } },
};

function withPrint(fields: object, more: object = {}) {
  return { records: { ...records, print: { ...print, fields, ...more } } };
}

function withClaim(claim: object) {
  return { records, claims: [attributed, claim] };
}

/** What is said of a mapping that differs from the plain one. */
function faultOf(changed: object): string {
  try {
    mappingOf(changed as Readonly<Record<string, unknown>>);
    return 'none';
  } catch (error) {
    if (error instanceof PlatestemmaError && error.code === 'INPUT_INVALID') return error.message;
    throw error;
  }
}

describe('a mapping', () => {
  test('is read as it stands', () => {
    expect(mappingOf({ records, claims: [attributed, appears] })).toEqual({
      ...plain,
      records,
      claims: [attributed, appears],
    });
  });

  test('that is no JSON is refused with the file', () => {
    const read = () => readMapping('{ "table": ', 'prints.json');
    expect(read).toThrow('expected a mapping as JSON, came "{ "table": "');
    expect(read).toThrow(expect.objectContaining({ code: 'INPUT_INVALID', place: { file: 'prints.json' } }));
  });

  test('names the path of its first fault, and counts the others', () => {
    const read = () =>
      readMapping(JSON.stringify({ ...plain, row: 'plate', columns: ['number', 'number'] }), 'prints.json');
    expect(read).toThrow(
      'mapping prints.json, columns[1]: expected each column once, came "number" twice (and 2 more)',
    );
    expect(read).toThrow(
      expect.objectContaining({ code: 'INPUT_INVALID', place: { file: 'prints.json', field: 'columns[1]' } }),
    );
  });
});

describe('the form of a mapping', () => {
  test.each<[object, string]>([
    [{ colums: [] }, 'mapping colums: there is no such field (did you mean "columns"?)'],
    [{ columns: 'number' }, 'mapping columns: expected a list, came "number"'],
    [{ columns: undefined }, 'mapping columns: expected a value, came none'],
    [{ table: { form: 'csv' } }, 'mapping table.form: expected one of delimited, json lines, came "csv"'],
    [withPrint({ caption: 5 }), 'mapping records.print.fields.caption: expected text or an object or a list, came 5'],
    [
      withPrint({ caption: { colum: 'title' } }),
      'mapping records.print.fields.caption.colum: there is no such field (did you mean "column"?)',
    ],
    [
      withPrint({ caption: { first: [{ first: [{ spilt: ';' }] }] } }),
      'mapping records.print.fields.caption.first[0].first[0].spilt: there is no such field (did you mean "split"?)',
    ],
    [withPrint({}, { kind: 'Plat' }), 'mapping records.print.kind: expected one of Agent, Place,'],
    [withPrint({}, { kind: 'Plat' }), 'came "Plat" (did you mean "Plate"?)'],
    [withClaim({ kind: 'Dating' }), 'mapping claims[1].roles: expected a value, came none'],
    [
      withPrint({ caption: { column: 'title', read: 'date' } }),
      'expected one of library date, museum date, relator, came "date"',
    ],
  ])('%j: %s', (changed, message) => {
    expect(faultOf(changed)).toContain(message);
  });
});

describe('what a mapping names must be there', () => {
  test.each<[object, string]>([
    [
      withPrint({ caption: 'titel' }),
      'mapping records.print.fields.caption: there is no column or value "titel" (did you mean "title"?)',
    ],
    [
      withPrint({ caption: { text: '{number}: {titel}' } }),
      'mapping records.print.fields.caption.text: there is no column or value "titel"',
    ],
    [
      withPrint({ caption: { all: ['title', { column: 'x' }] } }),
      'fields.caption.all[1].column: there is no column or value "x"',
    ],
    [withPrint({ caption: 'each' }), 'mapping records.print.fields.caption: "each" stands for nothing here'],
    [
      withPrint({ caption: { column: 'title', if: { column: 'bok', filled: true } } }),
      'if.column: there is no column or value "bok"',
    ],
    [
      withPrint({ captoin: 'title' }),
      'mapping records.print.fields.captoin: Plate has no field "captoin" (did you mean "caption"?)',
    ],
    [withPrint({ columns: 'title' }), 'Plate has no field "columns" (one of form, caption, lettering,'],
    [{ row: 'plate' }, 'mapping row: there is no entry "plate" among the records (one of print)'],
    [{ row: '__proto__' }, 'mapping row: there is no entry "__proto__" among the records (one of print)'],
    [
      { records: { ...records, book: { ...book, fields: { title: 'book', work: 'wrok' } } } },
      'there is no entry "wrok" among the records (did you mean "work"?)',
    ],
    [{ source: '{museum}' }, 'mapping source: there is no column or value "museum"'],
    [{ reference: { title: '{museum}' } }, 'mapping reference.title: there is no column or value "museum"'],
    [{ values: { a: 'b', b: 'title' } }, 'mapping values.a: there is no column or value "b"'],
    [
      withClaim({ ...appears, roles: { plate: 'plate', edition: 'book' } }),
      'mapping claims[1].roles.plate: there is no entry "plate"',
    ],
    [
      withClaim({ ...appears, roles: { plat: 'print', edition: 'book' } }),
      'mapping claims[1].roles.plat: Appearance has no role "plat" (did you mean "plate"?) (and 1 more)',
    ],
    [withClaim({ ...appears, said: ['titel'] }), 'mapping claims[1].said[0]: there is no column or value "titel"'],
    [withClaim({ ...appears, note: '{x}' }), 'mapping claims[1].note: there is no column or value "{x}"'],
  ])('%j: %s', (changed, message) => {
    expect(faultOf(changed)).toContain(message);
  });

  test('in JSON lines a path is known by its first name', () => {
    const changed = (caption: string) => ({ table: { form: 'json lines' }, ...withPrint({ caption }) });
    expect(faultOf(changed('title.main.text'))).toBe('none');
    expect(faultOf(changed('main.title'))).toContain('there is no column or value "main.title"');
  });
});

describe('what a kind must have, and what can stand there', () => {
  const link = { key: 'book' };
  test.each<[object, string]>([
    [
      { records: { print, book: { kind: 'Edition', named: 'book', fields: { title: 'book' } } } },
      'mapping records.book.fields: expected a value for "work", which Edition must have, came none',
    ],
    [
      { records: { print, book: { ...book, fields: { ...book.fields, work: 'print' } } } },
      'records.book.fields.work: expected Work, came Plate "print"',
    ],
    [
      { records: { ...records, book: { ...book, fields: { title: 'book', work: 'agent' } } } },
      'expected Work, came Agent "agent"',
    ],
    [
      { records: { ...records, work: { ...work, each: 'book' } } },
      'records.book.fields.work: expected one record, but "work" may be several',
    ],
    [
      { records: { ...records, detail: { kind: 'Detail', key: 'book', fields: { of: 'detail' } } } },
      'mapping records.detail: it names itself, by way of the records that it names',
    ],
    [{ records: { print: { kind: 'Plate' } } }, 'mapping records.print: expected either "key" or "named"'],
    [{ records: { print: { ...print, named: 'title' } } }, 'mapping records.print: expected either "key" or "named"'],
    [
      { records: { print: { ...print, if: { column: 'book', filled: true } } } },
      'mapping records.print: expected one record in every row',
    ],
    [{ records: { print, 'a b': agent } }, 'mapping records.a b: expected a name of letters and digits'],
    [
      withPrint({ form: { always: 'PLAT' } }),
      'records.print.fields.form: expected one of PLATE, CUT, VIGNETTE, COVER, SINGLE_SHEET_PRINT (is it "PLATE"?), came "PLAT"',
    ],
    [withPrint({ form: { column: 'title', words: { cut: 'CUTT' } } }), 'came "CUTT"'],
    [withPrint({ caption: [{ text: 'title' }] }), 'records.print.fields.caption: expected one value, came a list'],
    [
      withPrint({ letteredNames: 'engraver' }),
      'records.print.fields.letteredNames: expected a list of items with name and roles, came one value',
    ],
    [
      withPrint({ letteredNames: [{ name: 'engraver' }] }),
      'records.print.fields.letteredNames[0]: expected a value for "roles", came none',
    ],
    [
      withPrint({ labels: [{ txt: 'title', text: 'title' }] }),
      'records.print.fields.labels[0].txt: expected one of text, language',
    ],
    [
      withPrint({ caption: { column: 'title', read: 'museum date' } }),
      '"caption" of Plate is not read as a museum date',
    ],
    [
      { records: { ...records, note: { kind: 'Reference', key: 'book', fields: { csl: 'book' } } } },
      '"csl" cannot be filled from a table',
    ],
    [
      withClaim({ kind: 'Dating', roles: { of: 'print' }, fields: { date: 'date' } }),
      'claims[1].fields: expected a value for "event", which Dating must have, came none',
    ],
    [
      withClaim({ ...appears, roles: { plate: 'print' } }),
      'claims[1].roles: expected "edition", which Appearance must have, came none',
    ],
    [
      withClaim({ ...appears, roles: { plate: 'print', edition: 'work' } }),
      'claims[1].roles.edition: expected Edition, came Work "work"',
    ],
    [
      withClaim({ ...appears, roles: { plate: link, edition: link } }),
      'claims[1].roles.edition: expected at most one role of a record that may yet come',
    ],
    [withClaim({ ...attributed, each: 'book' }), 'claims[1].each: its roles name records that are several already'],
    [
      withClaim({ ...attributed, fields: { role: { column: 'book', read: 'library date' } } }),
      '"role" of Attribution is not read as a library date',
    ],
    [
      withClaim({ ...appears, imprint: { place: 'book' } }),
      'claims[1].imprint: Appearance is not read from the words of an imprint',
    ],
    [
      withClaim({ kind: 'Imprint', roles: { edition: 'book', agent: 'agent' }, imprint: { place: 'book' } }),
      'claims[1].imprint: expected no agent beside it',
    ],
    [
      withClaim({ kind: 'Imprint', roles: { edition: link }, imprint: { place: 'book' } }),
      'an imprint that is read from words is one of an edition of this row',
    ],
  ])('%j: %s', (changed, message) => {
    expect(faultOf(changed)).toContain(message);
  });
});

describe('rules that cannot be', () => {
  test.each<[object, string]>([
    [withPrint({ caption: {} }), 'fields.caption: expected one of column, text, always, first, all, came none'],
    [
      withPrint({ caption: { column: 'title', always: 'x' } }),
      'fields.caption: expected one of column, text, always, first, all, came column and always',
    ],
    [
      withPrint({ caption: { column: 'title', part: '(' } }),
      'fields.caption.part: expected a regular expression, came "("',
    ],
    [withPrint({ caption: { column: 'title', written: '$1' } }), 'fields.caption.written: expected "part" beside it'],
    [
      withPrint({ caption: { column: 'title', otherwise: 'x' } }),
      'fields.caption.otherwise: expected "words" beside it',
    ],
    [
      withPrint({ caption: { column: 'title', split: [''] } }),
      'fields.caption.split: expected marks of at least one character',
    ],
    [
      withPrint({ caption: { column: 'title', if: { column: 'book' } } }),
      'fields.caption.if: expected a column and what it is, or "any" alone',
    ],
    [
      withPrint({ caption: { column: 'title', if: [{ filled: true }] } }),
      'fields.caption.if[0]: expected a column and what it is',
    ],
    [
      withPrint({ caption: { column: 'title', if: { any: [{ column: 'book', like: '[' }] } } }),
      'if.any[0].like: expected a regular expression',
    ],
    [{ values: { title: 'book' } }, 'values.title: expected a name that no column has, came "title"'],
    [{ columns: [] }, 'mapping columns: expected the names of the columns, came none'],
    [{ columns: ['number', 'title', 'each'] }, 'columns[2]: "each" is no name of a column'],
    [{ table: { form: 'delimited', delimiter: '||' } }, 'table.delimiter: expected one character, came "||"'],
    [
      { table: { form: 'delimited', delimiter: ';', quote: ';' } },
      'table.quote: expected one character other than the delimiter',
    ],
    [{ table: { form: 'json lines', header: false } }, 'table.header: JSON lines have none'],
    [{ table: { form: 'delimited', encoding: 'ascii-9' } }, 'table.encoding: expected an encoding such as utf-8'],
  ])('%j: %s', (changed, message) => {
    expect(faultOf(changed)).toContain(message);
  });
});

test('the schema beside the stores has the same opinion of the form', () => {
  const path = resolve(import.meta.dirname, '../../../schema/table-mapping.schema.json');
  const schema = Compile(JSON.parse(readFileSync(path, 'utf8')));
  expect(schema.Check({ ...plain, $schema: 'table-mapping.schema.json' })).toBe(true);
  expect(schema.Check({ ...plain, ...withPrint({ caption: { colum: 'title' } }) })).toBe(false);
});
