import type { DayRange } from '../domain/dates/day-bounds.ts';
import { type CountedDating, written } from '../domain/reach/recorded-days.ts';
import { compareText } from '../domain/text/compare.ts';
import type { AccessOf } from './edition-accesses.ts';

/** What the first and the last day of an edition do not say: all that a verdict on it rests on but its outlets. */
export interface WindowDetail {
  readonly datings: readonly DetailDating[];
  readonly accesses: readonly DetailAccess[];
}

export interface DetailDating {
  readonly days: readonly DayRange[];
  /** It rests on the imprint. */
  readonly imprint: boolean;
  /** Id of its group of alternatives. */
  readonly group?: string;
}

export type DetailAccess = Omit<AccessOf, 'claim'>;

/** A detail as one text, the same for editions of which the same is known. */
export function windowDetail(datings: readonly CountedDating[], accesses: readonly DetailAccess[]): string {
  const told = {
    datings: inOrder(
      datings.map(dating => ({
        days: written(dating).map(pairOf),
        ...(dating.basis === 'IMPRINT' ? { imprint: true } : {}),
        ...(dating.group === undefined ? {} : { group: dating.group.id }),
      })),
    ),
    accesses: inOrder(
      accesses.map(({ who, at, when }) => ({ who, ...(at === undefined ? {} : { at }), days: pairOf(when) })),
    ),
  };
  return JSON.stringify(told);
}

export function readWindowDetail(text: string): WindowDetail {
  const { datings, accesses } = JSON.parse(text) as Told;
  return {
    datings: datings.map(({ days, imprint = false, ...rest }) => ({ days: days.map(rangeOf), imprint, ...rest })),
    accesses: accesses.map(({ days, ...rest }) => ({ ...rest, when: rangeOf(days) })),
  };
}

/** First and last day; null is open. */
type Pair = readonly [number | null, number | null];

interface Told {
  readonly datings: readonly { readonly days: readonly Pair[]; readonly imprint?: true; readonly group?: string }[];
  readonly accesses: readonly { readonly who: string; readonly at?: string; readonly days: Pair }[];
}

function pairOf({ lo, hi }: DayRange): Pair {
  return [lo ?? null, hi ?? null];
}

function rangeOf([lo, hi]: Pair): DayRange {
  return { lo: lo ?? undefined, hi: hi ?? undefined };
}

/** Which claim says what does not matter. */
function inOrder<T>(each: readonly T[]): readonly T[] {
  return each.toSorted((a, b) => compareText(JSON.stringify(a), JSON.stringify(b)));
}
