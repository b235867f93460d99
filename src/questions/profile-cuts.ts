import type { EditionCuts, OutletCuts, OutletLimits } from '../domain/reach/edition-cuts.ts';
import { usableOutlets } from '../domain/reach/outlet-lag.ts';
import type { Outlet } from '../domain/reach/reach-edition-input.ts';
import type { WindowGroups } from '../store/graph-store.ts';
import { profileOutlets } from './profile-outlets.ts';
import type { ProfileSpan } from './window-keys.ts';
import type { WindowPlaces } from './window-places.ts';

/** Cut days of profiles in spans of eras, for one question. */
export interface ProfileCuts {
  /** Puts the cut days of a key, by its number, into `every` and `some`. */
  put(key: ProfileSpan, number: number, every: Float64Array, some: Float64Array): void;
  /** What the outlets of the profile ask one by one. */
  limits(key: ProfileSpan): readonly OutletLimits[];
}

/** Each outlet is worked once in each span. */
export function profileCuts(
  groups: WindowGroups,
  { places }: WindowPlaces,
  cuts: EditionCuts,
  eras: number,
): ProfileCuts {
  const { outlets, ofProfile } = profileOutlets(groups);
  const located: readonly Outlet[] = [
    ...outlets.map(({ kind, place }) => ({ kind, place: places.get(place) })),
    ...usableOutlets([]),
  ];
  const unknown = [outlets.length];
  const numbersOf = ({ profile }: ProfileSpan): readonly number[] =>
    ofProfile[profile]!.length === 0 ? unknown : ofProfile[profile]!;
  const ofOutlet = located.map(cuts.ofOutlet);
  const known: OutletCuts[][] = located.map(() => []);
  const limitsOf = located.map(outlet => remembered(outlet, cuts));
  const cutsOf = (number: number, { first, last }: ProfileSpan): OutletCuts =>
    (known[number]![first * eras + last] ??= ofOutlet[number]!({ first, last }));
  const isOne = cuts.reckonings.length === 1;
  return {
    put: (key, number, every, some) => {
      const outlets = numbersOf(key);
      if (!isOne) {
        const cut = cuts.joined(outlets.map(outlet => cutsOf(outlet, key)));
        every[number] = cut.every;
        some[number] = cut.some;
        return;
      }
      // The same for one reckoning, without making anything: there are tens of thousands of keys.
      every[number] = some[number] = Number.NEGATIVE_INFINITY;
      for (let i = 0; i < outlets.length; i++) {
        const cut = cutsOf(outlets[i]!, key)[0]!;
        if (cut.every > every[number]!) every[number] = cut.every;
        if (cut.some > some[number]!) some[number] = cut.some;
      }
    },
    limits: key => numbersOf(key).map(number => limitsOf[number]!(key)),
  };
}

/** Seldom asked for, and then for few outlets. */
function remembered(outlet: Outlet, cuts: EditionCuts): (span: ProfileSpan) => OutletLimits {
  const known = new Map<string, OutletLimits>();
  let limits: ReturnType<EditionCuts['limitsOf']> | undefined;
  return ({ first, last }) => {
    limits ??= cuts.limitsOf(outlet);
    const name = `${first} ${last}`;
    const found = known.get(name) ?? limits({ first, last });
    known.set(name, found);
    return found;
  };
}
