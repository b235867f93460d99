import type { AnyRow, ClaimOf } from '../../src/domain/model/row.ts';
import { seededRandom } from './seeded-random.ts';

/** Chance, the same for the same seed. */
export interface Dice {
  chance(of: number): boolean;
  below(end: number): number;
  pick<T>(list: readonly T[]): T;
}

export function dice(seed: number): Dice {
  const random = seededRandom(seed);
  const below = (end: number) => Math.floor(random() * end);
  return { chance: of => random() < of, below, pick: list => list[below(list.length)]! };
}

/** Real towns, two of one name, and one that nobody can find. */
export const randomPlaces: readonly AnyRow[] = [
  place('london', 51.5, -0.12, 'enk'),
  place('leipzig', 51.34, 12.37, 'gw'),
  place('paris', 48.86, 2.35, 'fr'),
  place('birmingham', 52.48, -1.9, 'enk'),
  place('philadelphia', 39.95, -75.17, 'pau'),
  { id: 'place-of-nowhere', kind: 'Place', labels: [{ text: 'Nowhere' }] },
];

function place(name: string, latitude: number, longitude: number, country: string): AnyRow {
  return { id: `place-of-${name}`, kind: 'Place', labels: [{ text: name }], latitude, longitude, country };
}

/** Editions of a few works with whatever dates, places and copies seen may be recorded of them. */
export function randomEditions(count: number, roll: Dice): readonly AnyRow[] {
  const works = ['one', 'two', 'three'].map(
    (name): AnyRow => ({ id: `work-of-${name}`, kind: 'Work', form: roll.chance(0.4) ? 'ANNUAL' : 'BOOK' }),
  );
  return [...works, ...Array.from({ length: count }, (_, i) => randomEdition(i, roll)).flat()];
}

/** What is said of an edition, anew: the same claims with other dates and places. */
export function randomEdition(number: number, roll: Dice): readonly AnyRow[] {
  const edition = `edition-of-${number}`;
  const work = `work-of-${roll.pick(['one', 'two', 'three'])}`;
  const group = `alternatives-of-${number}`;
  const isGrouped = roll.chance(0.15);
  return [
    { id: edition, kind: 'Edition', work, title: `No. ${number}`, illustrated: roll.chance(0.5) },
    { id: group, kind: 'Alternatives', ...(roll.chance(0.3) ? { open: true } : {}) },
    ...[0, 1].map(i => randomImprint(`imprint-${i}-of-${number}`, edition, roll)),
    ...[0, 1].map((i): AnyRow => {
      const dating = randomDating(`dating-${i}-of-${number}`, edition, roll, i === 0 ? 0.95 : isGrouped ? 1 : 0.08);
      return isGrouped ? { ...dating, alternativeTo: group } : dating;
    }),
    randomAccess(`access-of-${number}`, edition, roll),
  ];
}

/** Now and then one that does not count. */
function standing(counts: boolean): { readonly standing?: 'WITHDRAWN' } {
  return counts ? {} : { standing: 'WITHDRAWN' };
}

function randomImprint(id: string, edition: string, roll: Dice): ClaimOf<'Imprint'> {
  const role = roll.pick(['PUBLISHER', 'PUBLISHER', 'PRINTER', 'BOOKSELLER', 'DISTRIBUTOR'] as const);
  const at = roll.pick(randomPlaces).id;
  const fictitious = roll.chance(0.05) ? { fictitious: true } : {};
  return { id, kind: 'Imprint', edition, place: at, role, ...fictitious, ...standing(roll.chance(0.7)) };
}

function randomDating(id: string, of: string, roll: Dice, counts: number): ClaimOf<'Dating'> {
  const basis = roll.pick(['IMPRINT', 'IMPRINT', 'DOCUMENT'] as const);
  const date = randomDate(roll);
  return { id, kind: 'Dating', of, event: 'PUBLISHED', date, basis, ...standing(roll.chance(counts)) };
}

function randomAccess(id: string, what: string, roll: Dice): ClaimOf<'Access'> {
  const at = roll.pick(randomPlaces).id;
  const when = randomDate(roll);
  return { id, kind: 'Access', what, who: at, at, manner: 'SEEN', when, ...standing(roll.chance(0.1)) };
}

/** Years about the changes of routes, with all sorts of ends. */
export function randomDate(roll: Dice): string {
  const year = roll.pick([1748, 1776, 1828, 1835, 1838, 1858, 1700, 1890]) + roll.below(8);
  return roll.pick([
    ...[`${year}`, `${year}`, `${year}`, `${year}~`, `${year}-03`, `${year}-07-01`, `${year}/${year + 3}`],
    ...[`${year}/..`, `../${year}`, `[${year},${year + 2}]`, `[${year}-01,${year}-03]`, `${String(year).slice(0, 3)}X`],
  ]);
}
