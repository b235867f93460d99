import { describe, expect, test } from 'vitest';
import { readDatePhrase } from '../../../src/domain/dates/phrase.ts';
import { bracketRules } from '../../../src/domain/dates/phrase-bracket-rules.ts';
import {
  defaultPhraseConventions,
  type PhraseConventions,
  type PhraseProfile,
} from '../../../src/domain/dates/phrase-reading.ts';
import { plainRules } from '../../../src/domain/dates/phrase-rules.ts';

type Row = readonly [phrase: string, edtf: string, rule: string, flags?: string];

const rows: readonly Row[] = [
  ['1764', '1764', 'phrase-0-year'],
  ['1763 [i.e. 1764]', '1764', 'phrase-1-corrected', 'corrected supplied'],
  ['1763 i.e. 1764', '1764', 'phrase-1-corrected', 'corrected'],
  ['1879 [1878].', '1878', 'phrase-1-corrected', 'corrected supplied'],
  ['1764, c1763', '1764', 'phrase-2-copyright-beside', 'c-prefix'],
  ['1764, ©1763', '1764', 'phrase-2-copyright-beside'],
  ['1764, cop. 1763', '1764', 'phrase-2-copyright-beside'],
  ['MDCCLXIV [1764]', '1764', 'phrase-3-roman', 'roman supplied'],
  ['MDCCLXIV [1765]', '1765', 'phrase-3-roman', 'roman roman-differs supplied'],
  ['an VII', '[1798-09-22..1799-09-22]', 'phrase-4-republican', 'republican'],
  ["l'an 7 de la République", '[1798-09-22..1799-09-22]', 'phrase-4-republican', 'republican'],
  ['nivôse an XIV', '[1805-12-22..1805-12-31]', 'phrase-4-republican', 'republican'],
  ['an VII [1764]', '[1798-09-22..1799-09-22]', 'phrase-4-republican', 'gloss-differs republican supplied'],
  ['c1764', '1764', 'phrase-6-copyright', 'c-prefix'],
  ['©1764', '1764', 'phrase-6-copyright'],
  ['cop. 1764', '1764', 'phrase-6-copyright'],
  ['copyright 1764', '1764', 'phrase-6-copyright'],
  ['ca. 1764', '1764~', 'phrase-7-circa', 'circa'],
  ['c. 1764', '1764~', 'phrase-7-circa', 'circa'],
  ['um 1764', '1764~', 'phrase-7-circa', 'circa'],
  ['vers 1764', '1764~', 'phrase-7-circa', 'circa'],
  ['[ca. 1764?]', '1764%', 'phrase-7-circa', 'circa supplied'],
  ['ca. 1760-70', '1760~/1770~', 'phrase-7-circa', 'circa'],
  ['probably 1764', '1764?', 'phrase-8-probably'],
  ['wohl 1764', '1764?', 'phrase-8-probably'],
  ['between 1760 and 1770', '[1760..1770]', 'phrase-9-between'],
  ['zwischen 1760 und 1770', '[1760..1770]', 'phrase-9-between'],
  ['entre 1760 et 1770', '[1760..1770]', 'phrase-9-between'],
  ['tra il 1760 e il 1770', '[1760..1770]', 'phrase-9-between'],
  ['entre 1760 y 1770', '[1760..1770]', 'phrase-9-between'],
  ['not after 1770', '[..1770]', 'phrase-10-limit'],
  ['no later than August 1768', '[..1768-08]', 'phrase-10-limit'],
  ['not before 1760', '[1760..]', 'phrase-10-limit'],
  ['[not before 1865, not after 1873]', '[1865..1873]', 'phrase-10-limit', 'supplied'],
  ['before 1770', '[..1769]', 'phrase-11-before-after', 'excludes-year'],
  ['after 1770', '[1771..]', 'phrase-11-before-after', 'excludes-year'],
  ['post-1770', '[1771..]', 'phrase-11-before-after', 'excludes-year'],
  ['after 12 May 1764', '[1764-05-13..]', 'phrase-11-before-after', 'excludes-year'],
  ['after 1765 and before 1773', '[1766..1772]', 'phrase-11-before-after', 'excludes-year'],
  ['1764 or 1765', '[1764,1765]', 'phrase-12-or'],
  ['1764 oder 65', '[1764,1765]', 'phrase-12-or'],
  ['17--', '17XX', 'phrase-13-decade'],
  ['176-', '176X', 'phrase-13-decade'],
  ['1760s', '176X', 'phrase-13-decade'],
  ['1700s', '17XX', 'phrase-13-decade', 'decade-or-century'],
  ['early 1760s', '[1760..1763]', 'phrase-13-decade'],
  ['18th century', '17XX', 'phrase-14-century'],
  ['early 18th century', '[1700..1733]', 'phrase-14-century'],
  ['mid-18th century', '[1733..1766]', 'phrase-14-century'],
  ['late 18th century', '[1766..1799]', 'phrase-14-century'],
  ['second half of the 18th century', '[1750..1799]', 'phrase-14-century'],
  ['1st quarter of the 18th century', '[1700..1724]', 'phrase-14-century'],
  ['2. Hälfte 18. Jh.', '[1750..1799]', 'phrase-14-century'],
  ['XVIIIe siècle', '17XX', 'phrase-14-century'],
  ['1764/5', '[1764,1765]', 'phrase-15-dual-year', 'dual-year'],
  ['1764/65', '[1764,1765]', 'phrase-15-dual-year', 'dual-year'],
  ['1723/4', '[1724-01-12..1724-04-04]', 'phrase-15-dual-year', 'dual-year'],
  ['1699/1700', '[1700-01-11..1700-04-04]', 'phrase-15-dual-year', 'dual-year'],
  ['1764/70', '1764/1770', 'phrase-15-dual-year'],
  ['1764-66', '1764/1766', 'phrase-16-range'],
  ['1764-6', '1764/1766', 'phrase-16-range'],
  ['1764–1766', '1764/1766', 'phrase-16-range'],
  ['1764-', '1764/', 'phrase-17-open', 'open-serial'],
  ['1764-?', '1764/', 'phrase-17-open', 'open-serial'],
  ['-1770', '/1770', 'phrase-17-open', 'open-serial'],
  ['1764, etc.', '1764/', 'phrase-17-open', 'open-serial'],
  ['12 May 1764', '1764-05-12', 'phrase-18-date'],
  ['May 12th, 1764', '1764-05-12', 'phrase-18-date'],
  ['Jan. 1764', '1764-01', 'phrase-18-date'],
  ['1er mars 1801', '1801-03-01', 'phrase-18-date'],
  ['12. Mai 1764', '1764-05-12', 'phrase-18-date'],
  ['12 maggio 1764', '1764-05-12', 'phrase-18-date'],
  ['12 de mayo de 1764', '1764-05-12', 'phrase-18-date'],
  ['Spring 1764', '1764-21', 'phrase-18-date'],
  ['Feby 1st 1764', '1764-02-01', 'phrase-18-date'],
  ['3 February 1723/4', '1724-02-14', 'phrase-18-date', 'dual-year'],
  ['MDCCLXIV', '1764', 'phrase-19-roman', 'roman'],
  ['M. DCC. LXXXX.', '1790', 'phrase-19-roman', 'roman'],
  ['CIƆIƆCCLXIV', '1764', 'phrase-19-roman', 'roman'],
  [
    "Publish'd as the Act directs, 1st May 1793 by A. B., Strand",
    '1793-05-01',
    'phrase-20-publication-line',
    'publication-line',
  ],
  ['Pub.d Jan.y 1.st 1793 by A. B.', '1793-01-01', 'phrase-20-publication-line', 'publication-line'],
  ['1833 printing', '1833', 'phrase-21-printed'],
  ['1833, printed 1840', '1833', 'phrase-21-printed'],
  ['1833 (later impression)', '1833', 'phrase-21-printed', 'later-printing'],
  ['1833, reprinted 1841', '1841', 'phrase-22-reprinted'],
  ['1864, 66', '1864/1866', 'phrase-23-volumes', 'volumes'],
  ['1899, 98', '1898/1899', 'phrase-23-volumes', 'volumes'],
  ['1839, 38-54', '1838/1854', 'phrase-23-volumes', 'volumes'],
  ['635, 1878', '1878', 'phrase-24-other-calendar', 'other-calendar'],
  ['AD 64', '0064', 'phrase-25-era'],
  ['64 BC', '-0063', 'phrase-25-era'],
  ['late 1764', '[1764-09..1764-12]', 'phrase-26-part-of-year'],
  ['January 12', 'XXXX-01-12', 'phrase-27-no-year', 'no-year'],
  ['17/10/1808', '1808-10-17', 'phrase-28-figures'],
  ['7/10/1808', '[1808-07-10,1808-10-07]', 'phrase-28-figures', 'day-or-month'],
  ['7.10.1808', '1808-10-07', 'phrase-28-figures'],
  ['12 May-3 June 1764', '1764-05-12/1764-06-03', 'phrase-29-from-to'],
  ['17th-18th century', '16XX/17XX', 'phrase-29-from-to'],
  ['1757-mid 1760s', '1757/176X', 'phrase-29-from-to', 'wider-than-written'],
  ['day in May 1764', '1764-05-XX', 'phrase-30-sometime-in'],
  ['active 1760-70', '1760/1770', 'phrase-31-active', 'active'],
  ['12 May 1723 O.S.', '1723-05-23', 'phrase-32-calendar-named'],
];

