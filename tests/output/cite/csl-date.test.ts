import { describe, expect, test } from 'vitest';
import { daysFromCivil } from '../../../src/domain/dates/calendar.ts';
import { cslDate } from '../../../src/output/cite/csl-date.ts';

const of = (edtf: string, language?: string) => cslDate({ edtf }, language);

describe('a date CSL can hold', () => {
  test.each([
    ['1764', { 'date-parts': [[1764]] }],
    ['1764-05', { 'date-parts': [[1764, 5]] }],
    ['1764-05-07', { 'date-parts': [[1764, 5, 7]] }],
    ['1764-05-07T10:30:00Z', { 'date-parts': [[1764, 5, 7]] }],
    ['1764-XX-XX', { 'date-parts': [[1764]] }],
    ['1764-05-XX', { 'date-parts': [[1764, 5]] }],
    ['1764~', { 'date-parts': [[1764]], circa: true }],
    ['1764?', { 'date-parts': [[1764]], circa: true }],
    ['1764%', { 'date-parts': [[1764]], circa: true }],
    ['1764-~05', { 'date-parts': [[1764, 5]], circa: true }],
    ['1766/1767', { 'date-parts': [[1766], [1767]] }],
    [
      '1766-08/1767-03~',
      {
        'date-parts': [
          [1766, 8],
          [1767, 3],
        ],
        circa: true,
      },
    ],
    ['1834-22', { 'date-parts': [[1834]], season: 2 }],
    [
      '1834-21/1834-22',
      {
        'date-parts': [
          [1834, 21],
          [1834, 22],
        ],
      },
    ],
  ])('%s', (edtf, expected) => {
    expect(of(edtf)).toEqual(expected);
  });

  test('an open and an unknown end are the year 0 of an open range', () => {
    expect(of('1764/..')).toEqual({ 'date-parts': [[1764], [0]] });
    expect(of('1764/')).toEqual({ 'date-parts': [[1764], [0]] });
  });

  test('EDTF counts a year 0 and CSL does not', () => {
    expect(of('-0249')).toEqual({ 'date-parts': [[-250]] });
    expect(of('0000')).toEqual({ 'date-parts': [[-1]] });
  });
});

describe('a date CSL cannot hold is worded', () => {
  test.each([
    ['176X', '1760s'],
    ['176X~', '1760s?'],
    ['17XX', '1700–99'],
    ['[..1765]', 'not after 1765'],
    ['[1765..]', 'not before 1765'],
    ['[1760..1770]', '1760–70'],
    ['[1798..1802]', '1798–1802'],
    ['[1801..1809]', '1801–09'],
    ['[1727,1728]', '1727 or 1728'],
    ['[1727,1728,1730]', '1727, 1728 or 1730'],
    ['{1727,1728}', '1727, 1728'],
    ['[1764-05,1764-06]', '1764-05 or 1764-06'],
    ['../1764', '–1764'],
    ['176X/177X', '1760s–1770s'],
  ])('%s is %s', (edtf, literal) => {
    expect(of(edtf)).toEqual({ literal });
  });

  test('in the language of the citation', () => {
    expect(['en', 'de-DE', 'fr', 'it', 'es', 'nl'].map(language => of('[..1765]', language)?.literal)).toEqual([
      'not after 1765',
      'nicht nach 1765',
      'pas après 1765',
      'non dopo il 1765',
      'no después de 1765',
      'niet na 1765',
    ]);
    expect(of('176X', 'de')).toEqual({ literal: '1760–69' });
    expect(of('[1727,1728]', 'nl')).toEqual({ literal: '1727 of 1728' });
  });
});

describe('without an EDTF that can be worded', () => {
  const bounds = { lo: daysFromCivil(1760, 1, 1), hi: daysFromCivil(1770, 12, 31) };

  test('the bounds speak', () => {
    expect(cslDate({ bounds })).toEqual({ literal: '1760–70' });
    expect(cslDate({ bounds: { lo: bounds.lo, hi: daysFromCivil(1760, 12, 31) } })).toEqual({ 'date-parts': [[1760]] });
    expect(cslDate({ bounds: { hi: bounds.hi } })).toEqual({ literal: 'not after 1770' });
    expect(cslDate({ bounds: { lo: bounds.lo } })).toEqual({ literal: 'not before 1760' });
    expect(cslDate({ edtf: 'Y-17E7', bounds })).toEqual({ literal: '1760–70' });
  });

  test('then the words as written, then the EDTF itself', () => {
    expect(cslDate({ asWritten: 'Michaelmas last' })).toEqual({ literal: 'Michaelmas last' });
    expect(cslDate({ edtf: 'Y-17E7', asWritten: 'of old' })).toEqual({ literal: 'of old' });
    expect(cslDate({ edtf: '1950S2' })).toEqual({ literal: '1950S2' });
  });

  test('nothing known is no date', () => {
    expect(cslDate(undefined)).toBeUndefined();
    expect(cslDate({})).toBeUndefined();
    expect(cslDate({ edtf: '', asWritten: '' })).toBeUndefined();
  });
});
