import neo4j from 'neo4j-driver';
import { type RecordKindName, recordKindNames } from '../../domain/model/kinds.ts';
import { openDay } from '../../domain/reach/open-day.ts';
import { compareText } from '../../domain/text/compare.ts';
import { DatesKnown } from '../dates-known.ts';
import {
  type MatchClass,
  matchClasses,
  type SearchAsked,
  type SearchFilter,
  type SearchFound,
  type SearchHit,
  type SearchPosition,
  type SearchText,
} from '../graph-store.ts';
import type { NumberedName } from '../groups-known.ts';
import type { Ask, Values } from './connection.ts';
import { type Condition, searchConditions } from './search-conditions.ts';
import { searchCypher } from './search-statements.ts';
import {
  allWords,
  begunWords,
  blockOf,
  luceneText,
  ofBlocks,
  partsOfWords,
  quoted,
  someWords,
  type WordQuery,
} from './search-words.ts';
import { kindWord, widest } from './written-batch.ts';

type FoundRow = [id: string, kind: RecordKindName, sort: string];

/** How to find what passes a filter. */
interface Plan {
  readonly kinds: readonly RecordKindName[];
  /** Condition that few records pass, which are gathered; absent: there is none. */
  readonly gather: Condition | undefined;
  /** Conditions for which records are looked at one by one. */
  readonly left: readonly Condition[];
  /** Of all conditions. */
  readonly values: Values;
  /** No record passes one of the conditions. */
  readonly isEmpty: boolean;
}

/** What a page still has room for, from after a position to before an end. */
interface Stretch {
  readonly sort: string;
  readonly id: string;
  readonly end: string;
  readonly room: number;
}

/** Greater than every text: Unicode keeps this character for no use. */
const last = '\u{10ffff}';

/** Searches, a page at a time: a class is looked at when those before it do not fill the page. */
export class SearchReader {
  readonly #gathered: number;
  readonly #dates = new DatesKnown();

  /** @param gathered so many records that pass a condition are few: they are gathered, and looked at for all else */
  constructor(gathered = 5000) {
    this.#gathered = gathered;
  }

  async search(ask: Ask, { text, filter, after, limit, cap }: SearchAsked): Promise<SearchFound> {
    const plan = await this.#plan(ask, filter);
    const room = limit + 1;
    if (plan.isEmpty) return { hits: [], more: false, cut: false };
    if (text === undefined) {
      const rows = await inOrder(ask, plan, { sort: after?.sort ?? '', id: after?.id ?? '', end: last, room });
      return answerOf(rows.map(withClass(undefined)), limit, false);
    }
    const hits = isNamed(after?.match) ? await named(ask, plan, text.whole, after, room) : [];
    let cut = false;
    for (const match of matchClasses.filter(each => !isNamed(each))) {
      if (hits.length >= room) break;
      if (after?.match !== undefined && matchClasses.indexOf(match) < matchClasses.indexOf(after.match)) continue;
      const query = await wordQuery(ask, match, text);
      const found = query === undefined ? [] : await byWords(ask, plan, query, text.whole, cap + 1);
      cut ||= found.length > cap;
      const ordered = found.slice(0, cap).map(withClass(match)).sort(bySortAndId);
      const rest = match === after?.match ? ordered.filter(hit => bySortAndId(hit, after) > 0) : ordered;
      hits.push(...rest.slice(0, room - hits.length));
    }
    return answerOf(hits, limit, cut);
  }

