import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkRow } from '../../../src/domain/model/check-row.ts';
import { PlatestemmaError } from '../../../src/errors.ts';

const place = { file: 'some.jsonl', record: 7 };

function fault(value: unknown): unknown {
  try {
    checkRow(value, place);
  } catch (error) {
    if (error instanceof PlatestemmaError) return { code: error.code, message: error.message, place: error.place };
    throw error;
  }
  return 'none';
}

const edition = { id: 'edition-shore-first', kind: 'Edition', work: 'work-shore-book', title: 'The Shore' };

describe('a row of the right form', () => {
  test('comes back with its origins apart', () => {
    const origins = [{ source: 'Library', key: '17' }];
    expect(checkRow({ ...edition, origins }, place)).toEqual({ row: edition, origins });
  });

  test('needs no origins', () => {
    expect(checkRow(edition, place)).toEqual({ row: edition, origins: [] });
  });

  test('every line of the demo world is one', () => {
    const folder = resolve(import.meta.dirname, '../../../demo-graph');
    const lines = readdirSync(folder)
      .filter(name => name.endsWith('.jsonl'))
      .flatMap(name => readFileSync(join(folder, name), 'utf8').split('\n'))
      .filter(line => line !== '' && !line.startsWith('#'));
    expect(lines.map(line => fault(JSON.parse(line)))).toEqual(lines.map(() => 'none'));
    expect(lines.length).toBeGreaterThan(30);
  });
});

describe('a fault of form says what was expected, what came, and where', () => {
  const at = (field: string) => ({ ...place, key: edition.id, field });

  test('a value of another type', () => {
    expect(fault({ ...edition, title: 3 })).toEqual({
      code: 'INPUT_INVALID',
      message: 'edition-shore-first, field title: expected text, came 3',
      place: at('title'),
    });
  });

  test('an unknown field, with the name that may have been meant', () => {
    expect(fault({ ...edition, statment: 'Second edition' })).toEqual({
      code: 'INPUT_INVALID',
      message: 'edition-shore-first, field statment: there is no such field (did you mean "statement"?)',
      place: at('statment'),
    });
  });

  test('a required field left out', () => {
    expect(fault({ id: edition.id, kind: 'Edition', work: edition.work })).toEqual({
      code: 'INPUT_INVALID',
      message: 'edition-shore-first, field title: expected a value, came none',
      place: at('title'),
    });
  });

  test.each([
    [
      { id: 'plate-dog-gate', kind: 'Plate', form: 'CUTT' },
      /form: expected one of PLATE, CUT, .* \(did you mean "CUT"\?\)/,
    ],
    [
      {
        id: 'plate-dog-gate',
        kind: 'Plate',
        letteredNames: [
          { name: 'A', roles: ['egr'] },
          { name: 'B', roles: [3] },
        ],
      },
      /field letteredNames\[1\]\.roles\[0\]: expected text, came 3/,
    ],
    [{ id: 'place-far-north', kind: 'Place', latitude: 91 }, /field latitude: expected at most 90, came 91/],
    [{ ...edition, title: '' }, /field title: expected text of at least one character, came ""/],
    [
      { ...edition, sameAs: ['not an address'] },
      /field sameAs\[0\]: expected an absolute address, came "not an address"/,
    ],
    [{ ...edition, id: 'Edition 1' }, /field id: expected an id, came "Edition 1"/],
    [{ ...edition, title: 3, statement: 4 }, /field title: expected text, came 3 \(and 1 more\)/],
    [{ id: 'edition-shore-first', kind: 'Editon' }, /field kind: .* came "Editon" \(did you mean "Edition"\?\)/],
    [{ id: 'edition-shore-first' }, /field kind: expected a kind of record or claim, came none/],
    [[edition], /expected a record or claim, came \[/],
    [null, /expected a record or claim, came null/],
  ])('%j', (value, message) => {
    expect(fault(value)).toMatchObject({ code: 'INPUT_INVALID', message: expect.stringMatching(message) });
  });
});

describe('what a schema cannot see', () => {
  const dating = { id: 'dating-shore-first', kind: 'Dating', of: 'edition-shore-first', event: 'PUBLISHED' };

  test('a link to a kind that may not stand there', () => {
    expect(fault({ ...edition, work: 'place-old-town' })).toMatchObject({
      code: 'KIND_MISMATCH',
      message: 'edition-shore-first, field work: expected Work, came "place-old-town"',
    });
    expect(fault({ ...dating, of: 'imprint-shore-first' })).toMatchObject({ code: 'KIND_MISMATCH' });
    expect(fault({ ...dating, supersededBy: 'edition-shore-first' })).toMatchObject({ code: 'KIND_MISMATCH' });
    expect(fault({ ...dating, evidence: [{ reference: 'edition-shore-first' }] })).toMatchObject({
      code: 'KIND_MISMATCH',
    });
  });

  test('an id that names another kind than the row has', () => {
    expect(fault({ ...edition, id: 'work-shore-first' })).toMatchObject({ code: 'KIND_MISMATCH' });
  });

  test('a mistyped id', () => {
    expect(fault({ ...dating, of: 'plate-7h3k9q2m4xtdq' })).toMatchObject({
      code: 'ID_MISTYPED',
      place: { field: 'of' },
    });
  });

  test('a date that cannot be read', () => {
    expect(fault({ ...dating, date: '17' })).toMatchObject({
      code: 'DATE_UNREADABLE',
      message: expect.stringMatching(/^dating-shore-first, field date: expected .* came "17"/),
    });
    expect(fault({ ...dating, on: '2026-02-30' })).toMatchObject({ code: 'DATE_UNREADABLE', place: { field: 'on' } });
  });
});
