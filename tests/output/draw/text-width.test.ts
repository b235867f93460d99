import { describe, expect, test } from 'vitest';
import { textWidth } from '../../../src/output/draw/text-width.ts';
import { advancesOf } from './typeface.ts';

test.each([
  ['', 0],
  ['MM', 20.48],
  ['é', 5.92],
  ['e\u0301', 5.92],
  ['芥子', 21],
])('%j at size 10 needs %d', (text, width) => expect(textWidth(text, 10)).toBeCloseTo(width, 6));

describe('no letter of the typeface that comes along needs more room than is taken for it', () => {
  const ranges = [
    [0x20, 0x7e],
    [0xa0, 0x24f],
    [0x370, 0x3ff],
    [0x400, 0x4ff],
    [0x1e00, 0x1fff],
    [0x2010, 0x2016],
    [0x2018, 0x2027],
  ] as const;
  const letters = ranges.flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)),
  );

  test.each(['400Regular', '400Regular_Italic'] as const)('%s', face => {
    const advance = advancesOf(face);
    const known = letters.filter(letter => advance(letter) !== undefined);
    expect(known.length).toBeGreaterThan(900);
    expect(known.filter(letter => advance(letter)! > textWidth(letter, 1) + 0.02)).toEqual([]);
  });

  test('the measure can fail: M is wider than i', () => {
    expect(advancesOf('400Regular')('M')!).toBeGreaterThan(textWidth('i', 1));
  });
});
