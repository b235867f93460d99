import { dateArcs } from './date-arcs.ts';
import { strongComponents } from './strong-components.ts';

/**
 * Members in the order in which arcs lead from one to the next: each alone, or those that lead to each other in a circle
 * together. Every list comes after all lists from which an arc leads to it. Linear.
 */
export function inCircles(
  members: readonly string[],
  arcs: readonly (readonly [from: string, to: string])[],
): readonly (readonly string[])[] {
  const place = new Map(members.map((member, i) => [member, i]));
  const known = arcs.filter(([from, to]) => place.has(from) && place.has(to));
  const ends = {
    from: new Int32Array(known.map(([from]) => place.get(from)!)),
    to: new Int32Array(known.map(([, to]) => place.get(to)!)),
    weight: new Float64Array(known.length),
    source: new Int32Array(known.length),
  };
  const { count, variables, start } = strongComponents(dateArcs(members.length, ends));
  const circles: string[][] = [];
  for (let i = 0; i < count; i += 1) {
    const circle: string[] = [];
    for (let at = start[i]!; at < start[i + 1]!; at += 1) circle.push(members[variables[at]!]!);
    circles.push(circle);
  }
  return circles;
}
