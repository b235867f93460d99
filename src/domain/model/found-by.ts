import { type DatedDays, datedDays } from '../dates/dated-days.ts';
import { findable } from '../text/findable.ts';
import { isRecordKind } from './kinds.ts';
import type { AnyRecord, AnyRow } from './row.ts';

/** What a row is ordered and found by. */
export interface FoundBy {
  /** Records: sort key of the label ('' if it has none) and tokens by which it is found. Claims: absent. */
  readonly sort?: string;
  readonly tokens?: readonly string[];
  /** Datings: what they are found by; absent where they say no days. */
  readonly days?: DatedDays;
}

export function foundBy(row: AnyRow): FoundBy {
  if (isRecordKind(row.kind)) return findable(row as AnyRecord);
  const days = row.kind === 'Dating' ? datedDays(row) : undefined;
  return days === undefined ? {} : { days };
}
