import { describe, expect, test } from 'vitest';
import { rowScope } from '../../../src/intake/table/row-scope.ts';
import type { ConditionTest, Value, ValueRule } from '../../../src/intake/table/table-mapping.ts';
import { evaluate, holdsIn } from '../../../src/intake/table/value.ts';
import { mappingOf } from './tables.ts';

const cells = {
  number: 'P-1',
  title: '  The  Ferry\u00a0at Dusk, engraved by J. Hallam ',
  engraver: 'J. Hallam; R. Voss and T. Lind',
  date: '5/12/1814',
  'makers.0.name': 'A. Merle',
  'tags.0': 'boats',
  'tags.1': 'dusk',
};

function scope(values: Readonly<Record<string, Value>> = {}) {
  const lists = new Map([['tags', 2]]);
  return rowScope({ number: 1, cells: new Map(Object.entries(cells)), lists }, mappingOf({ values }));
}

/** Texts that a value gives, and the columns that they keep whole. */
function got(value: Value, values: Readonly<Record<string, Value>> = {}) {
  const { pieces, whole } = evaluate(value, scope(values));
  return { texts: pieces.map(piece => piece.text), whole };
}

const title = 'The Ferry at Dusk, engraved by J. Hallam';

describe('a value', () => {
  test.each<[string, Value, readonly string[], readonly string[]]>([
    ['of a column, its white space tidied', 'title', [title], ['title']],
    ['of a column without a value', 'book', [], []],
    ['of a list of JSON', 'tags', ['boats', 'dusk'], ['tags.0', 'tags.1']],
    ['always', { always: 'PERSON' }, ['PERSON'], []],
    ['in a text', { text: 'No. {number}: {title}' }, [`No. P-1: ${title}`], ['number', 'title']],
    ['in a text with a name that has no value', { text: '{number} in {book}' }, [], []],
    ['that comes first', { first: ['book', 'number', 'title'] }, ['P-1'], ['number']],
    ['with all others', { all: ['number', 'book', { always: 'x' }] }, ['P-1', 'x'], ['number']],
    ['where a condition holds', { column: 'number', if: { column: 'number', is: 'P-1' } }, ['P-1'], ['number']],
    ['where none holds', { column: 'number', if: { column: 'number', is: 'P-2' } }, [], []],
    ['that says there is nothing', { column: 'number', nothing: ['P-1', '-'] }, [], []],
    ['in part', { column: 'title', part: '^(.+), engraved by' }, ['The Ferry at Dusk'], []],
    ['in part without a group', { column: 'date', part: '\\d{4}' }, ['1814'], []],
    ['in part that is not there', { column: 'title', part: 'etched by (.+)' }, [], []],
    ['in part that is the whole', { column: 'number', part: '^P-\\d+$' }, ['P-1'], ['number']],
    [
      'in part, written anew',
      { column: 'date', part: '^(\\d+)/(\\d+)/(\\d+)$', written: '$2.$1.$3' },
      ['12.5.1814'],
      [],
    ],
    ['replaced', { column: 'number', replace: { 'P-1': 'one' } }, ['one'], []],
    ['not replaced', { column: 'number', replace: { 'P-2': 'two' } }, ['P-1'], ['number']],
    ['parted', { column: 'engraver', split: ';' }, ['J. Hallam', 'R. Voss and T. Lind'], ['engraver']],
    [
      'parted at two marks',
      { column: 'engraver', split: [';', ' and '] },
      ['J. Hallam', 'R. Voss', 'T. Lind'],
      ['engraver'],
    ],
    ['in the words of the mapping', { column: 'number', words: { 'P-1': 'PLATE' } }, ['PLATE'], []],
    ['in other words', { column: 'number', words: { A: 'B' }, otherwise: 'C' }, ['C'], []],
    ['in no word', { column: 'number', words: { A: 'B' }, otherwise: null }, [], []],
    ['whose word every object knows', { column: 'number', replace: {}, words: {}, otherwise: 'x' }, ['x'], []],
  ])('%s', (_what, value, texts, whole) => {
    expect(got(value)).toEqual({ texts, whole });
  });

  test('rules come one after another: nothing, part, replace, split, words', () => {
    const rule: ValueRule = {
      column: 'title',
      nothing: ['-'],
      part: '^The (.+), engraved',
      replace: { 'Ferry at Dusk': 'ferry|dusk' },
      split: '|',
      words: { ferry: 'BOAT', dusk: 'EVENING' },
    };
    expect(got(rule)).toEqual({ texts: ['BOAT', 'EVENING'], whole: [] });
  });

  test('has a name of its own and stands wherever a column can', () => {
    const values = { caption: { column: 'title', part: '^(.+), engraved' }, full: { text: '{caption} ({number})' } };
    expect(got('full', values)).toEqual({ texts: ['The Ferry at Dusk (P-1)'], whole: ['number'] });
    expect(holdsIn({ column: 'caption', like: 'Dusk$' }, scope(values))).toBe(true);
  });

  test('keeps the words that it was made from', () => {
    const { pieces } = evaluate({ column: 'date', part: '\\d{4}', words: { '1814': 'x' } }, scope());
    expect(pieces).toEqual([{ text: 'x', source: '5/12/1814' }]);
  });

  test('reports words that the mapping does not have', () => {
    expect(evaluate({ column: 'number', words: { A: 'B', constructor: 'C' } }, scope()).faults).toEqual([
      { column: 'number', message: 'expected one of "A", "constructor", came "P-1"' },
    ]);
  });

  test('of more than 10,000 characters is not searched', () => {
    const long = rowScope(
      { number: 1, cells: new Map([['title', 'x'.repeat(10_001)]]), lists: new Map() },
      mappingOf(),
    );
    expect(evaluate({ column: 'title', part: 'x' }, long).pieces).toEqual([]);
  });
});

describe('a condition', () => {
  test.each<[ConditionTest | readonly ConditionTest[], boolean]>([
    [{ column: 'number', is: 'P-1' }, true],
    [{ column: 'number', is: ['P-2', 'P-1'] }, true],
    [{ column: 'number', is: 'P-2' }, false],
    [{ column: 'number', isNot: 'P-2' }, true],
    [{ column: 'number', isNot: ['P-1', 'P-2'] }, false],
    [{ column: 'book', filled: false }, true],
    [{ column: 'title', filled: false }, false],
    [{ column: 'title', filled: true, like: 'Kiln' }, false],
    [{ column: 'title', like: '^The.+Hallam$' }, true],
    [
      [
        { column: 'number', is: 'P-1' },
        { column: 'book', filled: true },
      ],
      false,
    ],
    [
      [
        { column: 'number', is: 'P-1' },
        { column: 'book', filled: false },
      ],
      true,
    ],
    [
      {
        any: [
          { column: 'book', filled: true },
          { column: 'number', is: 'P-1' },
        ],
      },
      true,
    ],
    [
      {
        any: [
          { column: 'book', filled: true },
          { column: 'number', is: 'P-2' },
        ],
      },
      false,
    ],
  ])('%j: %s', (condition, holds) => {
    expect(holdsIn(condition, scope())).toBe(holds);
  });
});
