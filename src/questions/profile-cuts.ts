import type { EditionCuts, OutletCuts, OutletLimits } from '../domain/reach/edition-cuts.ts';
import type { EraSpan } from '../domain/reach/era-grid.ts';
import { usableOutlets } from '../domain/reach/outlet-lag.ts';
import type { Outlet } from '../domain/reach/reach-edition-input.ts';
import type { WindowGroups } from '../store/graph-store.ts';
import { profileOutlets } from './profile-outlets.ts';
import type { WindowKeys } from './window-keys.ts';
import type { WindowPlaces } from './window-places.ts';

/** Cut days of keys of windows, for one question. */
export interface ProfileCuts {
  /** Puts the cut days of a key into `every` and `some`, at its number. */
  put(key: number, every: Float64Array, some: Float64Array): void;
  /** What the outlets of the profile ask one by one. */
  limits(key: number): readonly OutletLimits[];
}

/** Each outlet is worked once in each span. */
export function profileCuts(
  groups: WindowGroups,
  { places }: WindowPlaces,
  cuts: EditionCuts,
  { profiles, spanOf, spans }: WindowKeys,
): ProfileCuts {
  const { outlets, ofProfile } = profileOutlets(groups);
  const located: readonly Outlet[] = [
    ...outlets.map(({ kind, place }) => ({ kind, place: places.get(place) })),
    ...usableOutlets([]),
  ];
  const unknown = [outlets.length];
  const outletsOf = (profile: number): readonly number[] =>
    ofProfile[profile]!.length === 0 ? unknown : ofProfile[profile]!;
  const put = cuts.reckonings.length === 1 ? putBest(located, spans, cuts) : putJoined(located, spans, cuts);
  return {
    put: (key, every, some) => put(key, outletsOf(profiles[key]!), spanOf[key]!, every, some),
    limits: key => outletsOf(profiles[key]!).map(outlet => cuts.limitsOf(located[outlet]!)(spans[spanOf[key]!]!)),
  };
}

type Put = (key: number, outlets: readonly number[], span: number, every: Float64Array, some: Float64Array) => void;

function putJoined(located: readonly Outlet[], spans: readonly EraSpan[], cuts: EditionCuts): Put {
  const ofOutlet = located.map(cuts.ofOutlet);
  const known: OutletCuts[][] = located.map(() => []);
  return (key, outlets, span, every, some) => {
    const each = outlets.map(outlet => (known[outlet]![span] ??= ofOutlet[outlet]!(spans[span]!)));
    const cut = cuts.joined(each);
    every[key] = cut.every;
    some[key] = cut.some;
  };
}

/** The same where there is one reckoning, from numbers alone: there are tens of thousands of keys. */
function putBest(located: readonly Outlet[], spans: readonly EraSpan[], cuts: EditionCuts): Put {
  const ofOutlet = located.map(cuts.ofOutlet);
  const width = spans.length;
  const everyOf = new Float64Array(located.length * width).fill(Number.NaN);
  const someOf = new Float64Array(located.length * width);
  const work = (outlet: number, span: number): void => {
    const [cut] = ofOutlet[outlet]!(spans[span]!);
    everyOf[outlet * width + span] = cut!.every;
    someOf[outlet * width + span] = cut!.some;
  };
  return (key, outlets, span, every, some) => {
    let bestEvery = Number.NEGATIVE_INFINITY;
    let bestSome = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < outlets.length; i++) {
      const at = outlets[i]! * width + span;
      if (Number.isNaN(everyOf[at])) work(outlets[i]!, span);
      if (everyOf[at]! > bestEvery) bestEvery = everyOf[at]!;
      if (someOf[at]! > bestSome) bestSome = someOf[at]!;
    }
    every[key] = bestEvery;
    some[key] = bestSome;
  };
}
