import type { DateLink, DatesNetwork, DayBound } from './dates-network.ts';

export type ConstraintsById = ReadonlyMap<string, readonly (DayBound | DateLink)[]>;

const known = new WeakMap<DatesNetwork, ConstraintsById>();

/** Bounds and links of a network outside choices by the ids that they rest on; made once a network. */
export function constraintsById(network: DatesNetwork): ConstraintsById {
  const before = known.get(network);
  if (before !== undefined) return before;
  const found = new Map<string, (DayBound | DateLink)[]>();
  for (const constraint of [...network.bounds, ...network.links]) {
    for (const id of constraint.by) {
      const list = found.get(id);
      if (list === undefined) found.set(id, [constraint]);
      else list.push(constraint);
    }
  }
  known.set(network, found);
  return found;
}
