import { openDay } from '../../domain/reach/open-day.ts';
import { publishedClasses } from '../../domain/reach/published-window.ts';
import { compareText } from '../../domain/text/compare.ts';
import { findable } from '../../domain/text/findable.ts';
import type {
  EditionWindow,
  EditionWithWindow,
  ListPosition,
  WindowColumns,
  WindowGroups,
  WindowKey,
} from '../../store/graph-store.ts';
import type { EditionSeen } from './editions-seen.ts';

/** An edition with its window, without what they were worked from. */
export type WindowSeen = Pick<EditionSeen, 'edition' | 'window'>;

/** Equal for equal windows alone. */
function windowName({ profile, dateClass, detail = '', first, last }: WindowKey): string {
  return `${profile}\n${dateClass}\n${detail}\n${first ?? ''}\n${last ?? ''}`;
}

/** Windows as a store counts them: those of each list as columns of their own, each counted so many times. */
export function groupsOfWindows(
  lists: readonly { readonly windows: readonly EditionWindow[]; readonly times: 1 | -1 }[],
  changeSet: number,
): WindowGroups {
  const [profiles, details] = [new Names([]), new Names([''])];
  const columns = lists.map(({ windows, times }) => columnsOf(windows, times, profiles, details));
  return { changeSet, profiles: profiles.names, details: details.names, columns };
}

function columnsOf(windows: readonly EditionWindow[], times: 1 | -1, profiles: Names, details: Names): WindowColumns {
  const counts = new Map<string, { readonly window: EditionWindow; count: number }>();
  for (const window of windows) {
    const name = windowName(window);
    const known = counts.get(name);
    if (known === undefined) counts.set(name, { window, count: times });
    else known.count += times;
  }
  const each = [...counts.values()];
  const column = (number: (window: EditionWindow) => number) => Int32Array.from(each, ({ window }) => number(window));
  return {
    profile: column(({ profile }) => profiles.number(profile)),
    dateClass: column(({ dateClass }) => publishedClasses.indexOf(dateClass)),
    detail: column(({ detail }) => details.number(detail ?? '')),
    first: column(({ first }) => first ?? -openDay),
    last: column(({ last }) => last ?? openDay),
    count: Int32Array.from(each, ({ count }) => count),
  };
}

/** Names by number. */
class Names {
  readonly names: string[];
  readonly #numbers: Map<string, number>;

  constructor(names: string[]) {
    this.names = names;
    this.#numbers = new Map(names.map((name, i) => [name, i]));
  }

  number(name: string): number {
    const known = this.#numbers.get(name) ?? this.names.push(name) - 1;
    this.#numbers.set(name, known);
    return known;
  }
}

/** For each bucket of windows the ids of the editions that have one of them, in the first from after an id. */
export function idsInWindows(
  editions: readonly WindowSeen[],
  buckets: readonly (readonly WindowKey[])[],
  after: string | undefined,
): readonly (readonly string[])[] {
  const byWindow = Map.groupBy(editions, ({ window }) => windowName(window));
  return buckets.map((bucket, at) => {
    const names = [...new Set(bucket.map(windowName))];
    return names
      .flatMap(name => (byWindow.get(name) ?? []).map(({ edition }) => edition.id))
      .filter(id => at > 0 || after === undefined || compareText(id, after) > 0);
  });
}

/** The first of each bucket by id, at most so many in all. */
export function firstOfBuckets(buckets: readonly (readonly string[])[], limit: number): readonly (readonly string[])[] {
  let room = limit;
  return buckets.map(ids => {
    const taken = ids.toSorted(compareText).slice(0, room);
    room -= taken.length;
    return taken;
  });
}

/** Editions in the order of their titles, as a store lists them. */
export function byTitle(editions: readonly WindowSeen[]): readonly EditionWithWindow[] {
  return editions
    .map(({ edition, window }) => ({ sort: findable(edition).sort, id: edition.id, window }))
    .sort(bySortAndId);
}

export function bySortAndId(a: ListPosition, b: ListPosition): number {
  return compareText(a.sort, b.sort) || compareText(a.id, b.id);
}
