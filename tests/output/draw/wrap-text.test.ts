import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../../src/output/draw/text-width.ts';
import { wrapText } from '../../../src/output/draw/wrap-text.ts';

describe('a text in lines', () => {
  test.each([
    ['A fountain', ['A fountain']],
    ['Two men mending nets, a dog beside them', ['Two men mending', 'nets, a dog beside', 'them']],
    ['  one \n two  ', ['one two']],
    ['', []],
  ])('%j', (text, lines) => expect(wrapText(text, 10, 100, 9)).toEqual(lines));

  test('is cut with an ellipsis where there is no room for more', () => {
    expect(wrapText('Two men mending nets, a dog beside them', 10, 100, 2)).toEqual([
      'Two men mending',
      'nets, a dog besid…',
    ]);
  });

  test('breaks between characters, never within one, where a word is wider than a line', () => {
    expect(wrapText('芥子園畫傳初集卷之三', 10, 60, 9)).toEqual(['芥子園畫傳', '初集卷之三']);
    expect(wrapText('क्षक्षक्षक्ष', 10, 40, 9).join('')).toBe('क्षक्षक्षक्ष');
    expect(wrapText('e\u0301'.repeat(30), 10, 50, 2)[0]).toMatch(/^(e\u0301)+$/);
  });

  test('keeps what a no-break space joins', () => {
    expect(wrapText('pl.\u00a04 of the book', 10, 50, 9)).toEqual(['pl.\u00a04 of', 'the book']);
  });

  test('no line is wider than asked, unless a single character is, and nothing is lost but spaces', () => {
    const text = fc.string({ unit: fc.constantFrom('a', 'W', ' ', 'é', '芥', 'e\u0301', 'ש', '-'), maxLength: 120 });
    fc.assert(
      fc.property(text, fc.integer({ min: 12, max: 200 }), (each, width) => {
        const lines = wrapText(each, 10, width, 1000);
        expect(lines.filter(line => textWidth(line, 10) > width && line.normalize('NFC').length > 1)).toEqual([]);
        expect(lines.join('').replaceAll(' ', '')).toBe(each.replaceAll(' ', ''));
      }),
    );
  });
});