describe('each rule of the grammar', () => {
  for (const [phrase, edtf, rule, flags = ''] of rows) {
    test(`${phrase} is ${edtf} by ${rule}`, () => {
      expect(read(phrase)).toMatchObject({ edtf, rule, flags: flags === '' ? [] : flags.split(' ') });
    });
  }

  test('is tried by a row above', () => {
    const tried = new Set(rows.map(row => row[2]));
    expect([...bracketRules, ...plainRules].map(rule => rule.name).filter(name => !tried.has(name))).toEqual([]);
  });
});

describe('a phrase that is not read', () => {
  test.each(['n.d.', '[n.d.]', 's.a.', 's.d.', 'o.J.', 'undated', '[date of publication not identified]'])(
    '%s says that there is no date',
    phrase => expect(read(phrase)).toMatchObject({ rule: 'undated', reason: 'the phrase says that no date is given' }),
  );

  test.each([
    ...['', '[]', '?', '-', '90', '19', '176?', 'Hogarth', 'after Hogarth', '23rd Dynasty', '176. Long Acre'],
    ...['1764 1765', '1764-21', '1764-3', '1898, 01', '1764, 1999', 'M', 'notcirca 1764', '1764; 1770'],
    ...['Published 12 May 1793 and 3 June 1794', '1st ed. 1764', 'anno mundi', 'an XV', '30 nivôse an XIV'],
  ])('%j is never guessed at', phrase => {
    expect(read(phrase)).toMatchObject({ rule: 'unparsed' });
  });

  test.each(['31 June 1764', '29 February 1765', '1766-1764', 'between 1770 and 1760'])(
    '%s is refused as impossible and not repaired',
    phrase => expect(read(phrase)).toMatchObject({ rule: 'unparsed', reason: expect.stringContaining('no calendar') }),
  );

  test('a phrase of more than 200 characters is refused unread', () => {
    const reason = 'longer than 200 characters';
    expect(read(`1764${' '.repeat(197)}`)).toEqual({ rule: 'unparsed', reason, flags: [] });
    expect(read(`1764${' '.repeat(196)}`)).toMatchObject({ edtf: '1764' });
  });
});

