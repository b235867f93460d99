import type { Conventions } from '../domain/conventions/conventions.ts';
import { editionVerdicts } from '../domain/reach/edition-verdicts.ts';
import { regularWindow } from '../domain/reach/published-window.ts';
import type { Outlet, ReachEdition } from '../domain/reach/reach-edition-input.ts';
import type { EditionFilter, GraphStore, WindowKey } from '../store/graph-store.ts';
import type { Breath } from './breath.ts';
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
const stretch = 250;

export async function judgeWindows(
  store: GraphStore,
  { target, asked }: TargetFound,
  filter: EditionFilter,
  conventions: Conventions,
  breath: Breath,
  signal?: AbortSignal,
): Promise<JudgedWindows> {
  const found = await store.windowGroups(filter, signal);
  const verdictOn = editionVerdicts(target, conventions);
  const outletsOf = await outletsOfProfiles(store, new Set(found.groups.map(group => group.profile)));
  const groups: JudgedWindows['groups'][number][] = [];
  for (const window of found.groups) {
    if (breath.isDue()) await breath.take();
    const outcome = verdictOn(editionOfWindow(window, outletsOf(window.profile), conventions));
    groups.push({ window, outcome, count: window.count });
  }
  const irregular = found.irregular === 0 ? [] : await store.irregularEditions(filter, signal);
  const single: JudgedWindows['single'][number][] = [];
  for (let from = 0; from < irregular.length; from += stretch) {
    await breath.take();
    const ids = irregular.slice(from, from + stretch);
    const [inputs, windows] = await Promise.all([reachInputs(store, ids, asked, conventions), store.windowsOf(ids)]);
    ids.forEach((edition, i) => {
      const window = windows[i];
      const input = inputs[i];
      if (window === undefined || input === undefined) return;
      single.push({ edition, window, outcome: verdictOn(input.edition) });
    });
  }
  return { groups, single };
}

async function outletsOfProfiles(
  store: GraphStore,
  profiles: ReadonlySet<string>,
): Promise<(profile: string) => readonly Outlet[]> {
  const named = [...profiles].map(profile => ({ profile, outlets: outletsOfProfile(profile) }));
  const places = await locatedPlaces(
    store,
    named.flatMap(({ outlets }) => outlets.map(outlet => outlet.place)),
  );
  const known = new Map(
    named.map(({ profile, outlets }) => [
      profile,
      outlets.map(({ kind, place }) => ({ kind, place: places.get(place) })),
    ]),
  );
  return profile => known.get(profile) ?? [];
}

function editionOfWindow(window: WindowKey, outlets: readonly Outlet[], conventions: Conventions): ReachEdition {
  const { first: lo, last: hi, dateClass } = window;
  return { published: regularWindow({ lo, hi }, dateClass, conventions), outlets };
}
