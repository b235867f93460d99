import { describe, expect, test } from 'vitest';
import { landmassOf } from '../../../src/domain/conventions/landmasses.ts';
import { ports } from '../../../src/domain/conventions/ports.ts';
import { type RegionKey, regionContains, regions } from '../../../src/domain/conventions/regions.ts';

const port = (name: string) => ports.find(each => each.name === name)!;
const regionsOf = (name: string) =>
  (Object.keys(regions) as RegionKey[]).filter(key => regionContains(regions[key], port(name)));

describe('ports', () => {
  test('lie on the landmass that their country and coordinates give', () => {
    expect(ports.map(each => [each.name, landmassOf(each)])).toEqual(ports.map(each => [each.name, each.landmass]));
  });

  test('have one entry for each country and name', () => {
    const keys = ports.map(({ country, name }) => `${country} ${name}`);
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
  });

  // Atlas of the world: a port lies within the outline of its country; sample of six read off by hand.
  test.each([
    ['Bristol', 51.45, -2.59],
    ['Leith', 55.98, -3.17],
    ['Cape Town', -33.93, 18.42],
    ['Calcutta', 22.57, 88.36],
    ['Charleston', 32.78, -79.93],
    ['Port Louis', -20.16, 57.5],
  ])('%s is at %d, %d', (name, lat, lon) => {
    const { coordinates } = port(name);
    expect(coordinates.lat).toBeCloseTo(lat, 1);
    expect(coordinates.lon).toBeCloseTo(lon, 1);
  });

  test('reach every inhabited continent', () => {
    const continents = ['Great Britain', 'Eurasia', 'Africa', 'North America', 'South America', 'Australia'];
    expect(continents.filter(each => !ports.some(({ landmass }) => landmass === each))).toEqual([]);
  });
});

describe('landmasses', () => {
  test('part islands from the mainland of their country by coordinates', () => {
    const catania = { name: 'Catania', country: 'it', coordinates: { lat: 37.49, lon: 15.07 } };
    const reggio = { name: 'Reggio di Calabria', country: 'it', coordinates: { lat: 38.11, lon: 15.65 } };
    expect([landmassOf(catania), landmassOf(reggio)]).toEqual(['Sicily', 'Eurasia']);
  });

  test('a place of the United Kingdom at Belfast is in Ireland', () => {
    const belfast = { name: 'Belfast', country: 'xxk', coordinates: { lat: 54.6, lon: -5.93 } };
    expect(landmassOf(belfast)).toBe('Ireland');
  });

  test('a place without coordinates counts as on the mainland', () => {
    expect(landmassOf({ name: 'Bastia', country: 'fr' })).toBe('Eurasia');
  });

  test('a place without a country, or with no code that is known, has none', () => {
    expect([landmassOf({ name: 'Utopia' }), landmassOf({ name: 'Utopia', country: 'xx' })]).toEqual([
      undefined,
      undefined,
    ]);
  });
});

describe('regions', () => {
  test.each([
    ['London', ['britain', 'london']],
    ['Liverpool', ['britain', 'manchesterLiverpool']],
    ['Leith', ['britain', 'edinburgh']],
    ['Dublin', ['ireland']],
    ['Antwerp', ['lowCountries']],
    ['Boston', ['easternNorthAmerica']],
    ['San Francisco', []],
    ['Calcutta', ['bengal']],
    ['Bombay', []],
    ['Hobart', ['australia']],
  ])('%s is in %j', (name, expected) => {
    expect(regionsOf(name)).toEqual(expected);
  });

  test('the Midlands hold Birmingham and Burslem but not London or Leeds', () => {
    const towns = {
      Birmingham: [52.481, -1.9],
      Burslem: [53.046, -2.199],
      London: [51.509, -0.126],
      Leeds: [53.797, -1.548],
    };
    const inside = Object.entries(towns).filter(([name, [lat, lon]]) =>
      regionContains(regions.midlands, { name, country: 'enk', coordinates: { lat: lat!, lon: lon! } }),
    );
    expect(inside.map(([name]) => name)).toEqual(['Birmingham', 'Burslem']);
  });

  test('a region by coordinates does not hold a place without them', () => {
    expect(regionContains(regions.bengal, { name: 'Calcutta', country: 'ii' })).toBe(false);
  });
});
