import { describe, expect, it } from 'vitest';
import { codedAsBook, formOf } from '../../../src/intake/marcxml/form.ts';

const f008 = (at18: string): string => `850101d18321845enk${at18}r p       0   a0eng d`;

describe('form of publication', () => {
  // Leader/06, 07 and 008/18 of https://www.loc.gov/marc/bibliographic/bdleader.html and bd008s.html
  it.each([
    ['a text that is a monograph', '00000cam a2200000 a 4500', f008('a'), 'BOOK'],
    ['a serial that comes out weekly', '00000cas a2200000 a 4500', f008('w'), 'SERIAL'],
    ['a serial without a frequency', '00000cas a2200000 a 4500', '', 'SERIAL'],
    ['a serial that comes out once a year', '00000cas a2200000 a 4500', f008('a'), 'ANNUAL'],
    ['a part of a monograph', '00000caa a2200000 a 4500', f008('a'), undefined],
    ['an article of a serial', '00000cab a2200000 a 4500', f008('w'), undefined],
    ['a graphic, which may be a sheet or a set', '00000ckm a2200000 a 4500', f008('w'), undefined],
    ['printed music', '00000ccm a2200000 a 4500', f008('w'), undefined],
    ['a leader cut short', '00000c', f008('a'), undefined],
  ])('of %s', (_, leader, coded, expected) => {
    expect(formOf(leader, coded)).toBe(expected);
  });

  it('decides whether 008/18-21 are illustrations', () => {
    expect(codedAsBook('00000cam')).toBe(true);
    expect(codedAsBook('00000cas')).toBe(false);
    expect(codedAsBook('00000ckm')).toBe(false);
  });
});
