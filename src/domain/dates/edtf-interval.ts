import type { DayBounds, DayRange } from './day-bounds.ts';
import { earliest, ifBoth, latest } from './day-ranges.ts';
import { assemble } from './edtf-assemble.ts';
import { type EdtfDate, readDate } from './edtf-date.ts';
import { type EdtfFault, edtfFault, isEdtfFault } from './edtf-fault.ts';
import { widenDate } from './edtf-slack.ts';
import type { SlackConvention } from './slack.ts';

/**
 * Reads `A/B`: began some day of A, ended some day of B. `..` is an open end, nothing an unknown one; both leave the
 * days of that end free. Refuses a beginning that lies wholly after the end, and `/` alone.
 */
export function readInterval(text: string, slack: SlackConvention | undefined): DayBounds | EdtfFault {
  const sides = text.split('/');
  const [first = '', second = ''] = sides;
  if (sides.length > 2) return edtfFault('one / in an interval');
  if (first === '' && second === '') return edtfFault('a date or .. on at least one side of /');
  const [from, to] = [readSide(first), readSide(second)];
  if (from !== undefined && isEdtfFault(from)) return from;
  if (to !== undefined && isEdtfFault(to)) return to;
  if (from !== undefined && to !== undefined && isReversed(from, to)) {
    return edtfFault('an interval whose beginning is not after its end');
  }
  const dates = [from, to].filter(date => date !== undefined);
  return assemble({
    ...{ kind: 'interval', dates, level: levelOf(dates), raw: { lo: from?.lo, hi: to?.hi } },
    ...spans(from, to, slack),
    ...{ loUnknown: first === '', hiUnknown: second === '' },
  });
}

function readSide(text: string): EdtfDate | EdtfFault | undefined {
  return text === '' || text === '..' ? undefined : readDate(text);
}

function isReversed(from: EdtfDate, to: EdtfDate): boolean {
  if (from.beyondCalendar || to.beyondCalendar) return from.yearLo > to.yearHi;
  return from.lo !== undefined && to.hi !== undefined && from.lo > to.hi;
}

/** The beginning is never after the end, which narrows each by the other. */
function spans(from: EdtfDate | undefined, to: EdtfDate | undefined, slack: SlackConvention | undefined) {
  const a = from === undefined ? undefined : widenDate(from, slack);
  const b = to === undefined ? undefined : widenDate(to, slack);
  const start: DayRange = { lo: a?.lo, hi: ifBoth(a?.hi, b?.hi, earliest) };
  const end: DayRange = { lo: ifBoth(b?.lo, a?.lo, latest), hi: b?.hi };
  return { hull: { lo: a?.lo, hi: b?.hi }, start, end, yearLo: a?.yearLo, yearHi: b?.yearHi };
}

/** Level 1 has open and unknown ends; X inside an interval is level 2, "Interval". */
function levelOf(dates: readonly EdtfDate[]): DayBounds['level'] {
  if (dates.some(date => date.level === 2 || date.unspecified)) return 2;
  return dates.length === 2 && dates.every(date => date.level === 0) ? 0 : 1;
}
