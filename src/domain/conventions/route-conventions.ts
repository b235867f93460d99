import { type Convention, convention } from './convention.ts';
import type { CoordinateBox } from './coordinate-box.ts';
import { type RegionKey, regions } from './regions.ts';

/** One recorded route: how long books took between two parts of the world in an era. */
export interface RouteRow {
  readonly from: RouteEnd;
  readonly to: RouteEnd;
  /** The same holds for the way back. */
  readonly bothWays: boolean;
  /** First and last year, inclusive; null: no limit. */
  readonly years: readonly [first: number | null, last: number | null];
  /** Days, faster than any credible case: this alone can make a source too late. */
  readonly least: number;
  /** Days of slow trade with ordering: this alone can make a source safe; null: open. */
  readonly most: number | null;
}

/** A part of the world: MARC country codes and, where given, boxes in one of which the place must lie too. */
export interface RouteEnd {
  readonly name: string;
  readonly codes: readonly string[];
  readonly boxes?: readonly CoordinateBox[];
}

/** Books for sale within one town. */
export interface SameTownRow {
  /** Kilometres between two places that count as one town. */
  readonly within: number;
  readonly least: number;
  readonly most: number;
}

type Sources = { readonly source: string; readonly doc: string };

const coachTimes: Sources = {
  source:
    'least: coach in two days, announced 1747 (Pratt, History of Inland Transport; Smiles, Telford); most: convention',
  doc: 'London and the Midlands by road.',
};
const northernCoach: Sources = {
  source:
    'least: "flying coach" in 4 1/2 days, 1754 (Smiles, Gilbey); Liverpool to London in 48 hours, 1782 (Pratt); most: convention',
  doc: 'London and Manchester or Liverpool by road.',
};
const scottishCoach: Sources = {
  source:
    'least: coach in 9 days advertised 1734, 14 to 16 days 1760 (Pratt, Smiles), set below for riders; most: convention',
  doc: 'London and Edinburgh by road.',
};
const orders = 'most: a year with orders, not weeks (Green, "The British book in North America")';
const outward: Sources = {
  source: `least: 16 days from Liverpool, "believed to be the fastest" packet (Clark, Clipper Ship Era, p. 46); bonus under 35 days (Fox, Ocean Railway); ${orders}`,
  doc: 'Britain to eastern North America under sail.',
};
const homeward: Sources = {
  source: `least: 15 days to Liverpool (Clark, p. 46); bonus under 22 days (Fox); ${orders}`,
  doc: 'Eastern North America to Britain under sail.',
};
const steam: Sources = {
  source: 'least: 11 to 13 days in mid-century (secondary, weak), set below; most: convention',
  doc: 'The North Atlantic by steamer; begins early on purpose.',
};
const bengal: Sources = {
  source: 'least: below 87 days from Portsmouth to the Hooghly by a clipper, 1857 (Clark, p. 283); most: convention',
  doc: 'Britain to Bengal under sail.',
};
const australia: Sources = {
  source: 'least: below clipper records of under 75 days (Clark, p. 283; weak); most: convention',
  doc: 'Britain to Australia under sail.',
};
const rail: Sources = { source: 'convention', doc: 'Within Britain in the age of railways.' };
const channel: Sources = { source: 'convention', doc: 'London and the book towns across the Channel, in peace.' };

/** The recorded routes that ship with the program. Rows of one pair that are valid together are taken together. */
export const routeConventions: readonly Convention<string, RouteRow>[] = [
  row('london-midlands', both('london', 'midlands'), [null, 1780], 2, 60, coachTimes),
  row('london-manchester-liverpool', both('london', 'manchesterLiverpool'), [1750, 1830], 2, 60, northernCoach),
  row('london-edinburgh', both('london', 'edinburgh'), [null, 1780], 3, 90, scottishCoach),
  row('british-rail', both('britain', 'britain'), [1840, null], 0, 30, rail),
  row('britain-north-america-sail', oneWay('britain', 'easternNorthAmerica'), [null, 1860], 16, 365, outward),
  row('north-america-britain-sail', oneWay('easternNorthAmerica', 'britain'), [null, 1860], 15, 365, homeward),
  row('north-atlantic-steam', both('britain', 'easternNorthAmerica'), [1837, null], 9, 180, steam),
  row('britain-bengal-sail', oneWay('britain', 'bengal'), [null, null], 80, 540, bengal),
  row('britain-australia-sail', oneWay('britain', 'australia'), [null, null], 60, 540, australia),
  row('london-paris', both('london', 'paris'), [null, null], 2, 180, channel),
  row('london-low-countries', both('london', 'lowCountries'), [null, null], 2, 180, channel),
  row('london-leipzig', both('london', 'leipzig'), [null, null], 2, 180, channel),
];

export const sameTownConventions = [
  convention<'route.sameTown', SameTownRow>(
    'route.sameTown',
    { within: 15, least: 0, most: 30 },
    'km; d',
    'convention',
    'From the publisher to a buyer in the same town; how far apart two places of one town may lie.',
  ),
] as const;

type Ends = Pick<RouteRow, 'from' | 'to' | 'bothWays'>;

function row(
  name: string,
  ends: Ends,
  years: RouteRow['years'],
  least: number,
  most: number | null,
  { source, doc }: Sources,
): Convention<string, RouteRow> {
  return convention(`route.${name}`, { ...ends, years, least, most }, 'd', source, doc);
}

function both(from: RegionKey, to: RegionKey): Ends {
  return { from: end(from), to: end(to), bothWays: true };
}

function oneWay(from: RegionKey, to: RegionKey): Ends {
  return { from: end(from), to: end(to), bothWays: false };
}

function end(key: RegionKey): RouteEnd {
  const { name, codes, ...rest } = regions[key];
  return 'boxes' in rest ? { name, codes, boxes: rest.boxes } : { name, codes };
}
