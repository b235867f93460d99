import { formatDay, republicanYear } from './calendar.ts';
import { smallRoman } from './phrase-roman.ts';
import type { Outcome } from './phrase-rule.ts';
import { republicanMonthOfWord } from './phrase-words.ts';

const republic = String.raw`(?:,? de la république(?: française)?(?:,? une et indivisible)?)?(?: ?(?:…|\.{3}))?`;
const dated = new RegExp(
  String.raw`^(?:le )?(?:(?:(\d{1,2})(?:er)? )?([\p{L}]{6,13}),? )?(?:de )?(?:l')?an\.? (\d{1,2}|[XVI]{1,4})(?:e|er|ème|me|\.)?${republic}$`,
  'iu',
);

/**
 * Years, months and days of the French Republic (`an VII`, `l'an 7 de la République`, `9 thermidor l'an 2e`), as the
 * Gregorian days they are.
 */
export function readRepublican(text: string): Omit<Outcome, 'rule'> | undefined {
  const match = dated.exec(text);
  if (match === null) return undefined;
  const [, day, word, written] = match;
  const year = /^\d/.test(written!) ? Number(written) : smallRoman(written!);
  const month = word === undefined ? undefined : republicanMonthOfWord(word);
  if (year === undefined || year < 1 || year > 14 || (word !== undefined && month === undefined)) return undefined;
  if (Number(day) < 1 || Number(day) > 30) return undefined;
  const { lo, hi } = republicanYear(year);
  const monthBegins = lo + 30 * ((month ?? 1) - 1);
  const first = monthBegins + Number(day ?? 1) - 1;
  const last = month === undefined ? hi : Math.min(hi, monthBegins + Number(day ?? 30) - 1);
  if (first > last) return undefined;
  const flags = ['republican'] as const;
  if (first === last) {
    return { value: { shape: 'one', moment: { digits: formatDay(first) } }, flags, calendar: 'republican' };
  }
  const span = { from: { digits: formatDay(first) }, to: { digits: formatDay(last) } };
  return { value: { shape: 'oneOf', spans: [span] }, flags, calendar: 'republican' };
}
