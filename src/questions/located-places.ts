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

export function locatedPlace(place: RecordOf<'Place'>): LocatedPlace {
  const { latitude: lat, longitude: lon, country } = place;
  return {
    name: labelOf(place) ?? place.id,
    ...(lat === undefined || lon === undefined ? {} : { coordinates: { lat, lon } }),
    ...(country === undefined ? {} : { country }),
  };
}
