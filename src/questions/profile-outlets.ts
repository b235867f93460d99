import type { WindowGroups } from '../store/graph-store.ts';
import { type OutletOf, outletsOfProfile } from './edition-outlets.ts';

/** The outlets of profiles, both by number. */
export interface ProfileOutlets {
  readonly outlets: readonly OutletOf[];
  readonly ofProfile: readonly (readonly number[])[];
}

/** Read once for each store, and for each profile that it gets later. */
export function profileOutlets({ profiles }: Pick<WindowGroups, 'profiles'>): ProfileOutlets {
  const known = read.get(profiles) ?? { outlets: [], ofProfile: [], numbers: new Map<string, number>() };
  read.set(profiles, known);
  for (let profile = known.ofProfile.length; profile < profiles.length; profile++) {
    known.ofProfile.push(outletsOfProfile(profiles[profile]!).map(outlet => numberOf(outlet, known)));
  }
  return known;
}

interface Read extends ProfileOutlets {
  readonly outlets: OutletOf[];
  readonly ofProfile: (readonly number[])[];
  readonly numbers: Map<string, number>;
}

const read = new WeakMap<readonly string[], Read>();

function numberOf(outlet: OutletOf, { outlets, numbers }: Read): number {
  const name = `${outlet.kind} ${outlet.place}`;
  const known = numbers.get(name) ?? outlets.push(outlet) - 1;
  numbers.set(name, known);
  return known;
}
