import { describe, expect, test } from 'vitest';
import type { CslDate, CslItem } from '../../../src/output/cite/csl-item.ts';
import { toText } from '../../../src/output/cite/to-text.ts';

// Inputs and expected texts: citation-style-language/test-suite @13724f99, processor-tests/humans/<name>.txt
// (date_DateBC: as @1ffbc8fd has it; later locales put a space before BC, the packed ones do not). The
// styles are written anew here; each comes in as a user's own .csl text.
const style = (date: string) =>
  `<style xmlns="http://purl.org/net/xbiblio/csl" class="note" version="1.0">
    <info><id/><title/><updated>2009-08-10T04:49:00+09:00</updated></info>
    <citation><layout delimiter="; ">${date}</layout></citation>
  </style>`;
const inParts = style(
  `<date variable="issued" prefix="(" suffix=")">
    <date-part name="day" suffix=" "/><date-part name="month" form="long" suffix=" "/><date-part name="year"/>
  </date>`,
);
const asText = style('<date variable="issued" form="text" date-parts="year-month-day"/>');
const marked = style(
  `<choose><if is-uncertain-date="issued"><text value="circa" suffix=" "/></if></choose>
  <date variable="issued">
    <date-part name="day" suffix=" "/><date-part name="month" form="long" suffix=" "/><date-part name="year"/>
  </date>`,
);

const book = (issued: CslDate, more: Partial<CslItem> = {}): CslItem => ({
  id: 'item-1',
  type: 'book',
  title: 'Ignore me',
  issued,
  custom: { id: 'item-1' },
  ...more,
});
const text = (csl: string, issued: CslDate) => toText([book(issued)], { style: csl, form: 'CITATION' })[0]?.text;

describe('dates of the CSL test-suite', () => {
  test('date_Uncertain', () => {
    expect(text(marked, { 'date-parts': [[2005, 12, 15]], circa: true })).toBe('circa 15 December 2005');
    expect(text(marked, { 'date-parts': [[2005, 12, 20]] })).toBe('20 December 2005');
  });

  test.each([
    ['date_TextFormYeardateYearRangeOpen', inParts, [[1987], [0]], '(1987–)'],
    [
      'date_TextFormMonthdateYearRange',
      inParts,
      [
        [1987, 8],
        [2003, 10],
      ],
      '(August 1987–October 2003)',
    ],
    [
      'date_TextFormFulldateDayRange',
      inParts,
      [
        [2003, 8, 10],
        [2003, 8, 23],
      ],
      '(10–23 August 2003)',
    ],
    [
      'date_SeasonRange1',
      asText,
      [
        [1999, 21],
        [2001, 22],
      ],
      'Spring 1999–Summer 2001',
    ],
    [
      'date_SeasonRange3',
      asText,
      [
        [1999, 21],
        [1999, 22],
      ],
      'Spring–Summer 1999',
    ],
    ['date_DateBC', inParts, [[-250]], '(250BC)'],
  ])('%s', (_, csl, parts, expected) => {
    expect(text(csl, { 'date-parts': parts })).toBe(expected);
  });

  test('date_OtherWithDate', () => {
    expect(text(inParts, { 'date-parts': [[2000]], season: 3 })).toBe('(Autumn 2000)');
  });
});

describe('books of the CSL test-suite in the Chicago style', () => {
  const chicago = (item: CslItem) => toText([item], { style: 'chicago-fullnote-bibliography' })[0]?.text;

  test('fullstyles_ChicagoNoteWithBibliographyWithPublisher', () => {
    const doe = book(
      { 'date-parts': [[1990]] },
      {
        title: 'Book A',
        author: [{ family: 'Doe', given: 'John' }],
        publisher: 'Zardoz Press',
        'publisher-place': 'Brobdingnag',
      },
    );
    const roe = book({ 'date-parts': [[1991]] }, { title: 'Book B', author: [{ family: 'Roe', given: 'Jane' }] });
    expect(chicago(doe)).toBe('Doe, John. Book A. Brobdingnag: Zardoz Press, 1990.');
    expect(chicago(roe)).toBe('Roe, Jane. Book B, 1991.');
  });

  test('bugreports_LabelsOutOfPlace', () => {
    const jones = book(
      { 'date-parts': [[1991]] },
      {
        title: 'Bourgeois Revolution Revivified: 1789 and Social Change',
        author: [{ family: 'Jones', given: 'Colin' }],
        editor: [{ family: 'Lucas', given: 'Colin' }],
        publisher: 'Clarendon Press',
        'publisher-place': 'Oxford',
      },
    );
    expect(chicago(jones)).toBe(
      'Jones, Colin. Bourgeois Revolution Revivified: 1789 and Social Change. Edited by Colin Lucas. Oxford: Clarendon Press, 1991.',
    );
  });

  test('fullstyles_ChicagoAuthorDateSimple', () => {
    const doe = book(
      { 'date-parts': [[1990]] },
      {
        title: 'Book A',
        author: [{ family: 'Doe', given: 'John' }],
        publisher: 'Zardoz Press',
        'publisher-place': 'Brobdingnag',
      },
    );
    expect(toText([doe], { style: 'chicago-author-date' })[0]?.text).toBe(
      'Doe, John. 1990. Book A. Brobdingnag: Zardoz Press.',
    );
  });
});