// Forms printed in Descriptive Cataloging of Rare Materials (RDA Edition), "Date of publication", 5.23 and 5.28.3.1;
// those with "i.e.", "ca." and hyphens follow the rules before it (AACR2 1.4F).
describe('forms printed in the rules for rare books', () => {
  test.each([
    ['July 29, 1642', '1642-07-29'],
    ['Octr. 22, 1796', '1796-10-22'],
    ['13. Decembris, anno 1616', '1616-12-13'],
    ['[1 May 1795]', '1795-05-01'],
    ['MDCCXXXIII [1733]', '1733'],
    ['M.D.CC.XLIV [1744]', '1744'],
    ['MCCCCCXXIX [1529, that is, 1539]', '1539'],
    ['printed 1590, reprinted 1641', '1641'],
    ['1785 [that is, 1795]', '1795'],
    ['1703 [i.e. 1730]', '1730'],
    ['1743 [that is, 1744]', '1744'],
    ['Februar. 8. anno 1588 [that is, 1589]', '1589'],
    ['1690/1 [that is, 1691]', '1691'],
    ['an VII [1798 or 1799]', '[1798-09-22..1799-09-22]'],
    ['627 [1866 or 1867]', '[1866,1867]'],
    ["9 thermidor l'an 2e … [27 July 1794]", '1794-07-27'],
    ['744 i.e. 1983 or 1984', '[1983,1984]'],
    ['[1723]', '1723'],
    ['[1833?]', '1833?'],
    ['[approximately 1580]', '1580~'],
    ['[approximately 1580?]', '1580%'],
    ['[not before 1479]', '[1479..]'],
    ['[not after 21 August 1492]', '[..1492-08-21]'],
    ['[1727 or 1728]', '[1727,1728]'],
    ['[between 1711 and 1749]', '[1711..1749]'],
    ['[between 1711 and 1749?]', '[1711?..1749?]'],
    ['[198-]', '198X'],
    ['[184-?]', '184X?'],
    ['[19--]', '19XX'],
    ['[18--?]', '18XX?'],
    ['1715-1716', '1715/1716'],
    ['M,DCC,LXXXIX-M,DCC,XCII [1789-1792]', '1789/1792'],
    ['1760-<1764>', '1760/'],
  ])('%s is %s', (phrase, edtf) => expect(read(phrase)).toMatchObject({ edtf }));
});

