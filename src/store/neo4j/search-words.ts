/**
 * Queries of the word index, in the language of Lucene
 * (https://lucene.apache.org/core/9_11_0/queryparser/org/apache/lucene/queryparser/classic/package-summary.html). Folded words
 * hold letters and digits only: none has a sign of that language, and in quotes none is an operator.
 */

/** All words. */
export function allWords(words: readonly string[]): string {
  return words.map(word => `+${quoted(word)}`).join(' ');
}

/** All words but the last, and one that begins as the last, but not the last itself. */
export function begunWords(words: readonly string[]): string {
  return `${allBegun(words)} -${quoted(words.at(-1)!)}`;
}

/** At least one of some words, but not all with the last one begun. */
export function someWords(some: readonly string[], words: readonly string[]): string {
  return `+(${anyOf(some)}) -(${allBegun(words)})`;
}

/** Only records of these kinds. @param kindWords words by which the records of the kinds are found */
export function ofKinds(query: string, kindWords: readonly string[]): string {
  return `+(${anyOf(kindWords)}) ${query}`;
}

export function quoted(word: string): string {
  return `"${word}"`;
}

function anyOf(words: readonly string[]): string {
  return words.map(quoted).join(' ');
}

function allBegun(words: readonly string[]): string {
  return [...words.slice(0, -1).map(word => `+${quoted(word)}`), `+${words.at(-1)!}*`].join(' ');
}
