import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import type { LocatedPlace } from '../../../src/domain/conventions/located-place.ts';
import { withOverrides } from '../../../src/domain/conventions/with-overrides.ts';
import { daysFromCivil, daysOfYear } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { lagBetween } from '../../../src/domain/reach/lag-between.ts';
import { towns } from './towns.ts';

const years = (first: number, last = first): DayRange => ({ lo: daysOfYear(first).lo, hi: daysOfYear(last).hi });
const lag = (from: LocatedPlace | undefined, to: LocatedPlace, window: DayRange) =>
  lagBetween(from, to, window, defaultConventions);
/** Whether it is no way within a town is asked first. */
const inTown = { key: 'route.sameTown', id: 'convention-route-same-town', version: 1 };

describe('a recorded route', () => {
  test.each<[string, keyof typeof towns, keyof typeof towns, DayRange, number, number, string]>([
    ['within a town', 'leipzig', 'leipzig', years(1867), 0, 30, 'same town'],
    ['by coach to the Midlands', 'london', 'birmingham', years(1764), 2, 60, 'route.london-midlands'],
    ['by coach and back', 'birmingham', 'london', years(1764), 2, 60, 'route.london-midlands'],
    ['to Manchester', 'london', 'manchester', years(1782), 2, 60, 'route.london-manchester-liverpool'],
    ['to Edinburgh', 'london', 'edinburgh', years(1760), 3, 90, 'route.london-edinburgh'],
    ['by rail', 'edinburgh', 'london', years(1844), 0, 30, 'route.british-rail'],
    ['to America under sail', 'oxford', 'philadelphia', years(1790), 16, 365, 'route.britain-north-america-sail'],
    ['from America under sail', 'philadelphia', 'oxford', years(1790), 15, 365, 'route.north-america-britain-sail'],
    ['to America by steam', 'oxford', 'philadelphia', years(1871), 9, 180, 'route.north-atlantic-steam'],
    ['to Bengal', 'london', 'calcutta', years(1764), 80, 540, 'route.britain-bengal-sail'],
    ['to Australia', 'london', 'sydney', years(1830), 60, 540, 'route.britain-australia-sail'],
    ['across the Channel', 'london', 'paris', years(1764), 2, 180, 'route.london-paris'],
    ['from Leipzig', 'leipzig', 'london', years(1764), 2, 180, 'route.london-leipzig'],
  ])('%s', (_, from, to, window, least, most, by) => {
    const found = lag(towns[from], towns[to], window);
    expect([found.least, found.most, found.route.by, found.flags]).toEqual([least, most, by, []]);
  });

  test('under sail and by steam on the same days is taken together', () => {
    const found = lag(towns.oxford, towns.philadelphia, years(1855, 1859));
    expect([found.least, found.most]).toEqual([9, 365]);
    expect(found.route.stretches).toEqual([
      {
        days: years(1855, 1859),
        least: 9,
        most: 365,
        rows: ['route.britain-north-america-sail', 'route.north-atlantic-steam'],
        legs: [],
      },
    ]);
    expect(found.route.conventions).toEqual([
      {
        key: 'route.britain-north-america-sail',
        id: 'convention-route-britain-north-america-sail',
        version: 1,
      },
      { key: 'route.north-atlantic-steam', id: 'convention-route-north-atlantic-steam', version: 1 },
      inTown,
    ]);
  });

  test('is named for the days of the window on which it is valid', () => {
    const { least, most, route } = lag(towns.oxford, towns.philadelphia, years(1830, 1870));
    expect([least, most]).toEqual([9, 365]);
    expect(route.stretches.map(({ days, rows }) => [days, rows])).toEqual([
      [years(1830, 1836), ['route.britain-north-america-sail']],
      [years(1837, 1860), ['route.britain-north-america-sail', 'route.north-atlantic-steam']],
      [years(1861, 1870), ['route.north-atlantic-steam']],
    ]);
  });

  test('is valid to the last day of its last year', () => {
    const last = daysFromCivil(1860, 12, 31);
    expect(lag(towns.london, towns.philadelphia, { lo: last, hi: last }).most).toBe(365);
    expect(lag(towns.london, towns.philadelphia, { lo: last + 1, hi: last + 1 }).most).toBe(180);
  });

  test('of a stored record stands beside those that ship', () => {
    const ends = { from: { name: 'Vennholm', codes: ['sw'] }, to: { name: 'Leipzig', codes: ['gw'] }, bothWays: true };
    const value = { ...ends, years: [1750, 1800], least: 5, most: null };
    const conventions = withOverrides(defaultConventions, [{ key: 'route.vennholm-leipzig', value, version: 3 }]);
    const found = lagBetween(towns.leipzig, towns.vennholm, years(1764), conventions);
    expect([found.least, found.most, found.route.conventions]).toEqual([
      5,
      undefined,
      [inTown, { key: 'route.vennholm-leipzig', id: 'convention-route-vennholm-leipzig', version: 3 }],
    ]);
  });
});

