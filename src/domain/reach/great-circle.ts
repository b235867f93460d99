import type { Coordinates } from '../conventions/located-place.ts';

/** Mean radius of the earth in kilometres (IUGG). */
const radius = 6371.0088;

const radians = Math.PI / 180;

/** Kilometres over the great circle on a sphere; haversine formula (R. W. Sinnott, Sky and Telescope 68, 1984). */
export function greatCircle(a: Coordinates, b: Coordinates): number {
  const dLat = Math.sin(((b.lat - a.lat) * radians) / 2);
  const dLon = Math.sin(((b.lon - a.lon) * radians) / 2);
  const h = dLat * dLat + Math.cos(a.lat * radians) * Math.cos(b.lat * radians) * dLon * dLon;
  return 2 * radius * Math.asin(Math.min(1, Math.sqrt(h)));
}
