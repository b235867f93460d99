import { openDay } from '../domain/reach/open-day.ts';
import { publishedClasses } from '../domain/reach/published-window.ts';
import type { WindowColumns, WindowGroups, WindowKey } from '../store/graph-store.ts';

/** The window at a place of columns, by its names. */
export function windowOfColumns({ profiles, details }: WindowGroups, columns: WindowColumns, at: number): WindowKey {
  const { profile, dateClass, detail, first, last } = columns;
  return {
    profile: profiles[profile[at]!]!,
    dateClass: publishedClasses[dateClass[at]!]!,
    ...(detail[at] === 0 ? {} : { detail: details[detail[at]!]! }),
    ...(first[at] === -openDay ? {} : { first: first[at]! }),
    ...(last[at] === openDay ? {} : { last: last[at]! }),
  };
}
