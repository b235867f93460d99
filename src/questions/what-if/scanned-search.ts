import type { RecordKindName } from '../../domain/model/kinds.ts';
import { recordKindNames } from '../../domain/model/kinds.ts';
import type { AnyRecord } from '../../domain/model/row.ts';
import { findable } from '../../domain/text/findable.ts';
import {
  type GraphStore,
  type MatchClass,
  matchClasses,
  type SearchAsked,
  type SearchFound,
  type SearchHit,
  type SearchText,
} from '../../store/graph-store.ts';
import { type Breath, breathing } from '../breath.ts';
import { rowsOfKind } from '../rows-of-kind.ts';
import { recordsThatPass } from './record-filter.ts';
import { bySortAndId } from './windows-of-editions.ts';

/** A record that matches, or does if one of some words is had by few. */
interface Match extends SearchHit {
  /** Of SOME: those of the words that it has. */
  readonly has?: readonly string[];
}

/**
 * What a search finds where no words are kept: for the graph as it was. Every record is looked at, so that none is left out
 * for being one of many, and nothing is cut. Linear in the number of records.
 */
export async function scannedSearch(store: GraphStore, asked: SearchAsked, signal?: AbortSignal): Promise<SearchFound> {
  const { text, after, limit } = asked;
  const breath = breathing(signal);
  const counts = new Map<string, number>((text?.tokens ?? []).map(token => [token, 0]));
  const found: Match[] = [];
  for (const kind of kindsToLookAt(asked)) {
    for await (const records of rowsOfKind(store, kind, undefined, breath)) {
      const matches = matchesAmong(records as readonly AnyRecord[], text, counts);
      for (const match of await passing(store, matches, asked)) found.push(match);
      if (breath.isDue()) await breath.take();
    }
  }
  const hits = found.filter(({ has }) => has === undefined || has.some(token => counts.get(token)! <= text!.few));
  const ordered = (await sorted(hits, breath)).filter(hit => after === undefined || compareHits(hit, after) > 0);
  return { hits: ordered.slice(0, limit).map(hitOf), more: ordered.length > limit, cut: false };
}

/** How many records have a word is asked of all kinds, where there are several words. */
function kindsToLookAt({ text, filter: { kinds = [] } }: SearchAsked): readonly RecordKindName[] {
  return kinds.length === 0 || (text !== undefined && text.tokens.length > 1) ? recordKindNames : kinds;
}

function matchesAmong(
  records: readonly AnyRecord[],
  text: SearchText | undefined,
  counts: Map<string, number>,
): readonly (readonly [AnyRecord, Match])[] {
  return records.flatMap(record => {
    const { sort, tokens } = findable(record);
    const { id, kind } = record;
    if (text === undefined) return [[record, { id, kind, sort }] as const];
    const own = new Set(tokens);
    const has = text.tokens.filter(token => own.has(token));
    for (const token of has) counts.set(token, counts.get(token)! + 1);
    const match = matchClass(text, sort, has, tokens);
    return match === undefined
      ? []
      : [[record, { id, kind, match, sort, ...(match === 'SOME' ? { has } : {}) }] as const];
  });
}

/** The best class in which a record may be found. */
function matchClass(
  { whole, tokens }: SearchText,
  sort: string,
  has: readonly string[],
  own: readonly string[],
): MatchClass | undefined {
  if (sort === whole) return 'WHOLE';
  if (sort.startsWith(whole)) return 'BEGINNING';
  if (has.length === tokens.length) return 'WORDS';
  const last = tokens.at(-1)!;
  const hasOthers = tokens.slice(0, -1).every(token => has.includes(token));
  if (hasOthers && own.some(token => token.startsWith(last))) return 'PREFIX';
  return tokens.length > 1 && has.length > 0 ? 'SOME' : undefined;
}

async function passing(
  store: GraphStore,
  matches: readonly (readonly [AnyRecord, Match])[],
  { filter }: SearchAsked,
): Promise<readonly Match[]> {
  const { kinds = [] } = filter;
  const ofKinds = matches.filter(([{ kind }]) => kinds.length === 0 || kinds.includes(kind));
  const ids = await recordsThatPass(
    store,
    ofKinds.map(([record]) => record),
    filter,
  );
  return ofKinds.flatMap(([{ id }, match]) => (ids.has(id) ? [match] : []));
}

async function sorted(hits: readonly Match[], breath: Breath): Promise<readonly Match[]> {
  await breath.take();
  return hits.toSorted(compareHits);
}

type Placed = Pick<SearchHit, 'match' | 'sort' | 'id'>;

function compareHits(a: Placed, b: Placed): number {
  return rankOf(a) - rankOf(b) || bySortAndId(a, b);
}

function rankOf({ match }: Placed): number {
  return match === undefined ? 0 : matchClasses.indexOf(match);
}

function hitOf({ has: _, ...hit }: Match): SearchHit {
  return hit;
}
