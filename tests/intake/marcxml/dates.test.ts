import { describe, expect, it } from 'vitest';
import { bundleOf, datingsOf, rowsOf } from './bundles.ts';

const datings = (...lines: readonly string[]): string[] => datingsOf(bundleOf(...lines));

describe('datings', () => {
  it('come from the date of the imprint, with words, rule and flags', () => {
    expect(rowsOf(bundleOf('260 ##$aLondon :$bX,$c[1833?]'), 'Dating')).toEqual([
      {
        kind: 'Dating',
        id: '@dating-1',
        of: '@edition',
        event: 'PUBLISHED',
        date: '1833?',
        asWritten: '[1833?]',
        rule: expect.stringMatching(/^phrase-/),
        basis: 'IMPRINT',
        flags: ['supplied'],
        evidence: [{ reference: '@catalogue', locator: '17 260$c' }],
      },
    ]);
  });

  // Descriptive Cataloging of Rare Materials (RDA Edition) 5.23, https://bsc.rbms.info/DCRMR/
  it.each([
    ['1833', '1833 IMPRINT HELD'],
    ['MDCCXXXIII [1733]', '1733 IMPRINT HELD'],
    ['1785 [that is, 1795]', '1795 IMPRINT HELD'],
    ['[approximately 1580]', '1580~ IMPRINT HELD'],
    ['[not before 1479]', '[1479..] IMPRINT HELD'],
    ['[1727 or 1728]', '[1727,1728] IMPRINT HELD'],
    ['[between 1711 and 1749]', '[1711..1749] IMPRINT HELD'],
    ['1715-1716', '1715/1716 IMPRINT HELD'],
  ])('"%s" is %s', (words, expected) => {
    expect(datings(`264 #1$aParis :$bX,$c${words}`)).toEqual([expected]);
  });

  it('by a copyright date beside the date of publication are weighed', () => {
    expect(datings('260 ##$aBoston :$bX,$c1836, c1834.')).toEqual(['1836 IMPRINT HELD', '1834 COPYRIGHT WEIGHED']);
  });

  it('by a copyright date in place of a date of publication are held as such', () => {
    expect(datings('260 ##$aSan Diego :$bHarcourt Brace Jovanovich,$cc1993.')).toEqual(['1993 COPYRIGHT HELD']);
  });

  it('by a copyright notice (264, second indicator 4) are weighed', () => {
    expect(datings('264 #1$aBoston :$bX,$c2003', '264 #4$c©2002')).toEqual([
      '2003 IMPRINT HELD',
      '2002 COPYRIGHT WEIGHED',
    ]);
    expect(datings('264 #4$ccopyright 2005')).toEqual(['2005 COPYRIGHT WEIGHED']);
  });

  it('that cannot be read keep the words and are reported', () => {
    const bundle = bundleOf('260 ##$aLondon :$bX,$cin the Year of the Comet');
    expect(rowsOf(bundle, 'Dating')).toMatchObject([{ asWritten: 'in the Year of the Comet', flags: ['unparsed'] }]);
    expect(rowsOf(bundle, 'Dating')[0]?.date).toBeUndefined();
    expect(bundle.remarks.map(({ code, place }) => `${code} ${place.field}`)).toEqual(['DATE_UNREADABLE 260$c']);
  });

  it('that say there is no date are no fault', () => {
    const bundle = bundleOf('260 ##$aLondon :$bX,$c[n.d.]');
    expect(rowsOf(bundle, 'Dating')).toMatchObject([{ asWritten: '[n.d.]', flags: ['supplied', 'undated'] }]);
    expect(bundle.remarks).toEqual([]);
  });

  it('come from field 008 where the imprint gives none', () => {
    expect(datings('008 850101q17601769enka          000 1 eng d', '260 ##$aLondon :$bX,$c[n.d.]')).toEqual([
      '- IMPRINT HELD',
      '[1760..1769] CODED HELD',
    ]);
    expect(datings('008 850101t17931792pauf          000 1 eng d')).toEqual([
      '1793 CODED HELD',
      '1792 COPYRIGHT WEIGHED',
    ]);
  });

  it('of field 008 are no second dating where the imprint is read', () => {
    expect(datings('008 850101s1834    enka          000 1 eng d', '260 ##$aLondon :$bX,$c1834.')).toEqual([
      '1834 IMPRINT HELD',
    ]);
    expect(
      datings('008 850101s1834    enka          000 1 eng d', '260 ##$aLondon :$bX,$c[between 1830 and 1839]'),
    ).toEqual(['[1830..1839] IMPRINT HELD']);
  });

  it('of field 008 that name a day, or a range within a wider one, are held beside the imprint', () => {
    expect(datings('008 850101e18340426enka          000 1 eng d', '260 ##$aLondon :$bX,$c1834.')).toEqual([
      '1834 IMPRINT HELD',
      '1834-04-26 CODED HELD',
    ]);
    expect(datings('008 850101q18301840enka          000 1 eng d', '260 ##$aLondon :$bX,$c[18--]')).toEqual([
      '18XX IMPRINT HELD',
      '[1830..1840] CODED HELD',
    ]);
  });

  it('of field 008 that contradict the imprint are reported, not held', () => {
    const bundle = bundleOf('008 850101s1843    enka          000 1 eng d', '260 ##$aLondon :$bX,$c1834.');
    expect(datingsOf(bundle)).toEqual(['1834 IMPRINT HELD']);
    expect(bundle.remarks.map(remark => remark.message)).toEqual([
      'the field says 1843, but the imprint 1834: the imprint is taken',
    ]);
  });

  // https://www.loc.gov/marc/bibliographic/bd046.html
  it.each([
    ['046 ##$k18340426', '1834-04-26 CODED HELD'],
    ['046 ##$k1834~$2edtf', '1834~ CODED HELD'],
    ['046 ##$aq$c1830$e1840', '[1830..1840] CODED HELD'],
    ['046 ##$am$c1830$e1840', '1830/1840 CODED HELD'],
  ])('of field 046 come before those of 008: %s', (line, expected) => {
    expect(datings(line, '008 850101s1834    enka          000 1 eng d')[0]).toBe(expected);
  });

  it('never are two held ones that cannot both be true', () => {
    expect(datings('260 ##$aA :$bX,$c1834.', '260 3#$aB :$bY,$c1850.')).toEqual([
      '1834 IMPRINT HELD',
      '1850 IMPRINT WEIGHED',
    ]);
  });
});
