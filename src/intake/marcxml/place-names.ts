import { tidy, withoutEndMarks } from './text.ts';

/** A longer text names no place. */
const longest = 500;

/** Names of places in one subfield of an imprint, as written but for marks and brackets. */
export interface PlaceNames {
  readonly names: readonly string[];
  /** A query stands beside them. */
  readonly doubtful: boolean;
}

const notIdentified =
  /^(?:s\.? ?l\.?|n\.? ?p\.?|o\.? ?o\.?|sine loco|place of (?:publication|production|distribution|manufacture) not identified|(?:publication )?place not identified|ohne ort|s\. ?i\.)$/i;

export function placeNames(words: string): PlaceNames {
  if (words.length > longest) return { names: [], doubtful: false };
  const corrected = /\[(?:i\.? ?e\.?|that is),? ([^\]]+)\]?/i.exec(words)?.[1] ?? words;
  const plain = withoutEndMarks(tidy(corrected.replace(/[[\]()?]/g, ''))).replace(/[.:]$/, '');
  const names = plain.split(/\s*;\s*|\s+(?:&|and|et|und|y|e)\s+(?=\p{Lu})/u).map(name => withoutEndMarks(name.trim()));
  return { names: names.filter(name => name !== '' && !notIdentified.test(name)), doubtful: words.includes('?') };
}
