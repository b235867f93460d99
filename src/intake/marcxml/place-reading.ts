import { countryCodesInForce } from '../../domain/conventions/country-codes.ts';
import { countryCodeOf } from '../../domain/conventions/country-codes-by-name.ts';
import type { ImprintPlaceText } from '../../domain/conventions/imprint-place-text.ts';
import { placeKey } from '../../domain/conventions/imprint-towns.ts';
import { type PlaceResolution, resolvePlaceName } from '../../domain/conventions/resolve-place.ts';
import { remember } from '../../domain/text/remember.ts';
import type { RecordDraft } from './bundle-draft.ts';
import { subfieldValues } from './marc-record.ts';
import type { RecordView } from './record-view.ts';

/** A place named in an imprint: the record it comes to, and by which rule. */
export interface PlaceReading {
  readonly key: string;
  readonly record: RecordDraft;
  readonly rule?: string;
  /** Why the name stands for no known town; absent if it does. */
  readonly unresolved?: string;
}

/**
 * The place that a name in an imprint means. The country that stands beside the name decides between places of one
 * name, else the country codes of the record (008/15-17, 044). Where those fit none of the places and `first` is false,
 * the name decides alone: they are said of the first place.
 */
export function readPlace(text: ImprintPlaceText, ofRecord: readonly string[], first: boolean): PlaceReading {
  const countries = text.country ?? ofRecord.join(' ');
  return readings(`${first || text.country !== undefined ? '1' : '0'}${countries}|${text.name}`);
}

/** MARC country codes that the record gives for its place of publication. */
export function countriesOf(view: RecordView): readonly string[] {
  const coded = [view.f008.slice(15, 18)];
  for (const field of view.fields('044')) coded.push(...subfieldValues(field, 'a'));
  return coded.filter(code => countryCodesInForce(code).length > 0);
}

const readings = remember(50_000, (asked): PlaceReading => {
  const bar = asked.indexOf('|');
  const name = asked.slice(bar + 1);
  const countries = asked
    .slice(1, bar)
    .split(' ')
    .filter(code => code !== '');
  const resolution = resolve(name, countries, asked[0] === '1');
  if ('unresolved' in resolution) return unresolved(name, resolution);
  const { place, rule } = resolution;
  return {
    key: `place:${place.key}`,
    record: {
      kind: 'Place',
      labels: [{ text: place.name }],
      ...(place.coordinates === undefined ? {} : { latitude: place.coordinates.lat, longitude: place.coordinates.lon }),
      ...(place.country === undefined ? {} : { country: place.country }),
    },
    rule,
  };
});

function resolve(name: string, countries: readonly string[], bound: boolean): PlaceResolution {
  let failed: PlaceResolution | undefined;
  for (const country of countries) {
    const resolution = resolvePlaceName(name, { country });
    if ('place' in resolution) return resolution;
    failed ??= resolution;
  }
  return failed !== undefined && bound ? failed : resolvePlaceName(name);
}

type Unresolved = Extract<PlaceResolution, { unresolved: true }>;

function unresolved(name: string, { choices, contradicted }: Unresolved): PlaceReading {
  const key = placeKey(name);
  const country = choices.length === 0 ? countryCodeOf(name) : undefined;
  return {
    key: `place:${key === '' ? name : key}`,
    record: { kind: 'Place', labels: [{ text: name }], ...(country === undefined ? {} : { country }) },
    unresolved: country === undefined ? reasonOf(choices, contradicted) : 'it names a country',
  };
}

function reasonOf(choices: Unresolved['choices'], contradicted: string | undefined): string {
  const lie = choices.map(place => `${place.name} (${place.country})`).join(', ');
  if (contradicted !== undefined) return `the country is given as "${contradicted}", but known are ${lie}`;
  return choices.length > 0 ? `it may be ${lie}` : 'it is not among the towns that are known';
}
