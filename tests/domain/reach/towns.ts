import type { LocatedPlace } from '../../../src/domain/conventions/located-place.ts';

const town = (name: string, country: string, lat: number, lon: number): LocatedPlace => ({
  name,
  country,
  coordinates: { lat, lon },
});

/** Towns for tests; coordinates from memory, to two decimals. Vennholm is invented. */
export const towns = {
  london: town('London', 'enk', 51.51, -0.13),
  birmingham: town('Birmingham', 'enk', 52.48, -1.89),
  manchester: town('Manchester', 'enk', 53.48, -2.24),
  oxford: town('Oxford', 'enk', 51.75, -1.26),
  edinburgh: town('Edinburgh', 'stk', 55.95, -3.19),
  dublin: town('Dublin', 'ie', 53.35, -6.26),
  paris: town('Paris', 'fr', 48.86, 2.35),
  leipzig: town('Leipzig', 'gw', 51.34, 12.37),
  hamburg: town('Hamburg', 'gw', 53.55, 9.99),
  vienna: town('Vienna', 'au', 48.21, 16.37),
  vennholm: town('Vennholm', 'sw', 57.4, 15.1),
  philadelphia: town('Philadelphia', 'pau', 39.95, -75.17),
  chicago: town('Chicago', 'ilu', 41.88, -87.63),
  calcutta: town('Calcutta', 'ii', 22.57, 88.36),
  sydney: town('Sydney', 'xna', -33.87, 151.21),
  kirkwall: town('Kirkwall', 'stk', 58.98, -2.96),
} as const;
