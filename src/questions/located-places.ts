import type { LocatedPlace } from '../domain/conventions/located-place.ts';
import { labelOf } from '../domain/model/label.ts';
import type { RecordOf } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';

const asked = 500;

/** Places of the store as routes need them, by id; one that is not there is left out. */
export async function locatedPlaces(
  store: GraphStore,
  ids: Iterable<string>,
): Promise<ReadonlyMap<string, LocatedPlace>> {
  const distinct = [...new Set(ids)];
  const found = new Map<string, LocatedPlace>();
  for (let from = 0; from < distinct.length; from += asked) {
    for (const row of await store.rows(distinct.slice(from, from + asked))) {
      if (row?.kind === 'Place') found.set(row.id, locatedPlace(row));
    }
  }
  return found;
}

/** The same object for the same place as long as it is in use much: what is reckoned of a place is remembered by object. */
export function locatedPlace(place: RecordOf<'Place'>): LocatedPlace {
  const { latitude: lat, longitude: lon, country } = place;
  const name = labelOf(place) ?? place.id;
  const key = JSON.stringify([name, lat, lon, country]);
  const known = places.get(key);
  if (known !== undefined) return known;
  const located = {
    name,
    ...(lat === undefined || lon === undefined ? {} : { coordinates: { lat, lon } }),
    ...(country === undefined ? {} : { country }),
  };
  if (places.size >= mostPlaces) places.clear();
  places.set(key, located);
  return located;
}

/** Places seen lately; by what they are, so that a changed place is another. */
const places = new Map<string, LocatedPlace>();
const mostPlaces = 50_000;