describe('a phrase that is also an EDTF text', () => {
  test('gives years where EDTF has a season, a quarter or a half-year', () => {
    expect(['1721-24', '1730-35', '1730-41'].map(phrase => read(phrase))).toEqual([
      { edtf: '1721/1724', rule: 'phrase-16-range', flags: ['also-EDTF-subyear'], calendar: 'gregorian' },
      { edtf: '1730/1735', rule: 'phrase-16-range', flags: ['also-EDTF-subyear'], calendar: 'gregorian' },
      { edtf: '1730/1741', rule: 'phrase-16-range', flags: ['also-EDTF-subyear'], calendar: 'gregorian' },
    ]);
  });

  test('gives years where the figures run forward, else a month, and asks either way', () => {
    expect(['1702-05', '1764-05'].map(phrase => read(phrase))).toEqual([
      { edtf: '1702/1705', rule: 'phrase-16-range', flags: ['month-or-range'], calendar: 'gregorian' },
      { edtf: '1764-05', rule: 'phrase-16-range', flags: ['month-or-range'], calendar: 'gregorian' },
    ]);
  });
});

describe('what stands beside the date', () => {
  test('a copyright date is a second reading', () => {
    expect(read('1836, c1834')).toEqual({
      edtf: '1836',
      rule: 'phrase-2-copyright-beside',
      flags: ['c-prefix'],
      calendar: 'gregorian',
      second: { edtf: '1834', basis: 'copyright' },
    });
  });

  test('a later printing is a second reading, the plate keeps its date', () => {
    const read = readDatePhrase('1863, printed ca. 1866 by A. B.', 'museum');
    expect(read).toMatchObject({ edtf: '1863', second: { edtf: '1866~', basis: 'printing' } });
  });

  test('what is printed is kept beside its correction', () => {
    expect(read('1845 [1845-51]')).toMatchObject({ edtf: '1845/1851', printed: '1845' });
    expect(read('624 [1864]')).toMatchObject({ edtf: '1864', printed: '624', flags: ['other-calendar', 'supplied'] });
  });

  test('a year after a comma is the next volume unless it is earlier', () => {
    expect(read('1851, [1852]')).toMatchObject({ edtf: '1851/1852', rule: 'phrase-23-volumes' });
    expect(read('1886, [1885]')).toMatchObject({ edtf: '1885', rule: 'phrase-1-corrected' });
  });

  test('a bracket that is never closed takes nothing with it', () => {
    const unclosed = ['[[1860-70', '[1860-70', '1860-70]', '1860-70]]'].map(phrase => read(phrase));
    expect(unclosed).toEqual(unclosed.map(() => ({ ...read('1860-70'), flags: ['supplied'] })));
  });

  test('doubt in a bracket stays in it', () => {
    expect(read('1839-[74?]')).toMatchObject({ edtf: '1839/1874?' });
    expect(read('[1830-40?]')).toMatchObject({ edtf: '1830?/1840?' });
  });

  test('the calendar is that of the words', () => {
    expect(read('1723/4')).toMatchObject({ calendar: 'julian' });
    expect(read('9 thermidor an II')).toMatchObject({ edtf: '1794-07-27', calendar: 'republican' });
    expect(read('1764/5')).toMatchObject({ calendar: 'gregorian' });
  });
});

