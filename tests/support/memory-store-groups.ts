import { openDay } from '../../src/domain/reach/open-day.ts';
import { publishedClasses } from '../../src/domain/reach/published-window.ts';
import type { EditionWindow, WindowColumns, WindowGroups, WindowKey } from '../../src/store/graph-store.ts';

/** Windows as columns, each edition counted by itself. */
export function groupsOf(windows: readonly EditionWindow[], changeSet: number): WindowGroups {
  const profiles = [...new Set(windows.map(({ profile }) => profile))];
  const details = ['', ...new Set(windows.flatMap(({ detail }) => detail ?? []))];
  const column = (number: (window: EditionWindow) => number) => Int32Array.from(windows, number);
  const columns: WindowColumns = {
    profile: column(({ profile }) => profiles.indexOf(profile)),
    dateClass: column(({ dateClass }) => publishedClasses.indexOf(dateClass)),
    detail: column(({ detail }) => details.indexOf(detail ?? '')),
    first: column(({ first }) => first ?? -openDay),
    last: column(({ last }) => last ?? openDay),
    count: column(() => 1),
  };
  return { changeSet, profiles, details, columns: [columns] };
}

/** The other way: each window that some have once, by its text, with how many have it. */
export function windowsOfGroups({
  profiles,
  details,
  columns,
}: WindowGroups): readonly (readonly [WindowKey, number])[] {
  const counts = new Map<string, number>();
  for (const { profile, dateClass, detail, first, last, count } of columns) {
    count.forEach((editions, at) => {
      const window: WindowKey = {
        profile: profiles[profile[at]!]!,
        dateClass: publishedClasses[dateClass[at]!]!,
        ...(detail[at] === 0 ? {} : { detail: details[detail[at]!]! }),
        ...(first[at] === -openDay ? {} : { first: first[at]! }),
        ...(last[at] === openDay ? {} : { last: last[at]! }),
      };
      const name = JSON.stringify(window);
      counts.set(name, (counts.get(name) ?? 0) + editions);
    });
  }
  return [...counts]
    .filter(([, editions]) => editions !== 0)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, editions]) => [JSON.parse(name) as WindowKey, editions]);
}
