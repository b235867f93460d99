import type { DayRange } from '../dates/day-bounds.ts';
import { restsOnSlack } from '../dates/slacks-used.ts';
import { imprintClass, type PublishedClass } from './published-window.ts';
import { type CountedDating, recordedDays, written } from './recorded-days.ts';

/** A dating as it is written, its bounds read without a slack. */
export interface DatingAsWritten extends CountedDating {
  readonly date: string;
}

/** The days of publication of an edition, where their ends and a class say all that a verdict rests on. */
export interface PlainWindow {
  readonly class: PublishedClass;
  readonly days: DayRange;
}

/**
 * The window of an edition by its ends alone, if that is what `publishedWindow` makes of the datings by whatever slacks, and
 * however far ahead of its imprint a book may have been for sale; undefined if it is not.
 */
export function plainWindow(datings: readonly DatingAsWritten[], annual: boolean): PlainWindow | undefined {
  if (datings.some(({ date, group }) => group !== undefined || restsOnSlack(date))) return undefined;
  const [days, ...others] = recordedDays(datings);
  if (days === undefined || others.length > 0) return undefined;
  const rest = datings.filter(({ basis }) => basis !== 'IMPRINT');
  if (rest.length === datings.length) return { class: 'OTHER', days };
  if (datings.some(dating => written(dating).length > 1)) return undefined;
  const begun = recordedDays(rest)[0]?.lo;
  if (begun === days.lo) return { class: 'OTHER', days };
  return begun === undefined ? { class: imprintClass(annual), days } : undefined;
}
