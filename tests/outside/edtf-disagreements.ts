/** A question on which a library of the outside material and this program answer differently. */
export interface Disagreement {
  readonly question: string;
  readonly answer: string;
  /** Section of the Extended Date/Time Format Specification (Library of Congress, 4 February 2019) and what it says. */
  readonly clause: string;
  /** The rows it explains, by source. */
  readonly rows: RowsBySource;
  /** Rows of the same file that answer it as this program does, where there are any. */
  readonly answeredAlike?: RowsBySource;
}

export type RowsBySource = Readonly<Record<string, readonly string[]>>;

const unt = 'unt-libraries/edtf-validate';
const python = 'ixc/python-edtf';
const wiki = 'ProfessionalWiki/EDTF';
const elixir = 'nulib/edtf_ex';
const javascript = 'inukshuk/edtf.js';

export const edtfDisagreements: readonly Disagreement[] = [
  {
    question: 'Are two or three digits a century or a decade?',
    answer: 'no: refused, with 17XX or 176X as the hint',
    clause:
      'Level 0, Date: year, year and month, or whole date; Compliance: other features of ISO 8601-1 are suppressed',
    rows: {
      [elixir]: ['201', '19', '20', '-201', '-19'],
      [javascript]: [
        ...['19', '00', '-04', '193', '019', '009', '000', '-193', '-019'],
        ...['197~', '197?', '197%', '19~', '19?', '19%'],
      ],
    },
    answeredAlike: { [elixir]: ['1'] },
  },
  {
    question: 'May a time have fractions of a second?',
    answer: 'no',
    clause:
      'Level 0, Date and Time: four complete representations, none with fractions; Compliance: the rest is suppressed',
    rows: {
      [javascript]: [
        ...['2016-05-02T16:54:59.042', '2016-05-02T16:54:59.04200000', '2016-05-02T16:54:59.4'],
        ...['2016-05-02T16:54:59.42', '2016-05-02T16:54:59.042123', '2016-05-02T16:54:59.042Z'],
      ],
    },
  },
  {
    question: 'May a day end with 24:00:00?',
    answer: 'no',
    clause: 'Level 0 specifies features of ISO 8601-1, whose edition of 2019 withdrew the 24th hour',
    rows: { [javascript]: ['2016-05-02T24:00:00'] },
  },
  {
    question: 'May the shift from UTC be written without a colon?',
    answer: 'no',
    clause: 'Extended format: a colon between clock components; the basic format is not permitted',
    rows: {
      [javascript]: ['+0230', '+0000', '+1400', '+1330', '+1200', '+0410', '-0015', '-1159', '-1200'].map(
        shift => `2016-05-02T16:54:59${shift}`,
      ),
    },
  },
  {
    question: 'Which level is a negative year?',
    answer: '1',
    clause: 'Level 1, Negative calendar year',
    rows: { [python]: ['-0999', '-2005/-1999-02'], [javascript]: ['-0002', '-9999'] },
    answeredAlike: { [unt]: ['-2010', '-1000/-0999'] },
  },
  {
    question: 'Which level is a year alone with more than two unspecified digits?',
    answer: '2',
    clause: 'Level 1, Unspecified digit(s) from the right, 1: one or two digits; Level 2, Unspecified Digit: anywhere',
    rows: { [python]: ['1XXX', '1XXX~'], [javascript]: ['XXXX'] },
  },
  {
    question: 'Which level is an unspecified month or day after an unspecified year?',
    answer: '2',
    clause: 'Level 1, Unspecified digit(s) from the right, 2 and 4: the year is specified',
    rows: { [javascript]: ['XXXX-XX', 'XXXX-XX-XX'] },
    answeredAlike: { [unt]: ['1XXX-XX', 'XXXX-12-XX'], [javascript]: ['1XXX-XX'] },
  },
  {
    question: 'Which level is a qualifier at the end of a season?',
    answer: '1',
    clause:
      'Level 1, Seasons: in place of a month; Level 1, Qualification of a date (complete): at the end of the string',
    rows: { [unt]: ['2011-23~'] },
    answeredAlike: { [unt]: ['1952-23~/1953'] },
  },
  {
    question: 'May a set have spaces?',
    answer: 'no',
    clause: 'Level 2, Set representation, 4: no spaces anywhere within the expression',
    rows: {
      [python]: [
        ...['[1667, 1668, 1670..1672]', '[1760-01, 1760-02, 1760-12..]', '[1667, 1760-12]'],
        ...['{1667,1668, 1670..1672}', '{1960, 1961-12}'],
      ],
      [wiki]: ['{1960, 1961-12}', '[1667, 1760-12]'],
      [javascript]: ['[1667,1668, 1670..1672]', '[1667, 1672-12]', '{1667, 1670..1672}', '{1960 ,  1961-12}'],
    },
    answeredAlike: { [unt]: ['[1667,1668, 1670..1672]', '{-1667,1668, 1670..1672}'] },
  },
  {
    question: 'May .. stand outside a set, and beside a date in an interval?',
    answer: 'no',
    clause:
      'Level 2, Set representation, 1, 2 and 6: inside brackets; Level 1, Extended Interval, 2: in place of a date',
    rows: {
      [wiki]: ['..1984', '1984..', '1670..1673', '..2004-06-01/~2004-06-20', '2004-06-01~/2004-06-20..'],
    },
  },
  {
    question: 'May a year have five digits without Y?',
    answer: 'no',
    clause: 'Level 1, Letter-prefixed calendar year: Y for years later than 9999; it marks the whole string as a year',
    rows: { [wiki]: ['12004-06~-11', '22004?-06-11', '1156X-12-25', '2XXXX-12-XX', '31XXX-XX'] },
    answeredAlike: { [unt]: ['20067890%'], [javascript]: ['12345'] },
  },
  {
    question: 'May a year of four digits have Y?',
    answer: 'no',
    clause: 'Level 1, Letter-prefixed calendar year: when, and only when, the year exceeds four digits',
    rows: { [elixir]: ['Y2020'] },
    answeredAlike: { [unt]: ['Y2006'], [javascript]: ['Y9999'] },
  },
  {
    question: 'May X be a small letter?',
    answer: 'no',
    clause: "Differences: the unspecified date character is the upper-case 'X'",
    rows: { [wiki]: ['20xx'] },
  },
  {
    question: 'May an interval end before it begins?',
    answer: 'no: it is refused, not turned round',
    clause: 'Level 0, Time Interval: start date before the stroke, end date after it',
    rows: { [elixir]: ['1999/1980'] },
    answeredAlike: { [unt]: ['0001/0000'], [wiki]: ['2002/2001'] },
  },
  {
    question: 'May an interval begin on a day within the month or year in which it ends?',
    answer: 'yes: it begins on that day and ends some time in the month or year, on or after that day',
    clause: "Level 0, Time Interval, examples 4 and 5: 'ending sometime in' the month or year",
    rows: {
      [unt]: ['0000-01-03/0000-01', '0000-02/0000', '2004-06-11%/2004-%06', '2004-06-11%/2004-06~'],
    },
    answeredAlike: { [unt]: ['1111-01-01/1111'] },
  },
  {
    question: 'May an interval begin in a winter and end in the spring of the same year?',
    answer: 'yes: January and February may be that winter',
    clause: 'Level 1, Seasons: names the winter of a year and gives it no months',
    rows: { [unt]: ['2012-24/2012-21'] },
  },
  {
    question: 'May a season begin or end an interval?',
    answer: 'yes',
    clause: 'Level 0, Time Interval: start and end are dates; Level 1, Seasons: in place of a month value',
    rows: { [javascript]: ['2012-21/2012-22'] },
    answeredAlike: { [unt]: ['2003-22/2003-23', '1923-21/1924'] },
  },
  {
    question: 'May an interval begin in a year before -9999?',
    answer: 'yes',
    clause: 'Level 1, Letter-prefixed calendar year: such a year is a date; -61000 is earlier than -2000',
    rows: { [unt]: ['Y-61000/-2000'] },
  },
  {
    question: 'May both ends of an interval be unknown?',
    answer: 'no: nothing is dated',
    clause: 'Level 1, Extended Interval, 1: a null string for the start or the end',
    rows: { [javascript]: ['/'] },
  },
  {
    question: 'How far may an unknown end lie?',
    answer: 'no bound; ten years are that library’s own convention',
    clause: 'Level 1, Time interval with unknown end, and with unknown start: no bound is named',
    rows: { [python]: ['/2006', '2004-06-01/', '1984-06-02?/'] },
  },
  {
    question: 'Which months are the winter of a year?',
    answer: 'January and February, or December to the next February: the libraries give three answers',
    clause: 'Level 2, Sub-year groupings 24, 28 and 30: names without months (30 is the summer of the south)',
    rows: { [python]: ['2010-24'], [elixir]: ['2020-24', '2023-24', '2020-30'] },
  },
  {
    question: 'May a component be qualified from the left in a date that is qualified as a whole?',
    answer: 'yes',
    clause: 'Level 2, Qualification: of a group and of an individual component, neither excludes the other',
    rows: { [elixir]: ['2020-%06-25?'] },
    answeredAlike: { [unt]: ['?2004-06-04~', '?2004-06%'] },
  },
];

/**
 * Rows whose level is only the heading of the list where python-edtf has them, with what the list itself says of
 * them. The specification has both at level 1 ("Unspecified digit(s) from the right", 1; "Qualification of a date
 * (complete)", example 3).
 */
export const underOtherHeading: Readonly<Record<string, string>> = {
  [`${python} 2004-06-11%`]: 'an example of level 2 which is read at level 1',
  [`${python} 196X`]: 'kept from the test of a feature that the specification gave up',
};
