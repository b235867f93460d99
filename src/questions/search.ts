import { slackKeys } from '../domain/conventions/slack-of.ts';
import { foldTokens, sortKey } from '../domain/text/fold.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore, SearchText } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import type { SearchAnswer, SearchQuestion } from './questions.ts';
import { searchFilter } from './search-filter.ts';

/** Longest text that is looked for, in UTF-16 units; convention. */
const longestText = 500;

/** So many records are few, however small the store is; convention. */
const alwaysFew = 100;

/**
 * Records by the words of their names, fields, notes and columns, by a filter, or by both. Best match class first (the
 * whole name, its beginning, all words, all with the last one begun, some words), then by name, then by id: never by an
 * engine's own score. Without a text by name, then by id.
 */
export async function search(store: GraphStore, asked: SearchQuestion, signal?: AbortSignal): Promise<SearchAnswer> {
  const words = asked.text === undefined ? undefined : wordsOf(asked.text);
  const [conventions, records] = await Promise.all([conventionsInForce(store), recordsWithin(store, words)]);
  const filter = await searchFilter(store, asked, conventions);
  if (asked.text === undefined && Object.keys(filter).length === 0) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      'expected a text to search for, or kinds, dates, a place or a subject to keep to, came none of them',
    );
  }
  const cap = conventions.get('limit.search');
  const { hits, more, cut } = await store.search(
    {
      ...(words === undefined ? {} : { text: { ...words, few: fewOf(words, records, cap) } }),
      filter,
      ...(asked.page.after === undefined ? {} : { after: asked.page.after }),
      limit: asked.page.first,
      cap,
    },
    signal,
  );
  const items = hits.map(({ id, kind, sort, ...match }) => ({
    item: { id, kind, ...match },
    position: { ...match, sort, id },
  }));
  const keys = [
    ...(words === undefined ? [] : ['limit.search']),
    ...(asked.dates === undefined ? [] : Object.values(slackKeys)),
  ];
  return { hits: { items, more }, cut, conventions: conventions.uses(keys) };
}

type Words = Omit<SearchText, 'few'>;

function wordsOf(text: string): Words {
  const part = text.slice(0, longestText);
  const tokens = onceEach(foldTokens(part));
  if (tokens.length === 0) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected a text with at least one letter or digit to search for, came "${text.slice(0, 80)}"`,
      { place: { field: 'text' } },
    );
  }
  return { whole: sortKey(part), tokens };
}

/** In the order of their last place in the text: the word that may be only begun stays the last. */
function onceEach(tokens: readonly string[]): readonly string[] {
  return [...new Set(tokens.toReversed())].reverse();
}

/** How many records there are, where it is asked which words are few. */
async function recordsWithin(store: GraphStore, words: Words | undefined): Promise<number> {
  if (words === undefined || words.tokens.length === 1) return 0;
  return (await store.facts()).records;
}

/** A word that more than a tenth of the records have says too little by itself, unless there are few of them. */
function fewOf({ tokens }: Words, records: number, cap: number): number {
  return tokens.length === 1 ? cap : Math.min(cap, Math.max(alwaysFew, Math.floor(records / 10)));
}
