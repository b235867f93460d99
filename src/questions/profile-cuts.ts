import type { CutDays, EditionCuts, OutletCuts } from '../domain/reach/edition-cuts.ts';
import { usableOutlets } from '../domain/reach/outlet-lag.ts';
import type { WindowGroups } from '../store/graph-store.ts';
import { profileOutlets } from './profile-outlets.ts';
import type { ProfileSpan } from './window-keys.ts';
import type { WindowPlaces } from './window-places.ts';

/** Cut days of profiles in spans of eras, for one question. */
export interface ProfileCuts {
  of(key: ProfileSpan): CutDays;
  /** What the outlets of the profile give one by one. */
  outlets(key: ProfileSpan): readonly OutletCuts[];
}

/** Each outlet is worked once in each span. */
export function profileCuts(
  groups: WindowGroups,
  { places }: WindowPlaces,
  cuts: EditionCuts,
  eras: number,
): ProfileCuts {
  const { outlets, ofProfile } = profileOutlets(groups);
  const [unknown] = usableOutlets([]).map(cuts.ofOutlet) as [ReturnType<EditionCuts['ofOutlet']>];
  const located = outlets.map(({ kind, place }) => cuts.ofOutlet({ kind, place: places.get(place) }));
  const known: OutletCuts[][] = [...outlets.map(() => []), []];
  const outletCuts = (outlet: number, { first, last }: ProfileSpan): OutletCuts =>
    (known[outlet]![first * eras + last] ??= (located[outlet] ?? unknown)({ first, last }));
  const ofKey = (key: ProfileSpan): readonly OutletCuts[] => {
    const numbers = ofProfile[key.profile]!;
    return numbers.length === 0 ? [outletCuts(located.length, key)] : numbers.map(number => outletCuts(number, key));
  };
  return { of: key => cuts.joined(ofKey(key)), outlets: ofKey };
}
