import type { DayBounds, DayRange } from '../dates/day-bounds.ts';
import { commonRanges, mergeRanges } from '../dates/day-ranges.ts';
import type { AnswerFlag } from './answer-flag.ts';

/** A dating of one event, of those that count. */
export interface CountedDating {
  readonly bounds: Pick<DayBounds, 'parts' | 'approximate' | 'uncertain' | 'beyondCalendar'>;
  /** What it rests on, by SDL name. */
  readonly basis?: string | undefined;
  readonly supplied?: boolean | undefined;
  /** Its group of alternatives; open: or a source not recorded. */
  readonly group?: { readonly id: string; readonly open: boolean } | undefined;
}

/**
 * The days on which all datings hold: intersected, where of a group exactly one member holds, and an open group of which
 * a member counts bounds nothing. `[{}]` for no dating; empty where they have no day in common. A dating beyond the
 * calendar bounds nothing.
 */
export function recordedDays(
  datings: readonly CountedDating[],
  daysOf: (dating: CountedDating) => readonly DayRange[] = written,
): readonly DayRange[] {
  let days: readonly DayRange[] = [{}];
  for (const members of alternatives(datings)) {
    const open = members.some(({ group }) => group?.open === true);
    days = open ? days : commonRanges(days, mergeRanges(members.flatMap(daysOf)));
  }
  return days;
}

/** The days of a dating as written. */
export function written({ bounds }: CountedDating): readonly DayRange[] {
  return bounds.beyondCalendar ? [{}] : bounds.parts;
}

/** Remarks that an answer resting on these datings carries. */
export function flagsOf(datings: readonly CountedDating[]): readonly AnswerFlag[] {
  const flags = new Set<AnswerFlag>();
  for (const { bounds, supplied } of datings) {
    if (bounds.approximate) flags.add('CIRCA');
    if (bounds.uncertain) flags.add('UNCERTAIN');
    if (bounds.beyondCalendar) flags.add('BEYOND_CALENDAR');
    if (supplied === true) flags.add('SUPPLIED');
  }
  return [...flags];
}

/** Datings of one group together, any other by itself. */
function alternatives(datings: readonly CountedDating[]): readonly (readonly CountedDating[])[] {
  if (datings.every(({ group }) => group === undefined)) return datings.map(dating => [dating]);
  const groups = Map.groupBy(
    datings.map((dating, at) => ({ dating, name: dating.group?.id ?? at })),
    ({ name }) => name,
  );
  return [...groups.values()].map(members => members.map(({ dating }) => dating));
}
