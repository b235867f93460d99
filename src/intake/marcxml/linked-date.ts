import { readImprintDate } from './date-reading.ts';
import { remember } from './remember.ts';

/**
 * Date of a linked edition, EDTF, from the words of its imprint (76X-78X $d, 534 $c): the date stands at the end, or
 * before the size of the leaf (`pp. 720. W. Tegg & Co.: London, 1857. 12º.`). Undefined if it cannot be read.
 */
export const dateOfLinked = remember(10_000, (words): string | undefined => {
  const inPlace = dated.exec(words.slice(-longest))?.[0];
  return inPlace === undefined ? undefined : readImprintDate(inPlace.trim()).date;
});

/** Characters at the end of the words that are looked at. */
const longest = 300;

/** The last bracketed or bare year of the words, with what is written against it. */
const dated =
  /(?:\[(?:ca?\. ?|between )?1[4-9][\d-]{2}[^[\]]*\]|(?:\[)?\b1[4-9]\d\d\b(?: ?\?)?\.?\]?(?: ?[-,–/] ?\d{1,4}\b)?(?: \[[^\]]*\])?)(?!.*\b1[4-9]\d\d\b)/s;