describe('Old Style', () => {
  // Birthdays that are given both ways; from memory.
  test.each([
    ['11 February 1731/2', '1732-02-22'],
    ['25 December 1642 O.S.', '1643-01-04'],
  ])('%s is %s', (phrase, edtf) => expect(read(phrase)).toMatchObject({ edtf, calendar: 'julian' }));

  test.each([
    ['February 1723/4', '[1724-02-12..1724-03-11]'],
    ['May 1723 O.S.', '[1723-05-12..1723-06-11]'],
    ['1723 O.S.', '[1723-01-12..1724-04-04]'],
    ['1723/4 O.S.', '[1724-01-12..1724-04-04]'],
    ['ca. 12 May 1723 O.S.', '1723-05-23~'],
    ['12 May 1723 or 13 May 1723 O.S.', '[1723-05-23,1723-05-24]'],
    ['May-June 1723 O.S.', '1723-05-12/1723-07-11'],
    ['before 3 February 1723/4', '[..1724-02-13]'],
    ['29 February 1699/1700', '1700-03-11'],
    ['18th century O.S.', '17XX'],
  ])('%s is %s', (phrase, edtf) => expect(read(phrase)).toMatchObject({ edtf, calendar: 'julian' }));

  test('a month of it lies in its year where it begins or ends a stretch', () => {
    const read1726 = read('February 1723/4 - 1726');
    expect(read1726).toMatchObject({ edtf: '1724/1726', flags: ['dual-year', 'wider-than-written'] });
  });

  test('a day that it does not have is refused', () => {
    expect(read('30 February 1723/4')).toMatchObject({ rule: 'unparsed' });
    expect(read('29 February 1723 O.S.')).toMatchObject({ rule: 'unparsed' });
  });

  test('a double year is never New Style', () => {
    expect(read('12 May 1723 N.S.')).toMatchObject({ edtf: '1723-05-12', calendar: 'gregorian' });
    expect(read('3 February 1723/4 N.S.')).toMatchObject({ rule: 'unparsed' });
  });
});

describe('profiles and conventions', () => {
  test('c against the year is copyright in a library and circa in a museum', () => {
    expect(readDatePhrase('c1860', 'library')).toMatchObject({ edtf: '1860', basis: 'copyright', flags: ['c-prefix'] });
    expect(readDatePhrase('c1860', 'museum')).toMatchObject({ edtf: '1860~', flags: ['c-prefix', 'circa'] });
  });

  test('the sign, the word and "c." do not depend on the profile', () => {
    expect(readDatePhrase('©1860', 'museum')).toMatchObject({ edtf: '1860', basis: 'copyright' });
    expect(readDatePhrase('cop. 1860', 'museum')).toMatchObject({ edtf: '1860', basis: 'copyright' });
    expect(readDatePhrase('c. 1860', 'library')).toMatchObject({ edtf: '1860~', rule: 'phrase-7-circa' });
  });

  test('two years with a comma are volumes in a library and nothing sure in a museum', () => {
    expect(readDatePhrase('1864, 1866', 'library')).toMatchObject({ edtf: '1864/1866' });
    expect(readDatePhrase('1864, 1866', 'museum')).toMatchObject({ rule: 'unparsed' });
  });

  test('"before" may take its year in', () => {
    expect(read('before 1770', { beforeExcludes: false })).toMatchObject({ edtf: '[..1770]', flags: [] });
    expect(read('after 1770', { beforeExcludes: false })).toMatchObject({ edtf: '[1770..]', flags: [] });
  });

  test('a century may begin with its year 01', () => {
    const begun = { century: 'XX01-XX00' } as const;
    expect(read('18th century', begun)).toMatchObject({ edtf: '[1701..1800]' });
    expect(read('early 18th century', begun)).toMatchObject({ edtf: '[1701..1734]' });
  });
});

function read(phrase: string, changed: Partial<PhraseConventions> = {}, profile: PhraseProfile = 'library') {
  return readDatePhrase(phrase, profile, { ...defaultPhraseConventions, ...changed });
}
