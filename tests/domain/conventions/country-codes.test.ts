import { describe, expect, test } from 'vitest';
import { countryCodes, countryCodesInForce } from '../../../src/domain/conventions/country-codes.ts';
import { countryCodeOf } from '../../../src/domain/conventions/country-codes-by-name.ts';
import { countryCovers } from '../../../src/domain/conventions/country-codes-covering.ts';

describe('country codes', () => {
  // Library of Congress, MARC Code List for Countries.
  test.each([
    ['enk', 'England'],
    ['gw', 'Germany'],
    ['au', 'Austria'],
    ['at', 'Australia'],
    ['sz', 'Switzerland'],
    ['quc', 'Québec (Province)'],
  ])('%s is %s', (code, name) => {
    expect(countryCodes.get(code)).toBe(name);
  });

  test('padding and capitals do not count; discontinued codes give their successors; no country gives none', () => {
    expect(['fr ', 'ENK', 'uk ', 'cs', 'xx ', 'vp', '|||', 'zzz'].map(countryCodesInForce)).toEqual([
      ['fr'],
      ['enk'],
      ['xxk'],
      ['xr', 'xo'],
      [],
      [],
      [],
      [],
    ]);
  });

  test('a discontinued code never hides one in force', () => {
    for (const code of countryCodes.keys()) {
      if (code !== 'xx' && code !== 'vp') expect(countryCodesInForce(code)).toEqual([code]);
    }
  });
});

describe('names of countries', () => {
  test.each([
    ['England', 'enk'],
    ['United States', 'xxu'],
    ['Germany', 'gw'],
    ['Mass.', 'mau'],
    ['N.Y.', 'nyu'],
    ['N. Y.', 'nyu'],
    ['Pa.', 'pau'],
    ['N.Z.', 'nz'],
    ['Norfolk', 'enk'],
    ['Maine', 'meu'],
    ['Georgia', 'gau'],
    ['Suisse', 'sz'],
    ['ÖSTERREICH', 'au'],
    ["Van Diemen's Land", 'tma'],
    ['Québec', 'quc'],
  ])('%s is %s', (name, code) => {
    expect(countryCodeOf(name)).toBe(code);
  });

  test('other words are no country', () => {
    expect(['London', 'Co.', 'Jun.', '', '1822'].map(countryCodeOf)).toEqual(Array(5).fill(undefined));
  });
});

describe('a country said of a place', () => {
  test.each([
    ['xxu', 'nyu', true],
    ['nyu', 'xxu', true],
    ['nyu', 'mau', false],
    ['uk ', 'stk', true],
    ['xxk', 'nik', true],
    ['ie', 'nik', true],
    ['enk', 'stk', false],
    ['xxc', 'quc', true],
    ['quc', 'xxu', false],
    ['at', 'vra', true],
    ['au', 'vra', false],
    ['cs', 'xo', true],
    ['ge', 'gw', true],
    ['|||', 'enk', false],
  ])('%s covers %s: %s', (said, code, covered) => {
    expect(countryCovers(said, code)).toBe(covered);
  });
});
