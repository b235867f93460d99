import { countryCodesInForce } from './country-codes.ts';
import { countryCodeOf } from './country-codes-by-name.ts';
import { countryCovers } from './country-codes-covering.ts';
import { type ImprintTown, type TownName, townsNamed } from './imprint-towns.ts';
import { withoutLeadingWords } from './leading-words.ts';
import type { LocatedPlace } from './located-place.ts';

/** Why this place: what decided between the places of the name. */
export type PlaceRule = 'country code' | 'imprint town' | 'only place of that name';

export type PlaceResolution =
  | { readonly place: LocatedPlace & { readonly key: string }; readonly rule: PlaceRule }
  | {
      readonly unresolved: true;
      /** The places of that name; empty if none is known. */
      readonly choices: readonly LocatedPlace[];
      /** The country code that was given and that none of the choices lies under. */
      readonly contradicted?: string;
    };

/**
 * Which place a name means. In this order: the one place of the name under the country code; the one that the list of
 * imprint towns means by the name alone; the only place of that name in the list. Names are compared by `placeKey`; if
 * none agrees, once more without a leading "at", "in", "zu", "v" and their like, then with the words after a comma
 * taken as the country (`Salem, Mass.`).
 *
 * @param hints.country MARC country code, padded or not, discontinued or not; codes for no country count as none.
 * A code that none of the places lies under is a contradiction: nothing is chosen, both sides are said.
 */
export function resolvePlaceName(name: string, hints: { readonly country?: string } = {}): PlaceResolution {
  for (const [form, said] of formsOf(name)) {
    const named = townsNamed(form);
    if (named.length > 0) return choose(named, said ?? hints.country);
  }
  return { unresolved: true, choices: [] };
}

function* formsOf(name: string): Generator<readonly [form: string, country?: string]> {
  yield [name];
  const bare = withoutLeadingWords(name);
  if (bare !== name) yield [bare];
  const comma = bare.lastIndexOf(',');
  const country = comma > 0 ? countryCodeOf(bare.slice(comma + 1)) : undefined;
  if (country !== undefined) yield [bare.slice(0, comma), country];
}

function choose(named: readonly TownName[], country: string | undefined): PlaceResolution {
  if (country !== undefined && countryCodesInForce(country).length > 0) {
    const under = named.filter(({ town }) => liesUnder(town, country));
    if (under.length === 0) {
      return { unresolved: true, choices: named.map(({ town }) => town), contradicted: country.trim() };
    }
    return choiceOf(under, 'country code');
  }
  return choiceOf(named, 'only place of that name');
}

function choiceOf(named: readonly TownName[], ruleOfOne: PlaceRule): PlaceResolution {
  const [first, ...others] = named;
  const preferred = named.find(({ alone }) => alone);
  if (others.length === 0) {
    return { place: first!.town, rule: ruleOfOne === 'country code' || !first!.alone ? ruleOfOne : 'imprint town' };
  }
  if (preferred !== undefined) return { place: preferred.town, rule: 'imprint town' };
  return { unresolved: true, choices: named.map(({ town }) => town) };
}

function liesUnder(town: ImprintTown, country: string): boolean {
  return [town.country, ...town.formerCountries].some(code => countryCovers(country, code));
}
