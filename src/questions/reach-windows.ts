import type { Conventions } from '../domain/conventions/conventions.ts';
import type { LocatedPlace } from '../domain/conventions/located-place.ts';
import { regularWindow } from '../domain/reach/published-window.ts';
import type { ReachEdition } from '../domain/reach/reach-edition-input.ts';
import { verdictOfEdition } from '../domain/reach/verdict-of-edition.ts';
import type { EditionFilter, GraphStore, WindowKey } from '../store/graph-store.ts';
import { outletsOfProfile } from './edition-outlets.ts';
import { locatedPlaces } from './located-places.ts';
import type { VerdictAndMargin } from './questions.ts';
import { reachInputs } from './reach-inputs.ts';
import type { TargetFound } from './reach-target.ts';

/** Editions with their verdicts: those that share a window together, the others one by one. */
export interface JudgedWindows {
  readonly groups: readonly {
    readonly window: WindowKey;
    readonly outcome: VerdictAndMargin;
    readonly count: number;
  }[];
  readonly single: readonly {
    readonly edition: string;
    readonly window: WindowKey;
    readonly outcome: VerdictAndMargin;
  }[];
}

/** Editions worked one by one are asked for in stretches of this length. */
const stretch = 500;

export async function judgeWindows(
  store: GraphStore,
  { target, asked }: TargetFound,
  filter: EditionFilter,
  conventions: Conventions,
): Promise<JudgedWindows> {
  const found = await store.windowGroups(filter);
  const placeIds = new Set(
    found.groups.flatMap(({ profile }) => outletsOfProfile(profile).map(outlet => outlet.place)),
  );
  const places = await locatedPlaces(store, placeIds);
  const groups = found.groups.map(({ count, ...window }) => ({
    window,
    outcome: verdictOfEdition(editionOfWindow(window, places, conventions), target, conventions),
    count,
  }));
  const irregular = found.irregular === 0 ? [] : await store.irregularEditions(filter);
  const single: JudgedWindows['single'][number][] = [];
  for (let from = 0; from < irregular.length; from += stretch) {
    const ids = irregular.slice(from, from + stretch);
    const [inputs, windows] = await Promise.all([reachInputs(store, ids, asked, conventions), store.windowsOf(ids)]);
    ids.forEach((edition, i) => {
      const window = windows[i];
      const input = inputs[i];
      if (window === undefined || input === undefined) return;
      single.push({ edition, window, outcome: verdictOfEdition(input.edition, target, conventions) });
    });
  }
  return { groups, single };
}

function editionOfWindow(
  window: WindowKey,
  places: ReadonlyMap<string, LocatedPlace>,
  conventions: Conventions,
): ReachEdition {
  return {
    published: regularWindow({ lo: window.first, hi: window.last }, window.dateClass, conventions),
    outlets: outletsOfProfile(window.profile).map(({ kind, place }) => ({ kind, place: places.get(place) })),
  };
}
