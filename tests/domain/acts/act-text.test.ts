import { describe, expect, test } from 'vitest';
import type { Act } from '../../../src/domain/acts/act.ts';
import { fieldNamed, nearOption, optionName, textValue, valueText } from '../../../src/domain/acts/act-text.ts';
import { acts } from '../../../src/domain/acts/acts.ts';
import { PlatestemmaError } from '../../../src/errors.ts';

const piece: Act = acts.recordPiece;
const value = (field: string, text: string) => textValue(piece.fields[field]!, text);

describe('options and columns', () => {
  test('are the names of fields, with hyphens', () => {
    expect(['piece', 'pieceName', 'madeAsWritten'].map(optionName)).toEqual(['piece', 'piece-name', 'made-as-written']);
  });

  test('every field has one of its own', () => {
    for (const act of Object.values<Act>(acts)) {
      const names = Object.keys(act.fields);
      expect(names.map(name => fieldNamed(act, optionName(name)))).toEqual(names);
    }
  });

  test.each(['piece-name', 'Piece name', 'pieceName', 'PIECE_NAME', ' piece  name '])('%j is pieceName', name => {
    expect(fieldNamed(piece, name)).toBe('pieceName');
  });

  test('what is none is told what it is like', () => {
    expect([
      fieldNamed(piece, 'pice name'),
      nearOption(piece, 'Pice name'),
      nearOption(piece, 'colour of the sky'),
    ]).toEqual([undefined, 'piece-name', undefined]);
  });
});

describe('values', () => {
  test.each([
    ['handedness', 'REVERSED', 'REVERSED'],
    ['handedness', 'reversed', 'REVERSED'],
    ['handedness', 'in reverse', 'REVERSED'],
    ['manner', 'By eye', 'BY_EYE'],
    ['manner', 'cut-anew', 'CUT_ANEW'],
    ['manner', 'by nose', 'by nose'],
    ['rows', ' 3 ', 3],
    ['namesakes', 'yes', true],
    ['captions', 'A ferry | A mill \\| pond', ['A ferry', 'A mill | pond']],
    ['on', '2026-02-01', '2026-02-01'],
    ['motif', '', undefined],
    [
      'motifs',
      'caption: A ferry; picture: plate-evening-ferry; handedness: in reverse | row: 1; column: 2',
      [
        { caption: 'A ferry', picture: 'plate-evening-ferry', handedness: 'REVERSED' },
        { row: 1, column: 2 },
      ],
    ],
    ['evidence', 'reference: reference-a-b; locator: p. 7', [{ reference: 'reference-a-b', locator: 'p. 7' }]],
  ])('%s: %j', (field, text, read) => {
    expect(value(field, text)).toEqual(read);
  });

  test.each([
    ['rows', 'three', 'expected a number such as 12 or 52.37, came "three"'],
    ['namesakes', 'perhaps', 'expected "yes" or "no", came "perhaps"'],
    [
      'marks',
      'reading E 1766',
      'expected parts as "name: value", each with one of the names form, reading, position and a ";" between them, came "reading E 1766"',
    ],
  ])('%s: %j is refused', (field, text, message) => {
    expect(() => value(field, text)).toThrow(new PlatestemmaError('INPUT_INVALID', message));
  });

  test('what an example gives is read as it is written', () => {
    for (const { fields, example } of Object.values<Act>(acts)) {
      for (const [name, given] of Object.entries(example))
        expect(textValue(fields[name]!, valueText(fields[name]!, given)), name).toEqual(given);
    }
  });
});
