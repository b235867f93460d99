import type { LocatedPlace } from '../conventions/located-place.ts';
import { greatCircle } from './great-circle.ts';

/** Whether two places are one town: at most `within` kilometres apart, or, where either lacks coordinates, the same by name and country. */
export function sameTown(a: LocatedPlace, b: LocatedPlace, within: number): boolean {
  if (a === b) return true;
  if (a.coordinates !== undefined && b.coordinates !== undefined) {
    const degrees = Math.abs(a.coordinates.lat - b.coordinates.lat);
    return degrees * 111 <= within + 1 && greatCircle(a.coordinates, b.coordinates) <= within;
  }
  return a.country !== undefined && a.country === b.country && a.name === b.name;
}
