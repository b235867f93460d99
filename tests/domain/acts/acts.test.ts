import { describe, expect, test } from 'vitest';
import type { Act } from '../../../src/domain/acts/act.ts';
import { type ActName, actNames, acts } from '../../../src/domain/acts/acts.ts';
import { checkAct } from '../../../src/domain/acts/check-act.ts';
import { claimKinds, recordKinds } from '../../../src/domain/model/kinds.ts';

const all: readonly Act[] = Object.values(acts);

describe('declarations', () => {
  test('each stands under its name, and its example is what it takes', () => {
    expect(all.map(({ name }) => name)).toEqual(actNames);
    expect(actNames.flatMap(name => checkAct(name, acts[name].example))).toEqual([]);
  });

  test('what they need, and what stands instead or beside, are fields', () => {
    for (const { fields, needs } of all) {
      const others = Object.values(fields).flatMap(field => [
        ...('orNew' in field && field.orNew !== undefined ? [field.orNew] : []),
        ...(field.ofNew ?? []),
      ]);
      for (const name of [...needs.flat(), ...others]) expect(Object.keys(fields)).toContain(name);
    }
  });

  test('what they answer are kinds, and what may be a record of any', () => {
    const kinds = [...Object.keys(recordKinds), ...Object.keys(claimKinds), 'Record', 'Picture'];
    for (const { answers } of all) for (const { kind } of Object.values(answers)) expect(kinds).toContain(kind);
  });

  test('a claim says what the field of an act says that is named alike: no word has two lists of values', () => {
    const words = all.flatMap(({ fields }) => Object.values(fields)).filter(field => field.type === 'word');
    const byName = Map.groupBy(new Set(words.map(({ of }) => of)), ({ name }) => name);
    expect([...byName.values()].filter(same => same.length > 1)).toEqual([]);
  });
});

describe('what is wrong with what is given', () => {
  const cases: readonly (readonly [says: string, act: ActName, given: unknown, faults: readonly unknown[]])[] = [
    [
      'no object',
      'recordPiece',
      7,
      [['INPUT_INVALID', undefined, 'expected an object with fields of recordPiece, came 7']],
    ],
    [
      'an unknown field',
      'recordPiece',
      { peice: 'x' },
      [['INPUT_INVALID', 'peice', 'there is no such field (did you mean "piece"?)']],
    ],
    [
      'nothing that it needs',
      'recordLooking',
      { coverage: 'SEARCH' },
      [
        ['INPUT_INVALID', 'target', 'expected target, exemplar or source, came none of them'],
        ['INPUT_INVALID', 'found', 'expected found, notFound, unsure or finds, came none of them'],
      ],
    ],
    [
      'a required field',
      'recordPlates',
      { numbers: '1' },
      [['INPUT_INVALID', 'edition', 'expected a value, came none']],
    ],
    [
      'an id and a name',
      'recordPiece',
      { pieceName: 'Tile', workshop: 'workshop-a-b', workshopName: 'Other' },
      [['INPUT_INVALID', 'workshopName', 'expected workshop or workshopName, came both']],
    ],
    [
      'what is said of a new record beside one that is there',
      'recordPiece',
      { piece: 'piece-a-b', material: 'silver' },
      [['INPUT_INVALID', 'material', 'expected none beside piece, came "silver"']],
    ],
    [
      'ids of other kinds, at any depth',
      'recordPiece',
      { piece: 'plate-a-b', motifs: [{}, { picture: 'edition-a-b' }] },
      [
        ['KIND_MISMATCH', 'piece', 'expected the id of Piece, came "plate-a-b"'],
        [
          'KIND_MISMATCH',
          'motifs[1].picture',
          'expected the id of Artwork or Plate or Motif or Detail or Design, came "edition-a-b"',
        ],
      ],
    ],
    [
      'ids of a list',
      'recordCopies',
      { copies: ['plate-a-b', 'place-a-b'], from: 'edition-a-b' },
      [
        [
          'KIND_MISMATCH',
          'copies[1]',
          'expected the id of Artwork or Plate or Motif or Detail or Design, came "place-a-b"',
        ],
      ],
    ],
    [
      'a mistyped id',
      'recordPiece',
      { piece: 'piece-7h3k9q2m4xtdq' },
      [['ID_MISTYPED', 'piece', '"piece-7h3k9q2m4xtdq" is mistyped: its last character does not fit the others']],
    ],
    [
      'a word of no list',
      'recordPiece',
      { pieceName: 'Tile', handedness: 'REVERSD' },
      [
        [
          'INPUT_INVALID',
          'handedness',
          'expected one of SAME, REVERSED, UNKNOWN, came "REVERSD" (did you mean "REVERSED"?)',
        ],
      ],
    ],
    [
      'evidence of another kind',
      'recordPiece',
      { pieceName: 'Tile', evidence: [{ reference: 'plate-a-b' }] },
      [['KIND_MISMATCH', 'evidence[0].reference', 'expected the id of Reference, came "plate-a-b"']],
    ],
    [
      'evidence of nothing',
      'recordPiece',
      { pieceName: 'Tile', evidence: [{}] },
      [['INPUT_INVALID', 'evidence[0]', 'expected at least one part, came {}']],
    ],
  ];
  test.each(cases)('%s', (_says, act, given, faults) => {
    expect(checkAct(act, given).map(({ code, field, message }) => [code, field, message])).toEqual(faults);
  });

  test('dates and days', () => {
    const faults = checkAct('recordPiece', { pieceName: 'Tile', made: 'about 1790', on: '1790-02-30' });
    expect(faults.map(({ code, field }) => [code, field])).toEqual([
      ['DATE_UNREADABLE', 'made'],
      ['DATE_UNREADABLE', 'on'],
    ]);
  });
});
