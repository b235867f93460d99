import type { DayBounds, DayRange } from './day-bounds.ts';
import { earliest, hullOf, ifBoth, latest, mergeRanges } from './day-ranges.ts';
import { assemble } from './edtf-assemble.ts';
import { type EdtfDate, type EdtfSpan, readDate } from './edtf-date.ts';
import { mostParts } from './edtf-digits.ts';
import { type EdtfFault, edtfFault, isEdtfFault } from './edtf-fault.ts';
import { widenDate } from './edtf-slack.ts';
import { earlierBy, laterBy, type SlackConvention } from './slack.ts';

/** More members than this are refused. */
const mostMembers = 64;

/** A member `A`, or a range `A..B` in which one end of the set may be open. */
interface Member {
  readonly from: EdtfDate | undefined;
  readonly to: EdtfDate | undefined;
}

/**
 * Reads `[...]` (one of the members) and `{...}` (all of them): level 2, "Set representation". A `..` between two
 * dates of one precision stands for all between them; at the beginning or end of the set it leaves that side open.
 */
export function readSet(text: string, slack: SlackConvention | undefined): DayBounds | EdtfFault {
  const close = text.startsWith('[') ? ']' : '}';
  if (!text.endsWith(close)) return edtfFault(`${close} at the end of a set that begins with ${text.slice(0, 1)}`);
  const texts = text.slice(1, -1).split(',');
  if (texts.length > mostMembers) return edtfFault(`a set of at most ${mostMembers} members`);
  const members: Member[] = [];
  for (const [index, each] of texts.entries()) {
    const member = readMember(each, index === 0, index === texts.length - 1);
    if (isEdtfFault(member)) return member;
    members.push(member);
  }
  return close === ']' ? oneOf(members, slack) : allOf(members, slack);
}

function readMember(text: string, first: boolean, last: boolean): Member | EdtfFault {
  const cut = text.indexOf('..');
  if (cut < 0) {
    const date = readDate(text);
    return isEdtfFault(date) ? date : { from: date, to: date };
  }
  const [left, right] = [text.slice(0, cut), text.slice(cut + 2)];
  if (left === '' && !(first && right !== '')) return edtfFault('.. before a date only at the beginning of a set');
  if (right === '' && !last) return edtfFault('.. after a date only at the end of a set');
  const from = left === '' ? undefined : readDate(left);
  const to = right === '' ? undefined : readDate(right);
  if (from !== undefined && isEdtfFault(from)) return from;
  if (to !== undefined && isEdtfFault(to)) return to;
  return faultOfRange(from, to) ?? { from, to };
}

function faultOfRange(from: EdtfDate | undefined, to: EdtfDate | undefined): EdtfFault | undefined {
  if (from === undefined || to === undefined) return undefined;
  if (from.precision !== to.precision) return edtfFault('dates of one precision on both sides of ..');
  const reversed =
    from.beyondCalendar || to.beyondCalendar
      ? from.yearLo > to.yearLo || from.yearHi > to.yearHi
      : from.lo! > to.lo! || from.hi! > to.hi!;
  return reversed ? edtfFault('the earlier date before .. and the later after it') : undefined;
}

function oneOf(members: readonly Member[], slack: SlackConvention | undefined): DayBounds {
  const wide = members.map(member => widenMember(member, slack));
  const all = mergeRanges(wide.flatMap(member => closeOpenSide(member, slack)));
  const hull = hullOf(all);
  const parts = all.length > mostParts ? [hull] : all;
  const convex = all.length === 1 && wide.every(isWhole);
  return assemble({ kind: 'oneOf', ...shared(members, wide), hull, parts, convex });
}

/** The convention may close what the set leaves open; without it the side stays open. */
function closeOpenSide(member: WideMember, slack: SlackConvention | undefined): readonly DayRange[] {
  if (member.from !== undefined && member.to !== undefined) return member.parts;
  const bound = slack?.openSetBound;
  if (bound === undefined) return member.parts;
  const amount = { months: 12 * bound, days: 0 };
  const [lo, hi] = [member.from?.lo, member.to?.hi];
  if (lo === undefined) return [{ lo: hi === undefined ? undefined : earlierBy(member.to?.lo ?? hi, amount), hi }];
  return [{ lo, hi: laterBy(member.from?.hi ?? lo, amount) }];
}

function allOf(members: readonly Member[], slack: SlackConvention | undefined): DayBounds {
  const wide = members.map(member => widenMember(member, slack));
  const all = mergeRanges(wide.flatMap(member => member.parts));
  const begun = wide.map(({ from, to }) => ifBoth(from?.hi, to?.hi, earliest));
  const ended = wide.map(({ from, to }) => ifBoth(to?.lo, from?.lo, latest));
  const hull = hullOf(all);
  return assemble({
    ...{ kind: 'allOf', ...shared(members, wide), hull },
    ...{ parts: all.length > mostParts ? [hull] : all, convex: all.length === 1 && wide.every(isWhole) },
    start: { lo: hull.lo, hi: begun.reduce(earliest) },
    end: { lo: ended.reduce(latest), hi: hull.hi },
  });
}

interface WideMember {
  readonly from: EdtfSpan | undefined;
  readonly to: EdtfSpan | undefined;
  readonly parts: readonly DayRange[];
}

function widenMember({ from, to }: Member, slack: SlackConvention | undefined): WideMember {
  const wideFrom = from === undefined ? undefined : widenDate(from, slack);
  const wideTo = to === from ? wideFrom : to === undefined ? undefined : widenDate(to, slack);
  const single = wideFrom !== undefined && wideFrom === wideTo;
  return { from: wideFrom, to: wideTo, parts: single ? wideFrom.parts : [{ lo: wideFrom?.lo, hi: wideTo?.hi }] };
}

/** False for a date given as the hull of too many parts. */
function isWhole(member: WideMember): boolean {
  return member.from !== member.to || member.parts.length > 1 || member.from?.convex !== false;
}

function shared(members: readonly Member[], wide: readonly WideMember[]) {
  const dates = members.flatMap(({ from, to }) =>
    [from, to === from ? undefined : to].filter(each => each !== undefined),
  );
  const raw = {
    lo: members.map(member => member.from?.lo).reduce(earliest),
    hi: members.map(member => member.to?.hi).reduce(latest),
  };
  const yearLo = wide.map(member => member.from?.yearLo).reduce(earliest);
  const yearHi = wide.map(member => member.to?.yearHi).reduce(latest);
  return { dates, raw, yearLo, yearHi, level: 2 as const };
}
