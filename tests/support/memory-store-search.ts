import { compareText } from '../../src/domain/text/compare.ts';
import {
  type MatchClass,
  matchClasses,
  type SearchAsked,
  type SearchFound,
  type SearchHit,
  type SearchText,
} from '../../src/store/graph-store.ts';

/** A record as it is found: in the order in which they came into the store. */
export interface Findable extends Omit<SearchHit, 'match'> {
  readonly tokens: readonly string[];
}

/** @param all every record @param those the ones that pass the filter */
export function searchOver(all: readonly Findable[], those: readonly Findable[], asked: SearchAsked): SearchFound {
  const { text, after, limit, cap } = asked;
  const hits: SearchHit[] = [];
  let cut = false;
  for (const match of text === undefined ? [undefined] : matchClasses) {
    if (hits.length > limit) break;
    if (after !== undefined && rankOf(match) < rankOf(after.match)) continue;
    const inClass = those.filter(record => text === undefined || matchClass(text, record, all) === match);
    const isCapped = match !== undefined && match !== 'WHOLE' && match !== 'BEGINNING';
    cut ||= isCapped && inClass.length > cap;
    const found = (isCapped ? inClass.slice(0, cap) : inClass)
      .map(({ id, kind, sort }): SearchHit => ({ id, kind, ...(match === undefined ? {} : { match }), sort }))
      .sort(bySortAndId);
    hits.push(...found.filter(hit => after === undefined || match !== after.match || bySortAndId(hit, after) > 0));
  }
  return { hits: hits.slice(0, limit), more: hits.length > limit, cut };
}

/** The best class in which a record is found; undefined: it is not. */
function matchClass(text: SearchText, { sort, tokens }: Findable, all: readonly Findable[]): MatchClass | undefined {
  if (sort === text.whole) return 'WHOLE';
  if (sort.startsWith(text.whole)) return 'BEGINNING';
  const has = (token: string) => tokens.includes(token);
  if (text.tokens.every(has)) return 'WORDS';
  const last = text.tokens.at(-1)!;
  if (text.tokens.slice(0, -1).every(has) && tokens.some(token => token.startsWith(last))) return 'PREFIX';
  if (text.tokens.length === 1) return undefined;
  const isOfFew = (token: string) => all.filter(record => record.tokens.includes(token)).length <= text.few;
  return text.tokens.some(token => has(token) && isOfFew(token)) ? 'SOME' : undefined;
}

function rankOf(match: MatchClass | undefined): number {
  return match === undefined ? 0 : matchClasses.indexOf(match);
}

function bySortAndId(a: SearchHit, b: Pick<SearchHit, 'sort' | 'id'>): number {
  return compareText(a.sort, b.sort) || compareText(a.id, b.id);
}
