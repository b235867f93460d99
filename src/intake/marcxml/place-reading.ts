import { countryCodesInForce } from '../../domain/conventions/country-codes.ts';
import { placeKey } from '../../domain/conventions/imprint-towns.ts';
import { type PlaceResolution, resolvePlaceName } from '../../domain/conventions/resolve-place.ts';
import type { RecordDraft } from './bundle-draft.ts';
import { controlField, type MarcField, subfieldValues } from './marc-record.ts';
import type { RecordView } from './record-view.ts';
import { remember } from './remember.ts';

/** A place named in an imprint: the record it comes to, and by which rule. */
export interface PlaceReading {
  readonly key: string;
  readonly record: RecordDraft;
  readonly rule?: string;
  /** Why the name stands for no known town; absent if it does. */
  readonly unresolved?: string;
}

/**
 * The place that a name in an imprint means. Country codes of the record (008/15-17, 044) decide between places of one
 * name; where they fit none of them and `first` is false, the name decides alone, for they are said of the first place.
 */
export function readPlace(name: string, countries: readonly string[], first: boolean): PlaceReading {
  return readings(`${first ? '1' : '0'}${countries.join(' ')}|${name}`);
}

/** MARC country codes that the record gives for its place of publication. */
export function countriesOf(view: RecordView): readonly string[] {
  const coded = [(controlField(view.record, '008') ?? '').slice(15, 18), ...view.fields('044').flatMap(codes)];
  return coded.length === 1 && !/[a-z]/.test(coded[0]!)
    ? none
    : coded.filter(code => countryCodesInForce(code).length > 0);
}

const none: readonly string[] = [];

function codes(field: MarcField): string[] {
  return subfieldValues(field, 'a');
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
  const labels = place.name === name ? [{ text: name }] : [{ text: place.name }];
  return {
    key: `place:${place.key}`,
    record: {
      kind: 'Place',
      labels,
      ...(place.coordinates === undefined ? {} : { latitude: place.coordinates.lat, longitude: place.coordinates.lon }),
      ...(place.country === undefined ? {} : { country: place.country }),
    },
    rule,
  };
});

function resolve(name: string, countries: readonly string[], first: boolean): PlaceResolution {
  let failed: PlaceResolution | undefined;
  for (const country of countries) {
    const resolution = resolvePlaceName(name, { country });
    if ('place' in resolution) return resolution;
    failed ??= resolution;
  }
  return failed !== undefined && first ? failed : resolvePlaceName(name);
}

function unresolved(
  name: string,
  { choices, contradicted }: Extract<PlaceResolution, { unresolved: true }>,
): PlaceReading {
  const lie = choices.map(place => `${place.name} (${place.country})`).join(', ');
  const why =
    contradicted !== undefined
      ? `the record says country "${contradicted}", but known are ${lie}`
      : choices.length > 1
        ? `it may be ${lie}`
        : 'it is not among the towns that are known';
  const key = placeKey(name);
  return {
    key: `place:${key === '' ? name : key}`,
    record: { kind: 'Place', labels: [{ text: name }] },
    unresolved: why,
  };
}
