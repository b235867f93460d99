import { remember } from '../../domain/text/remember.ts';
import { boundsOf, readImprintDate } from './date-reading.ts';
import { trailingDate } from './unstructured-imprint-ends.ts';

/**
 * Date of a linked edition, EDTF, from the words of its imprint (76X-78X $d). The date stands at the end, before the
 * size of the leaf (`pp. 720. W. Tegg & Co.: London, 1857. 12º.`), or before the extent (`London: J. Murray, 1841.
 * pp. xv, 473. 8º.`). Undefined if it cannot be read.
 */
export const dateOfLinked = remember(10_000, (words): string | undefined => {
  if (words.length > longest) return undefined;
  const atEnd = trailingDate(words.replace(size, ''))[1];
  const read = atEnd === undefined ? undefined : readImprintDate(atEnd).date;
  if (read !== undefined && isOfPrint(read)) return read;
  const within = words.match(dated)?.at(-1);
  return within === undefined ? undefined : readImprintDate(within).date;
});

const longest = 1000;
const size = /[\s,]*\b(?:obl\.? ?)?(?:\d{1,3} ?(?:º|°|mo\b|vo\b|to\b)|fol\b)\.?\s*$/i;

/** Years of the printing press, with what is written against them, or the whole bracket that they stand in. */
const dated =
  /\[[^[\]]{0,60}1[4-9][\d-]{2}[^[\]]{0,60}\]|\b1[4-9]\d\d(?: ?\?)?(?:-(?=\D|$)| ?[-–/] ?\d{1,4}\b)?(?:, \d{2}\b)*(?: \[[^\]]{0,60}\])?/g;

/** `pp. 1008` reads as a year too. */
const firstPrint = -208_000;

function isOfPrint(date: string): boolean {
  const { hi } = boundsOf(date);
  return hi === undefined || hi > firstPrint;
}
