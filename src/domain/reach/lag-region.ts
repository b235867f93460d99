import type { Conventions } from '../conventions/conventions.ts';
import type { Coordinates, LocatedPlace } from '../conventions/located-place.ts';
import { regionContains } from '../conventions/regions.ts';
import type { RouteEnd } from '../conventions/route-conventions.ts';
import { greatCircle } from './great-circle.ts';

/** Where ways from a place are reckoned from: every place of a region has the same lags. */
export interface LagRegion {
  readonly centre: Coordinates;
  /** No place of the region lies farther from the centre, in km. */
  readonly radius: number;
  /** Keys of the conventions that make it a region, or each place one of its own; none of a place that is no region. */
  readonly by: readonly string[];
}

/**
 * The region of a place with coordinates: the town box of a recorded route in which it lies, else its box of half a
 * degree. A box is a town if no point of it is farther from its centre than `lagRegion.radius`.
 */
export function lagRegionOf(place: LocatedPlace, coordinates: Coordinates, conventions: Conventions): LagRegion {
  const radius = conventions.get(radiusKey);
  if (radius === 0) return { centre: coordinates, radius, by: [radiusKey] };
  return townOf(place, radius, conventions) ?? { centre: cellCentre(coordinates), radius, by: [radiusKey] };
}

const radiusKey = 'lagRegion.radius';

function townOf(place: LocatedPlace, radius: number, conventions: Conventions): LagRegion | undefined {
  for (const { key, value } of conventions.routes) {
    for (const end of [value.from, value.to]) {
      const town = contains(end, place) ? smallest(end, radius) : undefined;
      if (town !== undefined) return { ...town, by: [radiusKey, key] };
    }
  }
  return undefined;
}

function contains(end: RouteEnd, place: LocatedPlace): boolean {
  return end.boxes !== undefined && regionContains({ ...end, source: '' }, place);
}

function smallest({ boxes }: RouteEnd, radius: number): Omit<LagRegion, 'by'> | undefined {
  if (boxes?.length !== 1) return undefined;
  const [south, west, north, east] = boxes[0]!;
  const centre = { lat: (south + north) / 2, lon: (west + east) / 2 };
  const corners = [south, north].map(lat => greatCircle(centre, { lat, lon: west }));
  const half = Math.max(...corners);
  return half < radius ? { centre, radius: half } : undefined;
}

function cellCentre({ lat, lon }: Coordinates): Coordinates {
  return { lat: Math.floor(lat * 2) / 2 + 0.25, lon: Math.floor(lon * 2) / 2 + 0.25 };
}
