import { formatDay } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { edtfBounds } from '../../../src/domain/dates/edtf.ts';
import type {
  DateChoice,
  DateContradiction,
  DateLink,
  DateReason,
  DatesNetwork,
  DayBound,
  LinkedDates,
} from '../../../src/domain/descent/dates-network.ts';

/** Words in which tests of networks are written: days as they are read, claims named by what they say. */

export function network(parts: Partial<DatesNetwork>): DatesNetwork {
  return { bounds: [], links: [], choices: [], ...parts };
}

/** `variable` is dated by an EDTF expression; the claim is named after both unless it has a name. */
export function dated(variable: string, edtf: string, claim = `${variable} ${edtf}`): DayBound {
  return { variable, days: edtfBounds(edtf).parts, rule: 'x1', by: [claim] };
}

/** `variable` lies on days given as numbers. */
export function onDays(variable: string, days: readonly DayRange[], claim: string): DayBound {
  return { variable, days, rule: 'x1', by: [claim] };
}

/** At least and at most so many days; the claim is named `from>to` unless it has a name. */
export function link(from: string, to: string, least?: number, most?: number, claim = `${from}>${to}`): DateLink {
  return { from, to, least, most, rule: 'x20', by: [claim] };
}

/** A group of alternatives: of each claim what it says. */
export function oneOf(group: string, options: Record<string, Partial<DatesNetwork>>, open = false): DateChoice {
  const made = Object.entries(options).map(([claim, { bounds = [], links = [] }]) => ({ claim, bounds, links }));
  return { group, open, options: made };
}

/** `1764-01-01..1764-12-31`, open ends empty. */
export function inDays({ lo, hi }: DayRange): string {
  return `${lo === undefined ? '' : formatDay(lo)}..${hi === undefined ? '' : formatDay(hi)}`;
}

/** The days left of every variable. */
export function daysLeft(dates: LinkedDates): Record<string, string> {
  return Object.fromEntries(dates.variables.toSorted().map(name => [name, inDays(dates.days(name).linked)]));
}

/** Each contradiction as the claims that cannot all be right and the days short. */
export function told(
  contradictions: readonly DateContradiction[],
): readonly (readonly [string, readonly string[], number])[] {
  return contradictions.map(({ code, involved, daysShort }) => [code, involved, daysShort]);
}

/** Reasons on a line each. */
export function inLines(reasons: readonly DateReason[], indent = ''): readonly string[] {
  return reasons.flatMap(reason => {
    if (reason.kind === 'CHOICE') {
      const options = reason.options.flatMap(each => [
        `${indent}- ${each.claim}`,
        ...inLines(each.reasons, `${indent}  `),
      ]);
      return [`${indent}whichever of ${reason.group ?? 'these'}`, ...options];
    }
    const by = `(${reason.by.join(', ')})`;
    if (reason.kind === 'LINK') {
      return [
        `${indent}${reason.from} to ${reason.to} ${reason.end === 'LEAST' ? 'at least' : 'at most'} ${reason.days} ${by}`,
      ];
    }
    return [
      `${indent}${reason.variable} not ${reason.end === 'FIRST' ? 'before' : 'after'} ${formatDay(reason.day)} ${by}`,
    ];
  });
}
