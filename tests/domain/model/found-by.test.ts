import { describe, expect, test } from 'vitest';
import { foundBy } from '../../../src/domain/model/found-by.ts';
import { copying, dating, plate } from '../../support/store-rows.ts';

describe('what a row is ordered and found by', () => {
  test('a record by its words', () => {
    const row = plate('a', { labels: [{ text: 'The Dog' }], caption: 'A dog at a gate' });
    expect(foundBy(row)).toEqual({ sort: 'the dog', tokens: ['the', 'dog', 'a', 'at', 'gate'] });
    expect(foundBy({ id: 'plate-of-b', kind: 'Plate' })).toEqual({ sort: '', tokens: [] });
  });

  test.each([
    // 180 years of 365 days and 43 leap days before 1970.
    ['1790', { lo: -65743, hi: -65379 }],
    ['1790/..', { lo: -65743 }],
    // How far an approximate date reaches is said when it is asked.
    ['1790~', '1790~'],
  ])('a dating by the days of %s', (date, days) => {
    expect(foundBy(dating('a', 'plate-of-a', date))).toEqual({ days });
  });

  test('a dating that says no days by nothing', () => {
    const { date: _date, ...dateless } = dating('a', 'plate-of-a', '1790');
    expect(foundBy(dateless)).toEqual({});
    expect(foundBy(dating('a', 'plate-of-a', 'no date'))).toEqual({});
  });

  test('a dating that does not count by nothing, and no other claim by anything', () => {
    expect(foundBy({ ...dating('a', 'plate-of-a', '1790'), standing: 'WITHDRAWN' })).toEqual({});
    expect(foundBy(copying('a', 'plate-of-a', 'plate-of-b'))).toEqual({});
  });
});
