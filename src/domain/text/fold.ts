/**
 * Folding of texts for search and order. Both engines store and compare what is made here, so that they agree.
 * `foldVersion` goes up whenever a result changes; derived data that carries an older one is remade.
 */
export const foldVersion = 3;

/** Longest sort key: enough to order titles, short enough for an index. */
const longestSortKey = 120;

/** Letters that normalisation leaves whole: those that the root collation of CLDR takes for a plain one are that one. */
const letters: Readonly<Record<string, string>> = {
  æ: 'ae',
  œ: 'oe',
  ß: 'ss',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ł: 'l',
  ħ: 'h',
  ı: 'i',
  ſ: 's',
  ς: 'σ',
  // Shapes of medieval and early printed letters, and insular ones.
  ꝛ: 'r',
  ꟃ: 'w',
  ꟙ: 's',
  ᵹ: 'g',
  ꝺ: 'd',
  ꝼ: 'f',
  ꞃ: 'r',
  ꞅ: 's',
  ꞇ: 't',
  // Latvian before 1921, old Polish, Volapük.
  ꞡ: 'g',
  ꞣ: 'k',
  ꞥ: 'n',
  ꞧ: 'r',
  ꞩ: 's',
  ꟁ: 'a',
  ꞛ: 'a',
  ꞝ: 'o',
  ꞟ: 'u',
  v: 'u',
  j: 'i',
};

const marks = /\p{M}+/gu;
const words = /[\p{L}\p{N}]+/gu;
const withoutSpaces = /\p{sc=Han}|\p{sc=Hiragana}|\p{sc=Katakana}|\p{sc=Thai}/u;
/** Most texts are ASCII: the same result at a fraction of the cost. */
const ascii = /^[\x00-\x7f]*$/;
const asciiWords = /[a-z0-9]+/g;
const special = new RegExp(`[${Object.keys(letters).join('')}]`, 'g');

/**
 * Words of a text without case, accents and marks; ligatures and long s resolved; u and v, i and j taken as one letter,
 * as printers did. Scripts written without spaces give pairs of neighbouring characters. In the order of the text.
 */
export function foldTokens(text: string): string[] {
  if (ascii.test(text)) return withoutTwins(text.toLowerCase()).match(asciiWords) ?? [];
  const plain = text
    .normalize('NFKD')
    .replace(marks, '')
    // Some letters have a capital that is the capital of another letter too.
    .toUpperCase()
    .toLowerCase()
    .replace(special, letter => letters[letter]!);
  const found = plain.match(words) ?? [];
  return withoutSpaces.test(plain) ? found.flatMap(pairs) : found;
}

/**
 * Key by which a text is ordered and compared as a whole: its tokens, one space between, cut between characters where
 * it would be longer than 120 UTF-16 units. Empty if it has no letters.
 */
export function sortKey(text: string): string {
  return sortKeyOf(foldTokens(text));
}

/** The same of a text that has been folded. */
export function sortKeyOf(tokens: readonly string[]): string {
  const key = tokens.join(' ');
  if (key.length <= longestSortKey) return key;
  const cut = key.slice(0, longestSortKey);
  return cut.isWellFormed() ? cut : cut.slice(0, -1);
}

function withoutTwins(text: string): string {
  return text.includes('v') || text.includes('j') ? text.replaceAll('v', 'u').replaceAll('j', 'i') : text;
}

function pairs(word: string): string[] {
  if (!withoutSpaces.test(word)) return [word];
  const characters = [...word];
  if (characters.length === 1) return [word];
  return characters.slice(1).map((character, i) => characters[i]! + character);
}
