import { invariant } from '../../errors.ts';
import { foldTokens } from '../text/fold.ts';
import { britishTowns } from './imprint-towns-british.ts';
import { frenchAndNetherlandishTowns } from './imprint-towns-french-and-netherlandish.ts';
import { germanTowns } from './imprint-towns-german.ts';
import { northAmericanTowns } from './imprint-towns-north-american.ts';
import { northernAndEasternTowns } from './imprint-towns-northern-and-eastern.ts';
import { overseasTowns } from './imprint-towns-overseas.ts';
import { southernEuropeanTowns } from './imprint-towns-southern-european.ts';
import type { Coordinates, LocatedPlace } from './located-place.ts';

/** A town that imprints name. */
export interface ImprintTown extends LocatedPlace {
  /** Country code and name without capitals and accents, unique and stable: `enk-london`. */
  readonly key: string;
  readonly coordinates: Coordinates;
  /** MARC country code of the place today. */
  readonly country: string;
  /** Other codes it is filed under: those of countries it once lay in. */
  readonly formerCountries: readonly string[];
  readonly otherNames: readonly string[];
}

/** A name of a town; `alone`: where it stands alone it means this town and none of its namesakes. */
export interface TownName {
  readonly town: ImprintTown;
  readonly alone: boolean;
}

/** Goes up with every change of the tables. */
export const imprintTownsVersion = 1;

/**
 * Form in which names of places are compared: folded as everywhere (case, accents, ligatures, u/v, i/j), `St` taken as
 * `Saint`. Empty if the text has no letters.
 */
export function placeKey(name: string): string {
  return foldTokens(name)
    .map(token => (token === 'st' ? 'saint' : token === 'ste' ? 'sainte' : token))
    .join(' ');
}

/** The towns that bear a name, in the order of the tables; empty if none does. */
export function townsNamed(name: string): readonly TownName[] {
  return byName.get(placeKey(name)) ?? [];
}

/**
 * A row of the tables is `name | codes | latitude, longitude | other names`: the code of today first, then former
 * ones; other names parted by `;`. A star before a name says that, standing alone, it means this town (convention).
 */
function readTowns(table: string): { town: ImprintTown; starred: readonly string[] }[] {
  return table.trim().split('\n').map(readTown);
}

function readTown(line: string): { town: ImprintTown; starred: readonly string[] } {
  const [name, codes, where, others] = line.split(' | ');
  const [lat, lon] = (where ?? '').split(', ').map(Number);
  const [country, ...formerCountries] = (codes ?? '').split(' ');
  invariant(name && country && Number.isFinite(lat) && Number.isFinite(lon), `"${line}" is no row of a town`);
  const written = [name, ...(others === undefined ? [] : others.split('; '))];
  const [first, ...otherNames] = written.map(each => each.replace(/^\*/, ''));
  const town = Object.freeze({
    key: `${country}-${slug(first!)}`,
    name: first!,
    coordinates: { lat: lat!, lon: lon! },
    country,
    formerCountries,
    otherNames,
  });
  return { town, starred: written.filter(each => each.startsWith('*')).map(placeKey) };
}

function slug(name: string): string {
  const plain = name.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '');
}

const read = [
  britishTowns,
  frenchAndNetherlandishTowns,
  germanTowns,
  southernEuropeanTowns,
  northernAndEasternTowns,
  northAmericanTowns,
  overseasTowns,
].flatMap(readTowns);

export const imprintTowns: readonly ImprintTown[] = Object.freeze(read.map(({ town }) => town));

const byName: ReadonlyMap<string, readonly TownName[]> = namesOf();

function namesOf(): Map<string, TownName[]> {
  const names = new Map<string, TownName[]>();
  for (const { town, starred } of read) {
    for (const key of new Set([town.name, ...town.otherNames].map(placeKey))) {
      const same = names.get(key);
      const entry = { town, alone: starred.includes(key) };
      if (same === undefined) names.set(key, [entry]);
      else same.push(entry);
    }
  }
  return names;
}
