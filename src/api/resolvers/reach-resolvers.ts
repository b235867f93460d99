import type { GraphQLResolveInfo } from 'graphql';
import type { ConventionUse, Grounds } from '../../questions/grounds.ts';
import type { Page } from '../../questions/page.ts';
import type { Reach, ReachAsked, ReachCounts, ReachOrder, ReachPosition, ReachRow } from '../../questions/questions.ts';
import type { ApiContext } from '../context.ts';
import { graphOf } from '../graph.ts';
import { connection } from '../paging/connection.ts';
import { listDigest } from '../paging/cursor.ts';
import { isText, type PageArgs, pageAsked, pageSize } from '../paging/page-args.ts';
import { asksFor } from './asks-for.ts';
import { given, type Nullable } from './given.ts';
import { graphAsked, type WhatIfArgs } from './graph-asked.ts';
import { loadGrounds, loadLink, type RowOf, rowsAtHand } from './load.ts';

type ReachArgs = PageArgs & Nullable<Omit<ReachAsked, 'page' | 'tallies'>>;

/** A reach with the list that its cursors belong to, and its rows with their editions. */
interface ReachSource extends Omit<Reach, 'rows'> {
  readonly list: string;
  readonly rows: Page<RowSource, ReachPosition>;
}

type RowSource = Omit<ReachRow, 'edition'> & { readonly edition: ReturnType<RowOf> };

export async function reach(
  _root: unknown,
  args: ReachArgs & WhatIfArgs,
  context: ApiContext,
  info: GraphQLResolveInfo,
): Promise<ReachSource> {
  const { basis, suppose, without, asOf, ...others } = args;
  const { first: _first, after: _after, filter, at, ...asked } = given(others);
  const list = listDigest('reach', args);
  const page = pageAsked(args, list, isPositionOf(args.order ?? 'ROOM'));
  const question = {
    ...asked,
    ...(at === undefined ? {} : { at: given(at) }),
    ...(filter === undefined ? {} : { filter: given(filter) }),
    page: asksFor(info, 'editions') || asksFor(info, 'counts', 'differOnPage') ? page : { ...page, first: 0 },
    tallies: ['byPlace', 'places', 'byDecade'].some(name => asksFor(info, 'counts', name)),
  };
  const graph = await graphAsked({ basis, suppose, without, asOf }, info, context);
  const answer = await graph.questions.reach(question, context.ending.signal);
  return { ...answer, list, rows: withEditions(answer, rowsAtHand(answer.read, graph)) };
}

function withEditions({ rows }: Reach, row: RowOf): ReachSource['rows'] {
  const items = rows.items.map(({ item, position }) => ({ item: { ...item, edition: row(item.edition) }, position }));
  return { items, more: rows.more };
}

export const reachResolvers = {
  Reach: {
    editions: (source: ReachSource) => connection(source.rows, source.list),
    grounds: (source: ReachSource) => source.grounds,
  },
  ReachCounts: {
    byPlace: ({ byPlace = [] }: ReachCounts, { first }: { readonly first?: number | null }) =>
      byPlace.slice(0, pageSize(first)),
    places: ({ byPlace = [] }: ReachCounts) => byPlace.length,
    byDecade: (source: ReachCounts) => source.byDecade ?? [],
  },
  PlaceVerdicts: {
    place: (
      source: { readonly place: string | undefined },
      _args: unknown,
      context: ApiContext,
      info: GraphQLResolveInfo,
    ) => loadLink(source.place, graphOf(info, context)),
  },
  ReachRow: {
    restsOn: ({ restsOn }: RowSource, _args: unknown, context: ApiContext, info: GraphQLResolveInfo) =>
      loadGrounds([...restsOn.claims, ...restsOn.conventions.map(use => use.id)], graphOf(info, context)),
  },
  Grounds: {
    claims: async (grounds: Grounds, args: PageArgs, context: ApiContext, info: GraphQLResolveInfo) => {
      const graph = graphOf(info, context);
      const list = listDigest('grounds', {}, grounds.claims.join());
      const { after } = pageAsked(args, list, isText);
      const first = pageSize(args.first);
      const from = after === undefined ? 0 : grounds.claims.indexOf(after) + 1;
      const ids = grounds.claims.slice(from, from + first);
      const items = await Promise.all(ids.map(async id => ({ item: await loadLink(id, graph), position: id })));
      return connection({ items, more: from + first < grounds.claims.length }, list);
    },
  },
  ConventionUse: {
    convention: (use: ConventionUse, _args: unknown, context: ApiContext, info: GraphQLResolveInfo) =>
      loadLink(use.id, graphOf(info, context)),
  },
};

/** Keys of each order beside the id. */
const orderKeys = {
  ROOM: { verdict: 'number', margin: 'number' },
  DATE: { first: 'number', last: 'number' },
  TITLE: { sort: 'string' },
} as const satisfies Record<ReachOrder, Readonly<Record<string, 'number' | 'string'>>>;

function isPositionOf(order: ReachOrder): (value: unknown) => value is ReachPosition {
  return (value): value is ReachPosition => {
    const keys = (value ?? {}) as Readonly<Record<string, unknown>>;
    if (keys['order'] !== order || typeof keys['id'] !== 'string') return false;
    return Object.entries(orderKeys[order]).every(([name, type]) => typeof keys[name] === type);
  };
}
