import type { MarcField } from './marc-record.ts';

/** A value as a reader sees it: no white space at its ends, single spaces within, composed characters (Unicode NFC). */
export function tidy(value: string): string {
  let beyondAscii = false;
  let spaces = 1;
  for (let i = 0; i < value.length; i++) {
    const code = value.charCodeAt(i);
    if (code > 127) beyondAscii = true;
    spaces = code <= 32 ? spaces + (code === 32 ? 1 : 2) : 0;
    if (spaces > 1) return spaced(value);
  }
  if (spaces > 0) return spaced(value);
  return beyondAscii ? value.normalize('NFC') : value;
}

function spaced(value: string): string {
  return value.replace(/\s+/g, ' ').trim().normalize('NFC');
}

/** Without the ISBD punctuation that leads over to the next element: `San Diego :` gives `San Diego`. Full stops stay. */
export function withoutEndMarks(value: string): string {
  let end = value.length;
  let cut = end;
  for (; end > 0; end--) {
    const last = value[end - 1]!;
    if ('/:;=,'.includes(last)) cut = end - 1;
    else if (last !== ' ') break;
  }
  return cut === value.length ? value : value.slice(0, end);
}

const letter = /\p{L}/u;
/** Abbreviations of names and firms whose full stop is their own. Common practice. */
const abbreviated = new Set(
  'bros comp cie esq jun sen junr senr inc ltd capt revd messrs prof hrsg verl buchh gebr impr'.split(' '),
);

const longestAbbreviation = 8;

/** Without the full stop that ends a heading; the stop of an initial or a short or known abbreviation stays. */
export function withoutFinalStop(value: string): string {
  if (!value.endsWith('.')) return value;
  const end = value.length - 1;
  let start = end;
  while (start > 0 && end - start < longestAbbreviation && letter.test(value[start - 1]!)) start--;
  if (end - start < 3 || abbreviated.has(value.slice(start, end).toLowerCase())) return value;
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
