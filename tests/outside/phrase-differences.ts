/** A phrase read otherwise than its file reads it, and what decides. */
export interface PhraseDifference {
  readonly decidedBy: string;
  /** Phrase, the file's reading, ours. */
  readonly rows: readonly (readonly [phrase: string, file: string, ours: string])[];
}

/**
 * The file's readings are those of the tests of one program (ixc/python-edtf, MIT). LoC: Extended Date/Time Format
 * (EDTF) Specification, Library of Congress, 4 February 2019.
 */
export const phraseDifferences: readonly PhraseDifference[] = [
  {
    decidedBy:
      'rule 11: what is before or after a date leaves the date out, and is one unknown day, so a set with an open side (LoC level 2, "Set representation": [..1760-12-03]), where the file has an interval that lasts from or to an unknown day',
    rows: [
      ['earlier than 1928', '/1928', '[..1927]'],
      ['before 1928', '/1928', '[..1927]'],
      ['after 1928', '1928/', '[1929..]'],
      ['later than 1928', '1928/', '[1929..]'],
      ['before January 1928', '/1928-01', '[..1927-12]'],
      ['before 18 January 1928', '/1928-01-18', '[..1928-01-17]'],
      ['before approx January 18 1928', '/1928-01-18~', '[..1928-01-17~]'],
      ['before approx January 1928', '/1928-01~', '[..1927-12~]'],
      ['after approx January 1928', '1928-01~/', '[1928-02~..]'],
      ['after approx Summer 1928', '1928-22~/', '[1928-23~..]'],
      ['after about the 1920s', '192X~/', '[193X~..]'],
      ['before about the 1900s', '/190X~', '[..18XX~]'],
      ['before the 1900s', '/19XX', '[..18XX]'],
      ['before 19th century', '/18XX', '[..17XX]'],
    ],
  },
  {
    decidedBy:
      'rule 13: "1800s" is the decade or the century, and the century holds both; a circa does not tell which (the file takes the decade with a circa and the century without)',
    rows: [
      ['c1900s', '190X~', '19XX~'],
      ['c1800s?', '180X%', '18XX%'],
      ['year in about the 1800s', '180X~', '18XX~'],
    ],
  },
  {
    decidedBy: 'rule 28: day/month and month/day are both in use, so the reading is the one or the other',
    rows: [['10/7/2008', '2008-10-07', '[2008-07-10,2008-10-07]']],
  },
  {
    decidedBy:
      'LoC level 1, "Seasons": a season stands in the place of the month and takes no day; 1849-21-XX is no EDTF (rule 30)',
    rows: [
      ['day in Spring 1849', '1849-21-XX', '1849-21'],
      ['a day in about Spring 1849?', '1849-21-XX%', '1849-21%'],
    ],
  },
  {
    decidedBy:
      'LoC level 1, "Negative calendar year", in the years of ISO 8601: 0000 is 1 BC, so 64 BC is -0063 (rule 25)',
    rows: [['c64 BCE', '-0064~', '-0063~']],
  },
  {
    decidedBy:
      'rule 15: years with a slash that do not follow on each other are a range; and the file writes a space, which LoC sets do not have',
    rows: [['1858/1860', '[1858, 1860]', '1858/1860']],
  },
  {
    decidedBy:
      'rule 12: "or" is a set of which one is meant (LoC level 2, "Set representation", one of a set); the file drops the second',
    rows: [
      ['1863 or 1864', '1863', '[1863,1864]'],
      ['1864 or 1866', '1864', '[1864,1866]'],
    ],
  },
  {
    decidedBy: 'every rule: a question mark that ends the phrase is a doubt about all of it, put on every member',
    rows: [['1868-1871?', '1868/1871?', '1868?/1871?']],
  },
];

/** Phrases that the file reads and the grammar refuses, with the reason. A refused phrase is kept as it was written. */
export const phrasesRefused: Readonly<Record<string, string>> = {
  '90': 'two digits are no year: LoC level 0 has four, and no century is given',
  'notcirca 1860': 'a word that is not in the grammar may change what the date means',
  'attica 1802': 'a word that is not in the grammar may change what the date means',
  'attic. 1802': 'a word that is not in the grammar may change what the date means',
  'birthday in 1872': 'the date of another event than the one that the field is about',
  '1900; 1973': 'two dates without a word that says what each is the date of',
};
