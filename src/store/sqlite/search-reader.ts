import { isRecordKind } from '../../domain/model/kinds.ts';
import { compareText } from '../../domain/text/compare.ts';
import { type MatchClass, matchClasses } from '../graph-store.ts';
import type { KeyCache } from './key-cache.ts';
import { NamedValues } from './named-values.ts';
import type { Prepared } from './prepared.ts';
import { kindNames, kindWord } from './schema-text.ts';
import { type FilterPlan, SearchFilter, type WrittenFilter } from './search-filter.ts';
import { searchSql } from './search-statements.ts';
import { allWords, anyOf, begunWords, ofKinds, someWords } from './search-words.ts';

/** What is searched for, as it crosses to the thread. */
export interface SearchCall {
  readonly text: { readonly whole: string; readonly tokens: readonly string[]; readonly few: number } | null;
  readonly filter: WrittenFilter;
  readonly after: WrittenPosition | null;
  readonly limit: number;
  readonly cap: number;
}

/** A class as its place in the list; -1 where there is no text. */
export type WrittenPosition = readonly [match: number, sort: string, id: string];

export type FoundRow = readonly [id: string, kind: number, sort: string];

export interface SearchAnswer {
  readonly hits: readonly (readonly [match: number, ...FoundRow])[];
  readonly more: boolean;
  readonly cut: boolean;
}

/** Stands for a class where no text is asked for. */
export const noText = -1;

const recordNumbers = kindNames.flatMap((kind, i) => (isRecordKind(kind) ? [i] : []));

/** Greater than every text: Unicode keeps this character for no use. */
const last = '\u{10ffff}';

type Text = NonNullable<SearchCall['text']>;
type Hit = SearchAnswer['hits'][number];

/** What a page still has room for, from after a position. */
interface Stretch {
  readonly sort: string;
  readonly id: string;
  readonly room: number;
}

/** Searches, a page at a time: a class is looked at when those before it do not fill the page. */
export class SearchReader {
  readonly #read: NamedValues;
  readonly #filter: SearchFilter;

  /** @param gathered so many records that come to pass a filter in one way are gathered before words are looked for */
  constructor(prepared: Prepared, keys: KeyCache, gathered = 5000) {
    this.#read = new NamedValues(prepared);
    this.#filter = new SearchFilter(this.#read, keys, gathered);
  }

  search({ text, filter, after, limit, cap }: SearchCall): SearchAnswer {
    const plan = this.#filter.plan({ ...filter, kinds: filter.kinds.length > 0 ? filter.kinds : recordNumbers });
    const position: WrittenPosition = after ?? [noText, '', ''];
    const [from, sort, id] = position;
    const room = limit + 1;
    if (text === null)
      return answerOf(this.#inOrder(plan, last, { sort, id, room }).map(withClass(noText)), limit, false);
    const hits: Hit[] = from <= beginning ? this.#named(plan, text.whole, position, room) : [];
    let cut = false;
    for (let match = Math.max(from, beginning + 1); match < matchClasses.length && hits.length < room; match++) {
      const query = this.#wordQuery(matchClasses[match]!, text);
      const found = query === undefined ? [] : this.#byWords(plan, query, text.whole, cap + 1);
      cut ||= found.length > cap;
      const ordered = found.slice(0, cap).sort(bySortAndId);
      const rest = match === from ? ordered.filter(row => isAfter(row, sort, id)) : ordered;
      hits.push(...rest.slice(0, room - hits.length).map(withClass(match)));
    }
    return answerOf(hits, limit, cut);
  }

  /** The whole name comes before those that begin with it: the two classes are one stretch of the order. */
  #named(plan: FilterPlan, whole: string, [from, sort, id]: WrittenPosition, room: number): Hit[] {
    const isWithin = from === beginning ? compareText(sort, whole) > 0 : from === 0 && sort === whole;
    const start = isWithin ? { sort, id } : { sort: whole, id: from === noText ? '' : last };
    const rows = this.#inOrder(plan, `${whole}${last}`, { ...start, room });
    return rows.map(row => withClass(row[2] === whole ? 0 : beginning)(row));
  }

  /** Records that pass by (sort, id), from after a position to before an end. */
  #inOrder({ many, few, keys, left, conditions, values }: FilterPlan, end: string, stretch: Stretch): FoundRow[] {
    const ofKinds = many.flatMap(kind =>
      this.#read.all<FoundRow>(searchSql.inOrder(conditions), { ...values, ...stretch, kind, end }),
    );
    if (few.length === 0) return ofKinds.sort(bySortAndId).slice(0, stretch.room);
    const given = { ...values, ...stretch, keys, kinds: JSON.stringify(few), end };
    const ofKeys = this.#read.all<FoundRow>(searchSql.inOrderOfKeys(left), given);
    return [...ofKinds, ...ofKeys].sort(bySortAndId).slice(0, stretch.room);
  }

  /** Records that pass and that words find, those that came first, but for those named so. */
  #byWords(plan: FilterPlan, words: string, whole: string, room: number): FoundRow[] {
    const { many, few, keys, left, conditions, values } = plan;
    const kinds = [...many, ...few];
    if (kinds.length === 0) return [];
    const query = kinds.length === recordNumbers.length ? words : ofKinds(words, kinds.map(kindWord));
    const given = { ...values, query, whole, end: `${whole}${last}`, room };
    return many.length === 0
      ? this.#read.all(searchSql.byWordsOfKeys(left), { ...given, keys })
      : this.#read.all(searchSql.byWords(conditions), given);
  }

  /** Undefined where there can be nothing in a class. */
  #wordQuery(match: MatchClass, { tokens, few }: Text): string | undefined {
    if (match === 'WORDS') return allWords(tokens);
    if (match === 'PREFIX') return begunWords(tokens);
    const some = tokens.length === 1 ? [] : tokens.filter(token => this.#isOfFew(token, few));
    return some.length === 0 ? undefined : someWords(some, tokens);
  }

  #isOfFew(word: string, few: number): boolean {
    const [found] = this.#read.all<[number]>(searchSql.countUpTo, { query: anyOf([word]), most: few + 1 });
    return found![0] <= few;
  }
}

const beginning = matchClasses.indexOf('BEGINNING');

function withClass(match: number): (row: FoundRow) => Hit {
  return row => [match, ...row];
}

function answerOf(hits: readonly Hit[], limit: number, cut: boolean): SearchAnswer {
  return { hits: hits.slice(0, limit), more: hits.length > limit, cut };
}

function isAfter([id, , sort]: FoundRow, afterSort: string, afterId: string): boolean {
  return (compareText(sort, afterSort) || compareText(id, afterId)) > 0;
}

function bySortAndId(a: FoundRow, b: FoundRow): number {
  return compareText(a[2], b[2]) || compareText(a[0], b[0]);
}
