import type { DayRange } from '../domain/dates/day-bounds.ts';
import { edtfBounds } from '../domain/dates/edtf.ts';
import type { SlackConvention } from '../domain/dates/slack.ts';
import { restsOnSlack } from '../domain/dates/slacks-used.ts';
import type { DatingAsWritten } from '../domain/reach/plain-window.ts';
import { type CountedDating, written } from '../domain/reach/recorded-days.ts';
import { compareText } from '../domain/text/compare.ts';
import type { AccessOf } from './edition-accesses.ts';

/**
 * What the first and the last day of an edition do not say: all that a verdict on it rests on but its outlets. A date stands
 * in the place of its days where they rest on slacks, so that it says the same whichever are in force.
 */
export interface WindowDetail {
  readonly datings: readonly DetailDating[];
  readonly accesses: readonly DetailAccess[];
}

export interface DetailDating {
  readonly days: readonly DayRange[] | string;
  /** It rests on the imprint. */
  readonly imprint: boolean;
  /** Id of its group of alternatives. */
  readonly group?: string;
}

export interface DetailAccess extends Pick<AccessOf, 'who' | 'at'> {
  readonly when: DayRange | string;
}

/** A detail as one text, the same for editions of which the same is known. */
export function windowDetail(
  datings: readonly DatingAsWritten[],
  accesses: readonly Omit<AccessOf, 'claim'>[],
): string {
  const told: Told = {
    datings: inOrder(
      datings.map(dating => ({
        ...(restsOnSlack(dating.date) ? { date: dating.date } : { days: written(dating).map(pairOf) }),
        ...(dating.basis === 'IMPRINT' ? { imprint: true } : {}),
        ...(dating.group === undefined ? {} : { group: dating.group.id }),
      })),
    ),
    accesses: inOrder(
      accesses.map(({ who, at, when, date }) => ({
        who,
        ...(at === undefined ? {} : { at }),
        ...(date !== undefined && restsOnSlack(date) ? { date } : { days: pairOf(when) }),
      })),
    ),
  };
  return JSON.stringify(told);
}

export function readWindowDetail(text: string): WindowDetail {
  const { datings, accesses } = JSON.parse(text) as Told;
  return {
    datings: datings.map(({ days = [], date, imprint = false, ...rest }) => ({
      days: date ?? days.map(rangeOf),
      imprint,
      ...rest,
    })),
    accesses: accesses.map(({ days = [null, null], date, ...rest }) => ({ when: date ?? rangeOf(days), ...rest })),
  };
}

/** The datings of a detail by some slacks. @param openGroups ids of groups of alternatives that are open */
export function detailDatings(
  { datings }: WindowDetail,
  slack: SlackConvention,
  openGroups: ReadonlySet<string>,
): readonly CountedDating[] {
  return datings.map(({ days, imprint, group }) => ({
    bounds:
      typeof days === 'string'
        ? edtfBounds(days, slack)
        : { parts: days, approximate: false, uncertain: false, beyondCalendar: false },
    ...(imprint ? { basis: 'IMPRINT' } : {}),
    ...(group === undefined ? {} : { group: { id: group, open: openGroups.has(group) } }),
  }));
}

/** The accesses of a detail by some slacks. */
export function detailAccesses({ accesses }: WindowDetail, slack: SlackConvention): readonly Omit<AccessOf, 'claim'>[] {
  return accesses.map(({ when, ...rest }) => ({
    ...rest,
    when: typeof when === 'string' ? hullBy(when, slack) : when,
  }));
}

function hullBy(date: string, slack: SlackConvention): DayRange {
  const { lo, hi } = edtfBounds(date, slack);
  return { lo, hi };
}

/** First and last day; null is open. */
type Pair = readonly [number | null, number | null];

interface Told {
  readonly datings: readonly {
    readonly days?: readonly Pair[];
    readonly date?: string;
    readonly imprint?: boolean;
    readonly group?: string;
  }[];
  readonly accesses: readonly {
    readonly who: string;
    readonly at?: string;
    readonly days?: Pair;
    readonly date?: string;
  }[];
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
