import { describe, expect, test } from 'vitest';
import { foldTokens } from '../../src/domain/text/fold.ts';

/**
 * Folding beside the tables of Unicode and of CLDR, as the engine that runs this has them (ICU): case and normalisation of
 * every character, and which letters are one letter with a mark by the root collation (UTS 10, primary strength).
 */
const characters = Array.from({ length: 0x110000 }, (_, code) => code)
  .filter(code => code < 0xd800 || code > 0xdfff)
  .map(code => String.fromCodePoint(code))
  .filter(character => /\p{Assigned}/u.test(character) && !/\p{Co}/u.test(character));

/** Subscript iota is left out as a mark, and written as a letter in capitals (SpecialCasing.txt): these differ. */
const subscriptIota = /\u0345/;

function fold(text: string): string {
  return foldTokens(text).join(' ');
}

function differing(change: (character: string) => string): readonly string[] {
  return characters.filter(character => fold(change(character)) !== fold(character));
}

describe(`folding, by the tables of Unicode ${process.versions['unicode']}`, () => {
  test.each(['NFC', 'NFD', 'NFKC', 'NFKD'] as const)('is the same for a character and its %s', form =>
    expect(differing(character => character.normalize(form))).toEqual([]),
  );

  test('is the same for a letter and its small and capital form, but for subscript iota', () => {
    expect(differing(character => character.toLowerCase())).toEqual([]);
    const upper = differing(character => character.toUpperCase());
    expect(upper.filter(character => !subscriptIota.test(character.normalize('NFD')))).toEqual([]);
  });

  test('done twice is done once', () => {
    expect(characters.filter(character => fold(fold(character)) !== fold(character))).toEqual([]);
  });

  test('has letters and digits only', () => {
    expect(characters.filter(character => !/^[\p{L}\p{N}]*(?: [\p{L}\p{N}]+)*$/u.test(fold(character)))).toEqual([]);
  });

  test('takes a Latin letter for the plain one that CLDR takes it for, and dotless i for i', () => {
    const { compare } = new Intl.Collator('und', { sensitivity: 'base' });
    const plain = [...'abcdefghiklmnopqrstuwxyz'];
    const twins: Readonly<Record<string, string>> = { v: 'u', j: 'i' };
    const latin = characters.filter(character => /^\p{sc=Latin}$/u.test(character) && /\p{L}/u.test(character));
    const differ = latin.flatMap(letter => {
      const ofCldr = [...plain, ...Object.keys(twins)].filter(each => compare(letter, each) === 0);
      const expected = ofCldr.map(each => twins[each] ?? each)[0];
      const ours = fold(letter);
      const isPlain = plain.includes(ours);
      return (expected === undefined && !isPlain) || ours === expected ? [] : [`${letter}: ${ours}, ${expected}`];
    });
    expect(differ).toEqual(['ı: i, undefined']);
  });
});
