import { openDay } from '../domain/reach/open-day.ts';
import { type PublishedWindow, publishedClasses } from '../domain/reach/published-window.ts';
import type { WindowColumns } from '../store/graph-store.ts';

/** Windows with the classes and days that the conventions in force give them. */
export interface DatedColumns extends WindowColumns {
  /** As the store keeps them. */
  readonly stored: WindowColumns;
}

/** @param published what a detail says, by its number and the class beside it */
export function datedColumns(
  stored: WindowColumns,
  published: (detail: number, dateClass: number) => PublishedWindow,
): DatedColumns {
  if (stored.detail.every(detail => detail === 0)) return { ...stored, stored };
  const [dateClass, first, last] = [stored.dateClass.slice(), stored.first.slice(), stored.last.slice()];
  stored.detail.forEach((detail, at) => {
    if (detail === 0) return;
    const { recorded, class: kind } = published(detail, stored.dateClass[at]!);
    dateClass[at] = publishedClasses.indexOf(kind);
    first[at] = recorded[0]?.lo ?? -openDay;
    last[at] = recorded.at(-1)?.hi ?? openDay;
  });
  return { ...stored, dateClass, first, last, stored };
}
