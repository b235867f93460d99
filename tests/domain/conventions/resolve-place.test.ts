import { describe, expect, test } from 'vitest';
import { countryCodes } from '../../../src/domain/conventions/country-codes.ts';
import { imprintTowns, placeKey, townsNamed } from '../../../src/domain/conventions/imprint-towns.ts';
import { landmassOf } from '../../../src/domain/conventions/landmasses.ts';
import { resolvePlaceName } from '../../../src/domain/conventions/resolve-place.ts';

const answer = (name: string, country?: string) => {
  const found = resolvePlaceName(name, country === undefined ? {} : { country });
  if ('place' in found) return `${found.place.key}: ${found.rule}`;
  const choices = found.choices.map(place => `${place.name} (${place.country})`).join(', ');
  return `unresolved: ${choices}${found.contradicted === undefined ? '' : `, not ${found.contradicted}`}`;
};

describe('the towns of imprints', () => {
  test('have keys of their own, codes in force and coordinates on a known landmass', () => {
    const keys = imprintTowns.map(town => town.key);
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
    const wrong = imprintTowns.filter(
      town =>
        ![town.country, ...town.formerCountries].every(code => countryCodes.has(code)) ||
        Math.abs(town.coordinates.lat) > 72 ||
        Math.abs(town.coordinates.lon) > 180 ||
        landmassOf(town) === undefined,
    );
    expect(wrong.map(town => town.key)).toEqual([]);
  });

  test('no name standing alone means two of them', () => {
    const names = new Set(imprintTowns.flatMap(town => [town.name, ...town.otherNames]));
    const twice = [...names].filter(name => townsNamed(name).filter(({ alone }) => alone).length > 1);
    expect(twice).toEqual([]);
  });

  test('every name is one that can be compared', () => {
    const names = imprintTowns.flatMap(town => [town.name, ...town.otherNames]);
    expect(names.filter(name => placeKey(name) === '' || name !== name.trim())).toEqual([]);
  });
});

describe('which place a name means', () => {
  test.each([
    ['London', undefined, 'enk-london: imprint town'],
    ['London', 'onc', 'onc-london: country code'],
    ['Cambridge', undefined, 'enk-cambridge: imprint town'],
    ['Cambridge', 'mau', 'mau-cambridge: country code'],
    ['Cambridge', 'xxu', 'mau-cambridge: country code'],
    ['Cambridge', 'uk ', 'enk-cambridge: country code'],
    ['Boston', undefined, 'mau-boston: imprint town'],
    ['Boston', 'enk', 'enk-boston-lincolnshire: country code'],
    ['Aberdeen', undefined, 'stk-aberdeen: imprint town'],
    ['Leeuwarden', undefined, 'ne-leeuwarden: only place of that name'],
    ['Rochester', undefined, 'unresolved: Rochester, Kent (enk), Rochester (nyu)'],
    ['Rochester', 'nyu', 'nyu-rochester: country code'],
    ['Nowhere', undefined, 'unresolved: '],
    ['', undefined, 'unresolved: '],
  ])('%s, country %s: %s', (name, country, expected) => {
    expect(answer(name, country)).toBe(expected);
  });

  test('a code for no country counts as none', () => {
    expect(['xx ', 'vp ', '|||', '   '].map(code => answer('London', code))).toEqual(
      Array(4).fill('enk-london: imprint town'),
    );
  });

  test('a country where no place of the name lies chooses nothing, and both sides are said', () => {
    expect(answer('Leipzig', 'enk')).toBe('unresolved: Leipzig (gw), not enk');
  });

  test('a town is found under the country it once lay in', () => {
    expect([answer('Stettin', 'gw'), answer('Stettin', 'pl')]).toEqual([
      'pl-stettin: country code',
      'pl-stettin: country code',
    ]);
  });

  // Latin names: Graesse, Orbis Latinus.
  test.each([
    ['Londini', 'enk-london'],
    ['Lugduni Batavorum', 'ne-leiden'],
    ['Lugduni', 'fr-lyon'],
    ['Lipsiæ', 'gw-leipzig'],
    ['Parisiis', 'fr-paris'],
    ['Argentorati', 'fr-strasbourg'],
    ['Amstelodami', 'ne-amsterdam'],
    ['Oxonii', 'enk-oxford'],
    ['Vindobonae', 'au-wien'],
    ['Berolini', 'gw-berlin'],
    ['Halæ Saxonum', 'gw-halle'],
    ['Hafniae', 'dk-copenhagen'],
    ['VPSALIAE', 'sw-uppsala'],
    ['Trajecti ad Rhenum', 'ne-utrecht'],
    ['Traiecti ad Rhenum', 'ne-utrecht'],
    ['Augustæ Vindelicorum', 'gw-augsburg'],
    ['Herbipoli', 'gw-würzburg'.normalize('NFKD').replace(/\p{M}/gu, '')],
  ])('%s is %s', (name, key) => {
    expect(answer(name).split(':')[0]).toBe(key);
  });

  test.each([
    ['we Lwowie', 'un-lviv'],
    ['v Praze', 'xr-prague'],
    ['ἐν Ἀθηναις', 'gr-athens'],
    ['Въ Пятигорскѣ', 'ru-pyatigorsk'],
    ['Reimpreso en Buenos-Ayres', 'ag-buenos-aires'],
    ['St. Petersburg', 'ru-saint-petersburg'],
    ['Salem, Mass.', 'mau-salem'],
    ['KNARESBRO', 'enk-knaresborough'],
  ])('%s is %s', (name, key) => {
    expect(answer(name).split(':')[0]).toBe(key);
  });

  test('the towns where wares were decorated are known', () => {
    const towns =
      'Delft Haarlem Rotterdam Antwerp Augsburg Nürnberg Leipzig Dresden Meissen Paris Lyon Rouen Nevers Moustiers ' +
      'London Birmingham Sheffield Liverpool Burslem Hanley Stoke Etruria Longton Fenton Tunstall Cobridge Dublin ' +
      'Boston Philadelphia Baltimore Charleston Lisbon Coimbra Seville Talavera Rome Venice Bassano Faenza Sèvres ' +
      'Strasbourg Lunéville Tournai Höchst Frankenthal Nymphenburg Zürich Nyon Copenhagen Marieberg Doccia Alcora Manises';
    expect(towns.split(' ').filter(town => answer(town).startsWith('unresolved'))).toEqual([]);
  });
});
