/**
 * Spreadsheets take a text for a date or a number where it looks like one in the language of their user, and write it in a
 * form of their own: "1790-06" as "Jun-90", "1-2" as "02-Jan", "007" as "7".
 */

/** Names of months in the languages in which spreadsheets of our users write them, without accents; common practice. */
const months = [
  'january januar janvier januari gennaio enero',
  'february februar fevrier februari febbraio febrero',
  'march maerz marz mrz mars maart mrt marzo',
  'april avril aprile abril',
  'may mai mei maggio mayo',
  'june juni juin giugno junio',
  'july juli juillet luglio julio',
  'august aout augustus agosto',
  'september septembre settembre septiembre',
  'october oktober octobre ottobre octubre',
  'november novembre noviembre',
  'december dezember decembre dicembre diciembre',
].map(names => names.split(' '));

const gap = '[-. /]+';
const clock = '(?: \\d{1,2}:\\d{2}(?::\\d{2})?(?: ?[AP]M)?)?';
const groups = new RegExp(`^(?:\\d{1,4}|\\p{L}{3,9}\\.?)(?:${gap}(?:\\d{1,4}|\\p{L}{3,9}\\.?)){1,2}$`, 'u');
/** The name of a month with a day or year or both, or all three as numbers, the year last. */
const written = new RegExp(
  `^(?:(?:\\d{1,2}${gap})?\\p{L}{3,9}\\.?${gap}\\d{2,4}|\\d{1,2}${gap}\\p{L}{3,9}\\.?|(?:\\d{1,2}[-./]){2}\\d{2,4})${clock}$`,
  'iu',
);
const numberLike = /^[+-]?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i;

/** Whether a text has a form in which spreadsheets write dates, and EDTF does not. */
export function isSpreadsheetDate(text: string): boolean {
  return written.test(text.trim()) && partsOf(text) !== undefined;
}

/** Whether the second text is what spreadsheets are known to make of the first. */
export function isRewritten(before: string, after: string): boolean {
  const [one, other] = [before.trim(), after.trim()];
  if (one === other) return false;
  if (numberLike.test(one) && numberLike.test(other)) return isSameNumber(Number(one), Number(other));
  const parts = groups.test(one) ? partsOf(one) : undefined;
  return parts !== undefined && isSpreadsheetDate(other) && partsOf(other)!.some(part => parts.includes(part));
}

/** Of long numbers fewer digits are shown, and fifteen kept. */
function isSameNumber(one: number, other: number): boolean {
  return one === other || (Math.abs(one) >= 1e11 && Math.abs(one - other) <= Math.abs(one) * 1e-5);
}

/** Numbers of a date, years by their last two digits, months by their number; undefined if a word is no month. */
function partsOf(text: string): readonly number[] | undefined {
  const date = text.trim().replace(new RegExp(`${clock}$`, 'i'), '');
  const parts = [...date.matchAll(/\d+|\p{L}+/gu)].map(([found]) =>
    /\d/.test(found) ? Number(found) % 100 : monthOf(found),
  );
  return parts.includes(undefined) ? undefined : (parts as number[]);
}

/** 1 to 12; undefined for a word that begins no name of a month. */
function monthOf(word: string): number | undefined {
  const plain = word.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');
  const at = months.findIndex(names => names.some(name => name.startsWith(plain)));
  return at < 0 ? undefined : at + 1;
}
