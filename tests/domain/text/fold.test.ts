import { describe, expect, test } from 'vitest';
import { foldTokens, sortKey } from '../../../src/domain/text/fold.ts';

describe('the tokens of a text', () => {
  test.each([
    ['Zwölf Fayencemaler', ['zwolf', 'fayencemaler']],
    ['Congreſs of Birds', ['congress', 'of', 'birds']],
    ['Vniversal Jconologia', ['uniuersal', 'iconologia']],
    ['Œuvre, Straße & Þing', ['oeuure', 'strasse', 'thing']],
    ['浮世絵', ['浮世', '世絵']],
    ['', []],
  ])('%s', (text, tokens) => expect(foldTokens(text)).toEqual(tokens));
});

describe('a sort key', () => {
  test('has the tokens of the text, and none of it has none', () => {
    expect([sortKey('Views of the Rhine, 2nd ed.'), sortKey('— !')]).toEqual(['uiews of the rhine 2nd ed', '']);
  });

  test('is cut at 120 units, never within a character', () => {
    // U+10428 DESERET SMALL LETTER LONG I: two units.
    expect(sortKey('a'.repeat(200))).toBe('a'.repeat(120));
    expect(sortKey(`${'a'.repeat(119)}\u{10428}b`)).toBe('a'.repeat(119));
    expect(sortKey(`${'a'.repeat(118)}\u{10428}b`)).toBe(`${'a'.repeat(118)}\u{10428}`);
  });
});
