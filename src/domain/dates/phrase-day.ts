import { turnedDays } from './phrase-julian.ts';
import { romanYear } from './phrase-roman.ts';
import { exact, type SingleDate, within } from './phrase-single-date.ts';
import { monthOfWord, seasonOfWord } from './phrase-words.ts';

const rule = 'phrase-18-date';
const fillers = new Set([
  'of',
  'de',
  'di',
  'du',
  'del',
  'den',
  'the',
  'ye',
  'le',
  'il',
  'el',
  'am',
  'anno',
  'in',
  'year',
]);

interface Parts {
  day?: number;
  month?: number;
  season?: number;
  year?: string;
  dual?: string;
}

/**
 * A day, month or season with its year, in any order and with or without commas, ordinals and small words between:
 * `12 May 1764`, `May 12th, 1764`, `1er mars 1801`, `13. Decembris, anno 1616`, `1764 May 12`, `Spring 1764`. A dual
 * year (`3 February 1723/4`) is Old Style, its year the second: the days are turned into those of the Gregorian calendar.
 */
export function readDayMonthYear(text: string): SingleDate | undefined {
  const parts = partsOf(text);
  if (parts === undefined || parts.year === undefined) return undefined;
  const year = parts.dual ?? parts.year;
  if (parts.season !== undefined) {
    const alone = parts.month === undefined && parts.day === undefined && parts.dual === undefined;
    return alone ? exact({ digits: `${year}-${parts.season}` }, rule) : undefined;
  }
  if (parts.month === undefined) return undefined;
  const digits = [year, parts.month, ...(parts.day === undefined ? [] : [parts.day])].map(two).join('-');
  if (parts.dual === undefined) return exact({ digits }, rule);
  return { ...oldStyle(digits, year), flags: ['dual-year'], julian: true };
}

function oldStyle(digits: string, year: string): SingleDate {
  const days = turnedDays(digits);
  if (days === undefined) return exact({ digits }, rule);
  if (days.from === days.to) return exact({ digits: days.from }, rule);
  return within({ from: { digits: days.from }, to: { digits: days.to } }, { digits: year }, rule);
}

/** `January 12` or `January`: a day or month of a year that is not given. */
export function readDayWithoutYear(text: string): SingleDate | undefined {
  const parts = partsOf(text);
  if (parts?.month === undefined || parts.year !== undefined || parts.season !== undefined) return undefined;
  const digits = ['XXXX', parts.month, ...(parts.day === undefined ? [] : [parts.day])].map(two).join('-');
  return { ...exact({ digits }, 'phrase-27-no-year'), flags: ['no-year'] };
}

function partsOf(text: string): Parts | undefined {
  const parts: Parts = {};
  const words = text.split(/[ ,]+/).filter(word => word !== '' && !fillers.has(word.toLowerCase()));
  if (words.length > 4) return undefined;
  for (const word of words) if (!place(word, parts)) return undefined;
  return parts;
}

/** Puts one word in its place; false where it has none or the place is taken. */
function place(word: string, parts: Parts): boolean {
  const day = /^(\d{1,2})(?:st|nd|rd|th|d|er|[º°.])?\.?$/i.exec(word)?.[1];
  if (day !== undefined) return put(parts, 'day', Number(day));
  const year = /^(\d{4})(?:\/(\d{1,4}))?$/.exec(word);
  if (year !== null) {
    const dual = year[2] === undefined ? undefined : nextYear(year[1]!, year[2]);
    if (year[2] !== undefined && dual === undefined) return false;
    return put(parts, 'year', year[1]!) && (dual === undefined || put(parts, 'dual', dual));
  }
  const roman = word.length > 3 ? romanYear(word) : undefined;
  if (roman !== undefined) return put(parts, 'year', String(roman));
  return put(parts, 'month', monthOfWord(word)) || put(parts, 'season', seasonOfWord(word));
}

function put<K extends keyof Parts>(parts: Parts, key: K, value: Parts[K]): boolean {
  if (value === undefined || parts[key] !== undefined) return false;
  parts[key] = value;
  return true;
}

/** The year that `1723/4`, `1723/24` or `1723/1724` means by its second number, if it is the next one. */
export function nextYear(year: string, second: string): string | undefined {
  const next = String(Number(year) + 1).padStart(4, '0');
  return second.length !== 3 && next.endsWith(second) ? next : undefined;
}

function two(part: string | number): string {
  return String(part).padStart(2, '0');
}
