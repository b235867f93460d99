import { civilFromDays } from '../../domain/dates/calendar.ts';
import type { DayRange } from '../../domain/dates/day-bounds.ts';
import type { CitableDate } from './citable.ts';
import type { CslDate } from './csl-item.ts';
import { type DateWords, dateWords, decade, year, years } from './date-words.ts';

/**
 * A date for CSL. EDTF of one date or of an interval becomes `date-parts`, with `circa` if any part is qualified and
 * `[0]` for an open end; what CSL cannot hold becomes `literal`, worded in the language. Undefined if nothing is known.
 */
export function cslDate(date: CitableDate | undefined, language = 'en'): CslDate | undefined {
  if (date === undefined) return undefined;
  const edtf = date.edtf?.trim();
  if (edtf !== undefined && edtf !== '') {
    const read = fromEdtf(edtf, language) ?? fromBounds(date.bounds, language);
    return read ?? { literal: date.asWritten ?? edtf };
  }
  return fromBounds(date.bounds, language) ?? (date.asWritten ? { literal: date.asWritten } : undefined);
}

function fromEdtf(edtf: string, language: string): CslDate | undefined {
  if (/^[[{]/.test(edtf)) return fromSet(edtf, language);
  const ends = edtf.split('/');
  if (ends.length === 2) return fromInterval(ends[0]!, ends[1]!, language);
  const single = ends.length === 1 ? plain(edtf) : undefined;
  if (single === undefined) {
    const text = worded(edtf, language);
    return text === undefined ? undefined : { literal: text };
  }
  return {
    'date-parts': [single.season === undefined ? single.parts : [single.parts[0]!]],
    ...(single.season === undefined ? {} : { season: single.season }),
    ...(single.circa ? { circa: true } : {}),
  };
}

function fromInterval(from: string, to: string, language: string): CslDate | undefined {
  const start = plain(from);
  const end = plain(to);
  if (start !== undefined && (end !== undefined || isOpen(to))) {
    const circa = start.circa || end?.circa === true;
    return { 'date-parts': [start.parts, end?.parts ?? [0]], ...(circa ? { circa: true } : {}) };
  }
  const first = isOpen(from) ? '' : worded(from, language);
  const last = isOpen(to) ? '' : worded(to, language);
  return first === undefined || last === undefined ? undefined : { literal: `${first}–${last}` };
}

/** EDTF tells an open end (`..`) from an unknown one (empty); in print both are a dash and nothing after it. */
function isOpen(end: string): boolean {
  return end === '' || end === '..';
}

function fromSet(edtf: string, language: string): CslDate | undefined {
  const words = dateWords(language);
  const close = edtf.startsWith('[') ? ']' : '}';
  if (!edtf.endsWith(close)) return undefined;
  const members = edtf
    .slice(1, -1)
    .split(',')
    .map(member => setMember(member.trim(), language, words));
  if (members.some(member => member === undefined)) return undefined;
  return { literal: close === '}' ? members.join(', ') : either(members as string[], words.or) };
}

function either(members: readonly string[], or: string): string {
  return members.length < 2 ? members.join('') : `${members.slice(0, -1).join(', ')} ${or} ${members.at(-1)}`;
}

function setMember(member: string, language: string, words: DateWords): string | undefined {
  const ends = member.split('..');
  if (ends.length === 1) return worded(member, language);
  const [from, to] = ends.map(end => (end === '' ? '' : worded(end, language)));
  if (ends.length > 2 || from === undefined || to === undefined) return undefined;
  if (from === '') return `${words.notAfter} ${to}`;
  if (to === '') return `${words.notBefore} ${from}`;
  const bothYears = /^\d{4}$/.test(from) && /^\d{4}$/.test(to);
  return bothYears ? years(Number(from), Number(to)) : `${from}–${to}`;
}

/** One date in words: unspecified digits are a decade or a range of years. */
function worded(date: string, language: string): string | undefined {
  const digits = /^(\d{2,3})(X{1,2})(?:-XX){0,2}([?~%]?)$/.exec(date.replace(/^[?~%]/, ''));
  if (digits !== null && digits[1]!.length + digits[2]!.length === 4) {
    const span = 10 ** digits[2]!.length;
    const first = Number(digits[1]) * span;
    const text = span === 10 ? decade(first, language) : years(first, first + span - 1);
    return /[?~%]/.test(date) ? `${text}?` : text;
  }
  const read = plain(date);
  if (read === undefined || read.season !== undefined) return undefined;
  const [y, ...rest] = read.parts;
  const text = [year(y! > 0 ? y! : y! + 1), ...rest.map(part => String(part).padStart(2, '0'))].join('-');
  return read.circa ? `${text}?` : text;
}

interface PlainDate {
  readonly parts: readonly number[];
  readonly season?: number;
  readonly circa: boolean;
}

/** Year, month and day with qualifiers anywhere; unspecified months and days are left out. */
function plain(date: string): PlainDate | undefined {
  const bare = date.replace(/[?~%]/g, '').replace(/T.*$/, '');
  const match = /^(-?\d{4})(?:-(\d\d|XX))?(?:-(\d\d|XX))?$/.exec(bare);
  if (match === null) return undefined;
  const astronomical = Number(match[1]);
  const parts = [astronomical > 0 ? astronomical : astronomical - 1];
  const month = Number(match[2]);
  if (month > 24) return undefined;
  if (month > 0) parts.push(month);
  if (month > 0 && Number(match[3]) > 0) parts.push(Number(match[3]));
  return { parts, circa: bare !== date.replace(/T.*$/, ''), ...(month > 20 ? { season: month - 20 } : {}) };
}

function fromBounds(bounds: DayRange | undefined, language: string): CslDate | undefined {
  const lo = bounds?.lo === undefined ? undefined : civilFromDays(bounds.lo).year;
  const hi = bounds?.hi === undefined ? undefined : civilFromDays(bounds.hi).year;
  const words = dateWords(language);
  if (lo !== undefined && hi !== undefined) {
    return lo === hi ? { 'date-parts': [[lo > 0 ? lo : lo - 1]] } : { literal: years(lo, hi) };
  }
  if (hi !== undefined) return { literal: `${words.notAfter} ${year(hi)}` };
  return lo === undefined ? undefined : { literal: `${words.notBefore} ${year(lo)}` };
}
