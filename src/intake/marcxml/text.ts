import type { MarcField } from './marc-record.ts';

const surplusSpace = /\s{2,}|[\t\n\r]/;
const beyondAscii = /[^\x00-\x7F]/;

/** A value as a reader sees it: no white space at its ends, single spaces within, composed characters (Unicode NFC). */
export function tidy(value: string): string {
  const spaced = surplusSpace.test(value) ? value.replace(/\s+/g, ' ') : value;
  return (beyondAscii.test(spaced) ? spaced.normalize('NFC') : spaced).trim();
}

const endMarks = /(?:\s*[/:;=,])+\s*$/;

/** Without the ISBD punctuation that leads over to the next element: `San Diego :` gives `San Diego`. Full stops stay. */
export function withoutEndMarks(value: string): string {
  return endMarks.test(value) ? value.replace(endMarks, '') : value;
}

const lastWord = /(\p{L}+)\.$/u;
/** Abbreviations of names and firms whose full stop is their own. Common practice. */
const abbreviated = new Set(
  'bros comp cie esq jun sen junr senr inc ltd capt revd messrs prof hrsg verl buchh gebr impr'.split(' '),
);

/** Without the full stop that ends a heading; the stop of an initial or a short or known abbreviation stays. */
export function withoutFinalStop(value: string): string {
  const word = lastWord.exec(value)?.[1];
  if (word === undefined || word.length < 3 || abbreviated.has(word.toLowerCase())) return value;
  return value.slice(0, -1);
}

/** Whether ISBD punctuation stands in the subfields or was left out. MARC 21 leader/18: `c` and `n` say it was left out. */
export function punctuationLeftOut(leader: string): boolean {
  return leader[18] === 'c' || leader[18] === 'n';
}

/** What stands before each subfield where the record leaves ISBD punctuation out. */
export type Marks = Readonly<Record<string, string>>;

/** The subfields that `marks` names, in the order of the field, as one statement. */
export function statement(field: MarcField, marks: Marks, leftOut: boolean): string {
  let text = '';
  for (const [code, value] of field.subfields) {
    const mark = marks[code];
    const part = mark === undefined ? '' : tidy(value);
    if (mark === undefined || part === '') continue;
    text += text === '' ? part : leftOut ? mark + part : ` ${part}`;
  }
  return text;
}
