import { describe, expect, test } from 'vitest';
import { cslName } from '../../../src/output/cite/csl-name.ts';
import { editionNumber } from '../../../src/output/cite/edition-number.ts';

describe('a name', () => {
  const person = (name: string, sortName?: string) =>
    cslName({ name, kind: 'person', role: 'aut', ...(sortName === undefined ? {} : { sortName }) });

  test('is split where the sort name says how', () => {
    expect(person('Ann Marlow', 'Marlow, Ann')).toEqual({ family: 'Marlow', given: 'Ann' });
    expect(person('Jean de La Tour', 'La Tour, Jean de')).toEqual({ family: 'La Tour', given: 'Jean de' });
  });

  test('loses dates of life and keeps a suffix', () => {
    expect(person('Ann Marlow', 'Marlow, Ann, 1720-1790')).toEqual({ family: 'Marlow', given: 'Ann' });
    expect(person('T. Pike, Jr.', 'Pike, Thomas, Jr., b. 1801')).toEqual({
      family: 'Pike',
      given: 'Thomas',
      suffix: 'Jr.',
    });
  });

  test('stays whole where nothing says how', () => {
    expect(person('Ann Marlow')).toEqual({ literal: 'Ann Marlow' });
    expect(person('Fantin', 'Fantin')).toEqual({ literal: 'Fantin' });
    expect(person('Fantin', 'Fantin, 1700-1750')).toEqual({ literal: 'Fantin' });
  });

  test('of a firm stays whole, commas and all', () => {
    expect(cslName({ name: 'Pike, Marlow & Co.', sortName: 'Pike, Marlow & Co.', kind: 'firm', role: 'aut' })).toEqual({
      literal: 'Pike, Marlow & Co.',
    });
  });

  test('is taken as given where the record has its parts', () => {
    expect(cslName({ name: 'x', family: 'van den Berg', given: 'Jan', kind: 'person', role: 'aut' })).toEqual({
      family: 'van den Berg',
      given: 'Jan',
    });
  });
});

describe('an edition statement', () => {
  test.each([
    ['2nd ed.', 2],
    ['2d edition', 2],
    ['The third edition.', 3],
    ['[4th ed.]', 4],
    ['Second edition', 2],
    ['2. Aufl.', 2],
    ['Zweite Auflage', 2],
    ['Dritte Ausgabe.', 3],
    ['2e éd.', 2],
    ['Seconde édition', 2],
    ['2ª ed.', 2],
    ['Seconda edizione', 2],
    ['Editio secunda', 2],
    ['2e druk', 2],
    ['12th ed', 12],
    ['7', 7],
  ])('%s is number %i', (statement, number) => {
    expect(editionNumber(statement)).toBe(number);
  });

  test.each([
    'New ed.',
    '2nd ed., revised',
    'Second American from the fifth London edition',
    '1834 edition',
    'Neue Ausgabe',
  ])('%s is no number', statement => {
    expect(editionNumber(statement)).toBeUndefined();
  });
});
