import { describe, expect, it } from 'vitest';
import { codedDate } from '../../../src/intake/marcxml/coded-dates.ts';

describe('field 008/06-14', () => {
  // Strings made to the table of https://www.loc.gov/marc/bibliographic/bd008a.html; the first is of the LoC sample record.
  it.each([
    ['920219s1993    caua   j      000 0 eng  ', { code: 's', date: '1993' }],
    ['850101r17661764pauaf         000 1 eng d', { code: 'r', date: '1766', original: '1764' }],
    ['850101q17601769enka          000 1 eng d', { code: 'q', date: '[1760..1769]' }],
    ['850101m17661767enkf          000 1 eng d', { code: 'm', date: '1766/1767' }],
    ['850101e18340426enka          000 1 eng d', { code: 'e', date: '1834-04-26' }],
    ['850101r1764uuuuie f          000 1 eng d', { code: 'r', date: '1764' }],
    ['850101nuuuuuuuuxx            000 1 eng d', { code: 'n' }],
    ['850101d18321845enkwr p       0   a0eng d', { code: 'd', date: '1832/1845' }],
    ['850101s183u    maua          000 1 eng d', { code: 's', date: '183X' }],
    ['850101t17931792pauf          000 1 eng d', { code: 't', date: '1793', copyright: '1792' }],
  ])('of "%s" is read', (f008, expected) => {
    expect(codedDate(f008)).toEqual(expected);
  });

  // https://www.itsmarc.com/crs/mergedprojects/helptop1/helptop1/008/code_008_06_all.htm and the pages beside it
  it.each([
    ['s1969    ', '1969'],
    ['s19uu    ', '19XX'],
    ['s1uuu    ', '1XXX'],
    ['q1980uuuu', '[1980..]'],
    ['quuuu1980', '[..1980]'],
    ['q19931999', '[1993..1999]'],
    ['q18341834', '1834'],
    ['q183u1845', '[1830..1845]'],
    ['m18349999', '1834/..'],
    ['m1834uuuu', '1834/'],
    ['c18329999', '1832/..'],
    ['u1832uuuu', '1832/'],
    ['e183404##', '1834-04'],
    ['e18340431', '1834-04'],
    ['i17601765', '1760/1765'],
    ['p18351830', '1835'],
  ])('"%s" says %s', (dates, date) => {
    expect(codedDate(`850101${dates}`)).toEqual({ code: dates[0], date });
  });

  it.each([['|1850||||'], ['s|||||   '], ['b        '], ['nuuuuuuuu'], ['suuuu    '], ['quuuuuuuu'], ['s'], ['']])(
    '"%s" says nothing',
    dates => {
      expect(codedDate(`850101${dates}`).date).toBeUndefined();
    },
  );

  it('that ends before it begins is a fault, not a date', () => {
    expect(codedDate('850101m18351830')).toEqual({
      code: 'm',
      fault: '008 gives a run that ends before it begins: "1835" to "1830"',
    });
    expect(codedDate('850101q18351830').fault).toBe('008 gives a latest date before the earliest: "1835", "1830"');
  });

  it('with a second date beside a single one keeps the first and says so', () => {
    expect(codedDate('850101s18351830')).toEqual({
      code: 's',
      date: '1835',
      fault: '008 gives a single date, but a second one, "1830", too',
    });
  });
});