describe('without a recorded route', () => {
  test('land and sea are composed and marked as assumed', () => {
    const found = lag(towns.london, towns.hamburg, years(1764));
    expect([found.flags, found.route.by]).toEqual([['ASSUMED'], 'London by sea to Hamburg']);
    // 720 km: 0 to 2 days at 400 km/d; twice the way at 60 km/d, and a year for orders.
    expect([found.least, found.most]).toEqual([1, 392]);
    expect(found.route.conventions.map(({ key }) => key)).toEqual([
      'lagRegion.radius',
      'route.detour.land',
      'route.detour.sea',
      // Its box of London is the town that a way from London is reckoned for.
      'route.london-edinburgh',
      'route.orderAllowance',
      'route.ports',
      'route.sameTown',
      'route.speed.before-1780',
    ]);
  });

  test('a recorded route by sea is used between the ports', () => {
    const found = lag(towns.chicago, towns.london, years(1871));
    expect(found.route.stretches[0]?.legs.map(({ over, rows }) => [over, rows])).toEqual([
      ['LAND', []],
      ['SEA', ['route.north-atlantic-steam']],
    ]);
    expect([found.least, found.most]).toEqual([10, 195]);
  });

  test('land alone serves on one landmass', () => {
    expect(lag(towns.leipzig, towns.vienna, years(1764)).route.by).toBe('Leipzig by land to Vienna');
  });

  test('days that no route covers take the composed way, and the whole is taken together', () => {
    const found = lag(towns.london, towns.birmingham, years(1779, 1782));
    expect(found.route.stretches.map(({ days, rows }) => [days, rows])).toEqual([
      [years(1779, 1780), ['route.london-midlands']],
      [years(1781, 1782), []],
    ]);
    // By coach to Liverpool, 60 days at most, and 160 km more by road at 30 km/d, 1.4 times the way.
    expect([found.least, found.most]).toEqual([0, 68]);
  });

  test('an island without a listed port is its own port', () => {
    const found = lag(towns.kirkwall, towns.hamburg, years(1764));
    expect(found.route.by).toBe('Kirkwall by sea to Hamburg');
    expect(found.most).toBeGreaterThan(365);
  });

  test('a place without a country is marked, and any way is tried', () => {
    const bare = { name: 'Oxford', coordinates: towns.oxford.coordinates };
    const found = lag(bare, towns.london, years(1844));
    expect([found.least, found.flags]).toEqual([0, ['ASSUMED', 'REGION_UNKNOWN']]);
    expect(found.most).toBeLessThan(400);
  });

  test('speeds are those of the eras that the window touches; open ends touch the outer ones', () => {
    const fastest = lag(towns.leipzig, towns.vienna, years(1850)).least;
    const before = lag(towns.leipzig, towns.vienna, years(1700));
    const open = lag(towns.leipzig, towns.vienna, {});
    expect([open.least, open.most]).toEqual([fastest, before.most]);
    expect(open.route.stretches.at(0)?.days.lo).toBeUndefined();
    expect(open.route.stretches.at(-1)?.days.hi).toBeUndefined();
  });
});

describe('without coordinates', () => {
  test('a lag is 0 to open and the place not known', () => {
    const nowhere = { name: 'Nowhere', country: 'gw' };
    for (const found of [lag(nowhere, towns.london, years(1764)), lag(undefined, towns.london, years(1764))]) {
      expect([found.least, found.most, found.flags]).toEqual([0, undefined, ['PLACE_UNKNOWN']]);
    }
  });

  test('the same name in the same country is the same town', () => {
    expect(lag({ name: 'Nowhere', country: 'gw' }, { name: 'Nowhere', country: 'gw' }, years(1764)).most).toBe(30);
    expect(lag({ name: 'Nowhere' }, { name: 'Nowhere' }, years(1764)).most).toBeUndefined();
  });
});

describe('laws', () => {
  const withoutRoutes = withOverrides(
    defaultConventions,
    defaultConventions.routes.map(({ key, value }) => ({
      key,
      value: { ...value, years: [-9000, -9000] },
      version: 2,
    })),
  );
  const nearestPairs: readonly (readonly [keyof typeof towns, keyof typeof towns, number])[] = [
    ['london', 'birmingham', 1764],
    ['london', 'manchester', 1782],
    ['london', 'edinburgh', 1760],
    ['edinburgh', 'london', 1844],
    ['manchester', 'philadelphia', 1790],
    ['philadelphia', 'manchester', 1790],
    ['manchester', 'philadelphia', 1850],
    ['london', 'calcutta', 1764],
    ['london', 'sydney', 1830],
  ];

  test.each(nearestPairs)('reckoning %s to %s in %d is never slower than the quickest recorded', (from, to, year) => {
    const window = years(year);
    const recorded = lag(towns[from], towns[to], window);
    const reckoned = lagBetween(towns[from], towns[to], window, withoutRoutes);
    expect(recorded.flags).toEqual([]);
    expect(reckoned.flags).toContain('ASSUMED');
    expect(reckoned.least).toBeLessThanOrEqual(recorded.least);
  });

  test('a longer window never has a narrower lag, and places with coordinates never an open one', () => {
    const place = fc.constantFrom(...Object.values(towns));
    const year = fc.integer({ min: 1700, max: 1900 });
    fc.assert(
      fc.property(place, place, year, fc.nat(30), fc.nat(30), (from, to, first, a, b) => {
        const narrow = lag(from, to, years(first, first + a));
        const wide = lag(from, to, years(first - b, first + a + b));
        expect(wide.least).toBeLessThanOrEqual(narrow.least);
        expect(wide.most).toBeGreaterThanOrEqual(narrow.most!);
        expect(narrow.most).toBeGreaterThanOrEqual(narrow.least);
      }),
      { numRuns: 60 },
    );
  });

  test('towns of one half-degree box and country have the same lags', () => {
    const [a, b] = [
      { name: 'A', country: 'gw', coordinates: { lat: 49.1, lon: 8.1 } },
      { name: 'B', country: 'gw', coordinates: { lat: 49.45, lon: 8.45 } },
    ];
    const lags = [a, b].map(from => lag(from, towns.vennholm, years(1764)));
    expect([lags[0]?.least, lags[0]?.most]).toEqual([lags[1]?.least, lags[1]?.most]);
  });
});
