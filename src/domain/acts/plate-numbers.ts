import { smallRoman } from '../dates/phrase-roman.ts';

/** Most numbers that one text may come to. */
const most = 5000;

/**
 * Numbers of plates, one by one, of a text as `1-60`, `1-12, 14`, `I-XX` or `frontispiece, 1-8`. A range is of whole
 * numbers, or of Roman ones up to XXXIX; whatever else stands between commas is a number as it is.
 * @returns undefined where a range runs backwards, a number comes twice, or there are more than 5,000
 */
export function plateNumbers(text: string): readonly string[] | undefined {
  const numbers: string[] = [];
  for (const part of text.split(',').map(each => each.trim())) {
    if (part === '') continue;
    const found = range(part);
    if (found === undefined || numbers.length + found.length > most) return undefined;
    numbers.push(...found);
  }
  return new Set(numbers).size === numbers.length ? numbers : undefined;
}

function range(part: string): readonly string[] | undefined {
  const match = /^([\dIVX]+)\s*[-–]\s*([\dIVX]+)$/i.exec(part);
  if (match === null) return [part];
  const [, from = '', to = ''] = match;
  const isPlain = /^\d+$/.test(from) && /^\d+$/.test(to);
  const [first, last] = isPlain ? [Number(from), Number(to)] : [smallRoman(from), smallRoman(to)];
  if (first === undefined || last === undefined) return [part];
  if (first > last || last - first >= most) return undefined;
  const all = Array.from({ length: last - first + 1 }, (_, i) => first + i);
  if (isPlain) return all.map(String);
  return all.map(number => (from === from.toLowerCase() ? roman(number).toLowerCase() : roman(number)));
}

/** I to XXXIX. */
function roman(number: number): string {
  const ones = ['', 'I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX'];
  return 'X'.repeat(Math.floor(number / 10)) + ones[number % 10];
}
