import type { Coordinates } from './located-place.ts';

/** South, west, north, east in degrees, all edges inclusive; no box crosses the 180th meridian. */
export type CoordinateBox = readonly [south: number, west: number, north: number, east: number];

/** True if the point lies in the box or on its edge. */
export function boxContains(box: CoordinateBox, { lat, lon }: Coordinates): boolean {
  const [south, west, north, east] = box;
  return lat >= south && lat <= north && lon >= west && lon <= east;
}