  async #plan(ask: Ask, filter: SearchFilter): Promise<Plan> {
    const kinds = filter.kinds === undefined || filter.kinds.length === 0 ? recordKindNames : filter.kinds;
    const conditions = searchConditions.filter(condition => filter[condition] !== undefined);
    const counted = await Promise.all(conditions.map(condition => this.#count(ask, condition, kinds, filter)));
    const fewest = counted.toSorted((a, b) => a.count - b.count)[0];
    const gather = fewest !== undefined && fewest.count <= this.#gathered ? fewest.condition : undefined;
    return {
      kinds,
      gather,
      left: conditions.filter(condition => condition !== gather),
      values: Object.assign({}, ...counted.map(({ values }) => values)) as Values,
      isEmpty: fewest?.count === 0,
    };
  }

  /** How many records come to pass a condition, counted until they are many. */
  async #count(
    ask: Ask,
    condition: Condition,
    kinds: readonly RecordKindName[],
    filter: SearchFilter,
  ): Promise<Counted> {
    const values = await conditionValues[condition](ask, filter, this.#dates);
    const given = { ...values, kinds, most: neo4j.int(this.#gathered + 1) };
    const [found] = await ask<[number]>(searchCypher.passing(condition), given);
    return { condition, values, count: found![0] };
  }
}

interface Counted {
  readonly condition: Condition;
  readonly values: Values;
  readonly count: number;
}

/** Values of each condition. A statement is given its own alone: for others beside them the server would plan it again. */
const conditionValues: Readonly<
  Record<Condition, (ask: Ask, filter: SearchFilter, known: DatesKnown) => Promise<Values>>
> = {
  subject: async (_ask, { subject }) => ({ subject }),
  days: async (ask, { days, slack }, known) => {
    const [first, last] = [days?.lo ?? -openDay, days?.hi ?? openDay];
    const [after] = await ask<[readonly NumberedName[]]>(searchCypher.datesAfter, { date: neo4j.int(known.last) });
    for (const [number, date] of after![0]) known.add(number, date);
    const dates = known.meeting([first, last], slack).map(number => known.date(number));
    const starts = Array.from({ length: widest + 1 }, (_, spread) => neo4j.int(first - 2 ** spread));
    return { firstDay: neo4j.int(first), lastDay: neo4j.int(last), starts, dates };
  },
  place: async (ask, { place }) => {
    const places = (await ask<[string]>(searchCypher.placesWithin, { place })).flat();
    const workshops = (await ask<[string]>(searchCypher.workshopsAt, { places })).flat();
    return { places, workshops };
  },
};

/** The whole name comes before those that begin with it: the two classes are one stretch of the order. */
async function named(
  ask: Ask,
  plan: Plan,
  whole: string,
  after: SearchPosition | undefined,
  room: number,
): Promise<SearchHit[]> {
  const isWithin =
    after !== undefined &&
    (after.match === 'BEGINNING'
      ? compareText(after.sort, whole) > 0
      : after.match === 'WHOLE' && after.sort === whole);
  const from = isWithin ? { sort: after.sort, id: after.id } : { sort: whole, id: after === undefined ? '' : last };
  const rows = await inOrder(ask, plan, { ...from, end: `${whole}${last}`, room });
  return rows.map(row => withClass(row[2] === whole ? 'WHOLE' : 'BEGINNING')(row));
}

/** Records that pass by (sort, id). */
function inOrder(ask: Ask, { kinds, gather, left, values }: Plan, { room, ...stretch }: Stretch): Promise<FoundRow[]> {
  const text = gather === undefined ? searchCypher.inOrder(left) : searchCypher.inOrderOfGathered(gather, left);
  return ask(text, { ...values, ...stretch, kinds, room: neo4j.int(room) });
}

/** A query that finds so many times more than there is room for finds many. */
const timesMany = 4;

/** Records that pass and that words find, those that came first, but for those named so. */
async function byWords(
  ask: Ask,
  plan: Plan,
  words: WordQuery,
  whole: string,
  room: number,
): Promise<readonly FoundRow[]> {
  const { kinds, gather, left, values } = plan;
  const given = { ...values, whole, room: neo4j.int(room) };
  if (gather !== undefined) {
    return ask(searchCypher.byWordsOfGathered(gather, left), { ...given, kinds, ...partsOfWords(words) });
  }
  const kindWords = kinds.length === recordKindNames.length ? [] : kinds.map(kindWord);
  const query = luceneText(words, kindWords);
  const most = timesMany * room;
  const asked = { ...given, query, most: neo4j.int(most) };
  const [answer] = await ask<[count: number, rows: FoundRow[], number: number]>(searchCypher.byFewWords(left), asked);
  const [count, rows, number] = answer!;
  return count < most
    ? rows
    : ofFirstBlocks(ask, searchCypher.byWords(left), { ...given, query }, room, blockOf(number));
}

/** Looks through blocks of rows in the order in which they came, twice as many each time, until there is no room left. */
async function ofFirstBlocks(
  ask: Ask,
  text: string,
  given: Values & { readonly query: string },
  room: number,
  lastBlock: number,
): Promise<readonly FoundRow[]> {
  const found: FoundRow[] = [];
  for (
    let [first, blocks] = [0, 1];
    first <= lastBlock && found.length < room;
    [first, blocks] = [first + blocks, 2 * blocks]
  ) {
    const query = ofBlocks(given.query, first, first + blocks - 1);
    found.push(...(await ask<FoundRow>(text, { ...given, query })));
  }
  return found.slice(0, room);
}

/** Undefined where there can be nothing in a class. */
async function wordQuery(ask: Ask, match: MatchClass, { tokens, few }: SearchText): Promise<WordQuery | undefined> {
  if (match === 'WORDS') return allWords(tokens);
  if (match === 'PREFIX') return begunWords(tokens);
  if (tokens.length === 1) return undefined;
  const given = { queries: tokens.map(quoted), most: neo4j.int(few + 1) };
  const counts = new Map(await ask<[string, number]>(searchCypher.countUpTo, given));
  const some = tokens.filter(token => (counts.get(quoted(token)) ?? 0) <= few);
  return some.length === 0 ? undefined : someWords(some, tokens);
}

/** Found by its name; so is what no place is given for. */
function isNamed(match: MatchClass | undefined): boolean {
  return match === undefined || match === 'WHOLE' || match === 'BEGINNING';
}

function withClass(match: MatchClass | undefined): (row: FoundRow) => SearchHit {
  return ([id, kind, sort]) => ({ id, kind, ...(match === undefined ? {} : { match }), sort });
}

function answerOf(hits: readonly SearchHit[], limit: number, cut: boolean): SearchFound {
  return { hits: hits.slice(0, limit), more: hits.length > limit, cut };
}

function bySortAndId(a: SearchHit, b: SearchPosition): number {
  return compareText(a.sort, b.sort) || compareText(a.id, b.id);
}
