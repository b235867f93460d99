import { describe, expect, test } from 'vitest';
import type { ItemField } from '../../../src/domain/model/declaration.ts';
import { claimKindNames, recordKindNames } from '../../../src/domain/model/kinds.ts';
import { cellText, cellValue } from '../../../src/domain/tables/cell-text.ts';
import { type CellField, type CellPart, tableFields } from '../../../src/domain/tables/table-fields.ts';
import { type Dice, dice } from '../../support/random-graph.ts';
import { awkwardText } from '../../support/random-texts.ts';
import { runs, seedOfRun } from '../../support/runs.ts';

const field = (kind: 'Piece' | 'Plate' | 'Detail' | 'Copying' | 'Edition' | 'Place', name: string): CellField =>
  tableFields(kind).get(name)!;

describe('values as cells', () => {
  test.each<[what: string, field: CellField, value: unknown, text: string]>([
    ['texts', field('Edition', 'title'), 'Views; | of "it"', 'Views; | of "it"'],
    ['several texts', field('Edition', 'series'), ['A | B', 'c\\d', ' e '], 'A \\| B | c\\\\d | \\ e\\ '],
    ['flags', field('Edition', 'illustrated'), false, 'no'],
    ['numbers', field('Place', 'longitude'), -0.125, '-0.125'],
    [
      'items',
      field('Piece', 'marks'),
      [
        { id: 'm-1', form: 'YEAR_MARK', reading: 'A; B' },
        { id: 'm-2', position: 'rim: left' },
      ],
      'id: m-1; form: YEAR_MARK; reading: A\\; B | id: m-2; position: rim: left',
    ],
    [
      'items whose parts have several values',
      field('Plate', 'letteredNames'),
      [{ name: 'P. Hartigh', roles: ['pbl', 'a,b'], words: 'exc., sc.' }],
      'name: P. Hartigh; roles: pbl, a\\,b; words: exc., sc.',
    ],
    [
      'places on a picture, as IIIF writes them',
      field('Detail', 'region'),
      [
        { x: 1, y: 2.5, width: 10, height: 20 },
        { x: 0, y: 0, width: 1e-7, height: 100 },
      ],
      'pct:1,2.5,10,20 | pct:0,0,1e-7,100',
    ],
    [
      'evidence',
      field('Copying', 'evidence'),
      [
        {
          photograph: 'photograph-a-b',
          region: [
            { x: 1, y: 2, width: 3, height: 4 },
            { x: 5, y: 6, width: 7, height: 8 },
          ],
        },
        { reference: 'reference-a-b', locator: 'p. 7', words: 'l. 1\nl. 2' },
      ],
      'photograph: photograph-a-b; region: pct:1,2,3,4 pct:5,6,7,8 | reference: reference-a-b; locator: p. 7; words: l. 1\nl. 2',
    ],
    ['JSON', { type: 'json', doc: '' }, { a: [1, null, 'x'] }, '{"a":[1,null,"x"]}'],
  ])('%s', (_what, of, value, text) => {
    expect(cellText(of, value)).toBe(text);
    expect(cellValue(of, text)).toEqual(value);
  });

  test('absent values and blank cells are the same', () => {
    expect(cellText(field('Edition', 'series'), undefined)).toBe('');
    for (const blank of ['', ' ', ' | ', '\n']) expect(cellValue(field('Edition', 'series'), blank)).toBe(undefined);
  });

  test('white space around what is separated, and the case of yes and no, say nothing', () => {
    expect(cellValue(field('Edition', 'series'), ' A|B |\n C |')).toEqual(['A', 'B', 'C']);
    expect(cellValue(field('Piece', 'marks'), 'reading:x;id :m')).toEqual([{ id: 'm', reading: 'x' }]);
    for (const yes of ['yes', 'YES', 'TRUE']) expect(cellValue(field('Edition', 'illustrated'), yes)).toBe(true);
    expect(cellValue(field('Place', 'latitude'), ' 52.370 ')).toBe(52.37);
  });

  test.each<[string, CellField, string, RegExp]>([
    ['a decimal comma', field('Place', 'latitude'), '52,37', /^expected a number such as 12 or 52\.37, came "52,37"$/],
    [
      'a word for yes in another language',
      field('Edition', 'illustrated'),
      'WAHR',
      /^expected "yes" or "no", came "WAHR"$/,
    ],
    [
      'a part without a name',
      field('Piece', 'marks'),
      'id: m; 1766',
      /^expected parts as "name: value", .* came "1766"$/,
    ],
    [
      'a part that there is not',
      field('Piece', 'marks'),
      'id: m; toString: x',
      /id, form, reading, position .* came "toString: x"$/,
    ],
    ['a part twice', field('Piece', 'marks'), 'id: m; id: n', /^expected the part "id" once/],
    [
      'a rectangle of three',
      field('Detail', 'region'),
      'pct:1,2,3',
      /^expected places as "pct:x,y,width,height" in percent, came "pct:1,2,3"$/,
    ],
    ['what is no JSON', { type: 'json', doc: '' }, '{', /^expected JSON, came "\{"$/],
  ])('%s is refused', (_what, of, text, message) => {
    expect(() => cellValue(of, text)).toThrow(
      expect.objectContaining({ code: 'INPUT_INVALID', message: expect.stringMatching(message) }),
    );
  });
});

const kinds = [...recordKindNames, ...claimKindNames];

test('every value that a declaration allows comes back from its cell', () => {
  const seed = seedOfRun();
  for (let run = 0; run < runs(40, 2000); run++) {
    const roll = dice(seed + run);
    for (const kind of kinds) {
      for (const [name, of] of tableFields(kind)) {
        const value = valueFor(of, roll);
        expect(cellValue(of, cellText(of, value)), `seed ${seed + run}, ${kind}.${name}`).toEqual(value);
      }
    }
  }
});

/** Any value of the form of a field, with texts that look like the form of cells. */
function valueFor(of: CellField | CellPart, roll: Dice): unknown {
  const several = <T>(make: () => T): T[] => Array.from({ length: 1 + roll.below(3) }, make);
  if (of.type === 'items') return several(() => itemFor(of.item, roll));
  return 'many' in of && of.many === true ? several(() => scalarFor(of, roll)) : scalarFor(of, roll);
}

function itemFor(item: Readonly<Record<string, CellPart>>, roll: Dice): object {
  const parts = Object.entries(item);
  const one = roll.below(parts.length);
  const some = parts.filter(([, part], i) => part.required === true || i === one || roll.chance(0.5));
  return Object.fromEntries(some.map(([name, part]) => [name, valueFor(part, roll)]));
}

function scalarFor({ type }: { readonly type: ItemField['type'] | 'json' }, roll: Dice): unknown {
  if (type === 'integer') return roll.below(2000) - 1000;
  if (type === 'number') return roll.pick([-0.12, 0, 1e-9, 1e21, 99.5, 1 / 3]);
  if (type === 'flag') return roll.chance(0.5);
  if (type === 'json') return { a: [roll.below(9), null, awkwardText(roll)] };
  // Ids, words, dates and addresses have no white space around them.
  return type === 'text' ? awkwardText(roll) : awkwardText(roll).trim();
}
