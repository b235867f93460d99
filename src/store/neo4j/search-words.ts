/**
 * What is asked of the words of records: at least one of some, all of others, but not all of a third list. The last word of
 * `all` and `not` may be one that words begin with.
 */
export interface WordQuery {
  readonly all: readonly Word[];
  readonly some: readonly Word[];
  readonly not: readonly Word[];
}

interface Word {
  readonly text: string;
  /** Words that begin so are found too. */
  readonly isBegun?: true;
}

/** All words. */
export function allWords(words: readonly string[]): WordQuery {
  return { all: words.map(whole), some: [], not: [] };
}

/** All words but the last, and one that begins as the last, but not the last itself. */
export function begunWords(words: readonly string[]): WordQuery {
  return { all: allBegun(words), some: [], not: [whole(words.at(-1)!)] };
}

/** At least one of some words, but not all with the last one begun. */
export function someWords(some: readonly string[], words: readonly string[]): WordQuery {
  return { all: [], some: some.map(whole), not: allBegun(words) };
}

/**
 * In the language of the word index, which is Lucene's
 * (https://lucene.apache.org/core/9_11_0/queryparser/org/apache/lucene/queryparser/classic/package-summary.html). Folded words
 * hold letters and digits only: none has a sign of that language, and in quotes none is an operator.
 * @param kindWords words by which the records of some kinds are found: only those; none: all kinds
 */
export function luceneText({ all, some, not }: WordQuery, kindWords: readonly string[]): string {
  return [
    ...(kindWords.length === 0 ? [] : [`+(${kindWords.map(quoted).join(' ')})`]),
    ...all.map(word => `+${term(word)}`),
    ...(some.length === 0 ? [] : [`+(${some.map(term).join(' ')})`]),
    ...(not.length === 0 ? [] : [`-(${not.map(word => `+${term(word)}`).join(' ')})`]),
  ].join(' ');
}

/** As parts of the words of a record, each of which stands between two spaces. */
export function partsOfWords({
  all,
  some,
  not,
}: WordQuery): Readonly<Record<'all' | 'some' | 'not', readonly string[]>> {
  return {
    all: all.map(part),
    some: some.length === 0 ? [' '] : some.map(part),
    not: not.length === 0 ? ['no word has a space'] : not.map(part),
  };
}

/** The words of a record as they are kept. */
export function wordsText(words: readonly string[]): string {
  return ` ${words.join(' ')} `;
}

/** So many rows that came one after the other have a word in common, by which those that came first are found first. */
const rowsOfBlock = 4096;

/** Block of a row by its number. */
export function blockOf(number: number): number {
  return Math.floor(number / rowsOfBlock);
}

/** The words of a record with that of its block. Words of blocks are in their order as texts. */
export function withBlock(words: string, number: number): string {
  return `${words}${blockWord(blockOf(number))} `;
}

/** Only records of some blocks that follow each other. */
export function ofBlocks(query: string, first: number, last: number): string {
  return `${query} +[${blockWord(first)} TO ${blockWord(last)}]`;
}

function blockWord(block: number): string {
  return `_b${String(block).padStart(10, '0')}`;
}

export function quoted(word: string): string {
  return `"${word}"`;
}

function whole(text: string): Word {
  return { text };
}

function allBegun(words: readonly string[]): readonly Word[] {
  return [...words.slice(0, -1).map(whole), { text: words.at(-1)!, isBegun: true }];
}

function term({ text, isBegun }: Word): string {
  return isBegun === true ? `${text}*` : quoted(text);
}

function part({ text, isBegun }: Word): string {
  return isBegun === true ? ` ${text}` : ` ${text} `;
}
