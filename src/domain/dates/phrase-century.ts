import { smallRoman } from './phrase-roman.ts';
import { exact, type SingleDate, within } from './phrase-single-date.ts';
import type { Span } from './phrase-value.ts';

const noun = 'centur(?:y|ies)|cent|jahrhunderts?|jhs?|jhdt|siècle|siecle|secolo|sec';
const ordinal = 'st|nd|rd|th|e|er|ème|º|°|\\.';
const era = String.raw`(?: (bce?|b\.c|ad|a\.d|ce))?`;
const numberFirst = new RegExp(
  String.raw`^(?:(\d{1,2})(?:${ordinal})? ?(?:${noun}|c)|([XVI]{1,6})(?:${ordinal})? (?:${noun}))\.?${era}$`,
  'i',
);
const nounFirst = /^(?:siglo|secolo|sec|saec|s)\.? ([XVI]{1,6}|\d{1,2})$/i;

const parts: readonly (readonly [RegExp, number, number])[] = [
  [
    /^(?:the )?(?:early|beginning of(?: the)?|first third of(?: the)?|anfang(?: des)?|début(?: du)?|inizio|inizi)[ -]+/i,
    0,
    33,
  ],
  [/^(?:the )?(?:mid|middle|middle of(?: the)?|mitte(?: des)?|milieu(?: du)?|metà)[ -]+/i, 33, 66],
  [/^(?:the )?(?:late|end of(?: the)?|last third of(?: the)?|ende(?: des)?|fin(?: du)?|fine)[ -]+/i, 66, 99],
  [half('first|1st|1\\.|erste|1re|première|prima'), 0, 49],
  [half('second|last|2nd|latter|2\\.|zweite|2e|seconde|deuxième|seconda'), 50, 99],
  [quarter('first|1st|1\\.|erstes|premier|1er|primo'), 0, 24],
  [quarter('second|2nd|2\\.|zweites|deuxième|2e|secondo'), 25, 49],
  [quarter('third|3rd|3\\.|drittes|troisième|3e|terzo'), 50, 74],
  [quarter('fourth|last|4th|4\\.|letztes|viertes|dernier|4e|ultimo'), 75, 99],
];

/**
 * Centuries, their thirds, halves and quarters, in five languages: `18th century` is 17XX where the century begins
 * with the year 00, [1701..1800] where it begins with 01. Thirds share the years at their joints. Centuries before
 * Christ go by astronomical years: the second is 200 to 101 BC, -0199 to -0100.
 */
export function readCentury(text: string, begins: 0 | 1): SingleDate | undefined {
  const rule = 'phrase-14-century';
  for (const [pattern, from, to] of parts) {
    const rest = text.replace(pattern, '');
    const century = rest === text ? undefined : numbered(rest);
    if (century !== undefined && !century.beforeChrist) {
      return within(years(century.number - 1, from + begins, to + begins), unit(century.number), rule);
    }
  }
  const century = numbered(text);
  if (century === undefined) return undefined;
  if (century.beforeChrist) return beforeChrist(century.number, rule);
  if (begins === 0) return exact(unit(century.number), rule);
  return within(years(century.number - 1, 1, 100), unit(century.number), rule);
}

function half(which: string): RegExp {
  return new RegExp(`^(?:the )?(?:${which}) (?:half|hälfte|moitié|metà)(?: of| du| des| del)?(?: the)? `, 'i');
}

function quarter(which: string): RegExp {
  return new RegExp(`^(?:the )?(?:${which}) (?:quarter|viertel|quart|quarto)(?: of| du| des| del)?(?: the)? `, 'i');
}

function numbered(text: string): { readonly number: number; readonly beforeChrist: boolean } | undefined {
  const match = numberFirst.exec(text);
  const written = match?.[1] ?? match?.[2] ?? nounFirst.exec(text)?.[1];
  const number = written === undefined ? undefined : /^\d/.test(written) ? Number(written) : smallRoman(written);
  if (number === undefined || number < 1 || number > 21) return undefined;
  return { number, beforeChrist: /^b/i.test(match?.[3] ?? '') };
}

function years(hundreds: number, from: number, to: number): Span {
  const year = (number: number) => ({ digits: String(hundreds * 100 + number).padStart(4, '0') });
  return { from: year(from), to: year(to) };
}

function unit(century: number) {
  return { digits: `${String(century - 1).padStart(2, '0')}XX` };
}

function beforeChrist(century: number, rule: string): SingleDate {
  if (century > 1) return exact({ digits: `-${unit(century).digits}` }, rule);
  return within({ from: { digits: '-0099' }, to: { digits: '0000' } }, { digits: '-0099' }, rule);
}
