import { boxContains, type CoordinateBox } from './coordinate-box.ts';
import type { LocatedPlace } from './located-place.ts';

/** A named part of the world that rows of routes may name as an end. */
export interface Region {
  readonly name: string;
  /** MARC country codes, without padding. */
  readonly codes: readonly string[];
  /** Where given, a place must lie in one of the boxes too, and one without coordinates lies outside the region. */
  readonly boxes?: readonly CoordinateBox[];
  readonly source: string;
}

const convention = 'convention';
const atlanticStates = 'meu nhu vtu mau riu ctu nyu nju pau deu mdu dcu vau ncu scu gau flu'.split(' ');
const atlanticCanada = 'nsc nkc pic nfc quc'.split(' ');

/** The regions that ship with the program, by key. */
export const regions = {
  britain: { name: 'Britain', codes: ['enk', 'stk', 'wlk', 'xxk'], source: convention },
  ireland: { name: 'Ireland', codes: ['ie', 'nik'], source: convention },
  london: { name: 'London', codes: ['enk', 'xxk'], boxes: [[51.3, -0.52, 51.7, 0.25]], source: convention },
  midlands: {
    name: 'Birmingham and the towns of the Midlands',
    codes: ['enk', 'xxk'],
    boxes: [[52.1, -2.9, 53.2, -0.9]],
    source: convention,
  },
  manchesterLiverpool: {
    name: 'Manchester, Liverpool and the towns between',
    codes: ['enk', 'xxk'],
    boxes: [[53.32, -3.1, 53.62, -2.1]],
    source: convention,
  },
  edinburgh: {
    name: 'Edinburgh and Leith',
    codes: ['stk', 'xxk'],
    boxes: [[55.88, -3.4, 56, -3.05]],
    source: convention,
  },
  france: { name: 'France', codes: ['fr', 'mc'], source: convention },
  paris: { name: 'Paris', codes: ['fr'], boxes: [[48.75, 2.1, 49, 2.55]], source: convention },
  lowCountries: { name: 'the Low Countries', codes: ['be', 'ne', 'lu'], source: convention },
  germany: { name: 'Germany', codes: ['gw'], source: convention },
  leipzig: { name: 'Leipzig', codes: ['gw'], boxes: [[51.25, 12.2, 51.45, 12.55]], source: convention },
  austriaHungary: { name: 'Austria, Bohemia and Hungary', codes: ['au', 'hu', 'xr', 'xo'], source: convention },
  switzerland: { name: 'Switzerland', codes: ['sz', 'lh'], source: convention },
  italy: { name: 'Italy', codes: ['it', 'vc', 'sm'], source: convention },
  iberia: { name: 'Spain and Portugal', codes: ['sp', 'po', 'an', 'gi'], source: convention },
  scandinavia: { name: 'Denmark, Norway and Sweden', codes: ['dk', 'no', 'sw'], source: convention },
  russia: { name: 'Russia', codes: ['ru'], source: convention },
  easternNorthAmerica: {
    name: 'eastern North America',
    codes: [...atlanticStates, ...atlanticCanada],
    source: 'convention: the states and provinces with Atlantic ports',
  },
  westIndies: {
    name: 'the West Indies',
    codes: 'am aq bb bf co cu dq dr gd gp ht jm mj mq pr tr vb vi xd xk xm'.split(' '),
    source: convention,
  },
  bengal: {
    name: 'Bengal',
    codes: ['bg', 'ii'],
    boxes: [[20.5, 85.8, 27.3, 92.8]],
    source: 'convention: the lower Ganges plain and delta',
  },
  australia: {
    name: 'Australia and Tasmania',
    codes: 'aca at qea tma vra wea xna xoa xra'.split(' '),
    source: convention,
  },
} as const satisfies Readonly<Record<string, Region>>;

export type RegionKey = keyof typeof regions;

/** True if the place lies in the region, as far as its country code and coordinates tell. */
export function regionContains(region: Region, { country, coordinates }: LocatedPlace): boolean {
  if (country === undefined || !region.codes.includes(country)) return false;
  if (region.boxes === undefined) return true;
  return coordinates !== undefined && region.boxes.some(box => boxContains(box, coordinates));
}
