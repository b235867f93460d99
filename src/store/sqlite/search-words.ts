/**
 * Queries of the word index, in the language of SQLite FTS5 (https://www.sqlite.org/fts5.html, 3). Folded words hold
 * letters and digits only: quotes are safe.
 */

/** All words. */
export function allWords(words: readonly string[]): string {
  return words.map(quoted).join(' AND ');
}

/** All words but the last, and one that begins as the last, but not the last itself. */
export function begunWords(words: readonly string[]): string {
  return `(${allBegun(words)}) NOT ${quoted(words.at(-1)!)}`;
}

/** At least one of some words, but not all with the last one begun. */
export function someWords(some: readonly string[], words: readonly string[]): string {
  return `(${anyOf(some)}) NOT (${allBegun(words)})`;
}

/** One of the words at least. */
export function anyOf(words: readonly string[]): string {
  return words.map(quoted).join(' OR ');
}

/** Only records of these kinds. @param kindWords words by which the records of the kinds are found */
export function ofKinds(query: string, kindWords: readonly string[]): string {
  return `(${anyOf(kindWords)}) AND (${query})`;
}

function allBegun(words: readonly string[]): string {
  return `${allWords(words)}*`;
}

function quoted(word: string): string {
  return `"${word}"`;
}
