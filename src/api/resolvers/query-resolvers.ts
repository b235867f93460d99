import type { GraphQLResolveInfo } from 'graphql';
import { PlatestemmaError } from '../../errors.ts';
import type { CitationFormat } from '../../questions/questions.ts';
import type { ApiContext } from '../context.ts';
import { graphOf } from '../graph.ts';
import { connection } from '../paging/connection.ts';
import { listDigest } from '../paging/cursor.ts';
import { isNumber, isText, largestPage, type PageArgs, pageAsked, pageSize } from '../paging/page-args.ts';
import { aroundRow } from './asked-around.ts';
import { type ClaimsWanted, claimsAbout, claimsOfKinds } from './claims-about.ts';
import { descent } from './descent-resolvers.ts';
import { given } from './given.ts';
import { graphAsked, type WhatIfArgs } from './graph-asked.ts';
import { lineage } from './lineage-resolvers.ts';
import { listResolvers } from './list-resolvers.ts';
import { isId, loadAsked, loadLink } from './load.ts';
import { reach } from './reach-resolvers.ts';
import { search } from './search-resolver.ts';

interface CitationArgs {
  readonly of: readonly string[];
  readonly format?: CitationFormat | null;
  readonly style?: string | null;
  readonly locale?: string | null;
}

type AsOfArgs = Pick<WhatIfArgs, 'asOf'>;

/** Fields of Query. */
export const queryResolvers = {
  ...listResolvers(),
  reach,
  lineage,
  descent,
  node: async (
    _root: unknown,
    { id, ...args }: { id: string } & AsOfArgs,
    context: ApiContext,
    info: GraphQLResolveInfo,
  ) => loadAsked(id, await graphAsked(args, info, context), aroundRow(info)),
  nodes: async (
    _root: unknown,
    { ids, ...args }: { ids: readonly string[] } & AsOfArgs,
    context: ApiContext,
    info: GraphQLResolveInfo,
  ) => {
    atMost(ids, 'ids');
    const [graph, around] = [await graphAsked(args, info, context), aroundRow(info)];
    return ids.map(id => loadAsked(id, graph, around));
  },
  claims,
  search,
  citation: async (
    _root: unknown,
    { of, asOf, ...how }: CitationArgs & AsOfArgs,
    context: ApiContext,
    info: GraphQLResolveInfo,
  ) => {
    atMost(of, 'of');
    const { questions } = await graphAsked({ asOf }, info, context);
    const { format = 'TEXT', ...styled } = given(how);
    return questions.citation({ of, format, ...styled });
  },
  history: async (
    _root: unknown,
    args: PageArgs & { of: string } & AsOfArgs,
    context: ApiContext,
    info: GraphQLResolveInfo,
  ) => {
    const { questions } = await graphAsked(args, info, context);
    const list = listDigest('history', {}, args.of);
    const asked = pageAsked(args, list, isNumber);
    return connection(isId(args.of) ? await questions.history(args.of, asked) : { items: [], more: false }, list);
  },
  differences: async (
    _root: unknown,
    args: PageArgs & { from: number; to?: number | null },
    { now: { questions } }: ApiContext,
  ) => {
    const list = listDigest('differences', { from: args.from, to: args.to ?? null });
    const { from, to } = given(args);
    const asked = { from, ...(to === undefined ? {} : { to }), page: pageAsked(args, list, isText) };
    return connection(await questions.differences(asked), list);
  },
  changes: async (
    _root: unknown,
    args: { after?: number | null; first?: number | null } & AsOfArgs,
    context: ApiContext,
    info: GraphQLResolveInfo,
  ) => {
    const { questions } = await graphAsked(args, info, context);
    const page = await questions.changes({ first: pageSize(args.first), after: args.after ?? 0 });
    return numbered(page);
  },
  conventions: async (_root: unknown, args: AsOfArgs, context: ApiContext, info: GraphQLResolveInfo) => {
    const { questions, loaders } = await graphAsked(args, info, context);
    const inForce = await questions.conventions();
    return inForce.map(convention => loaders.row(convention.id));
  },
};

/** Fields of what the questions of Query answer. */
export const answerResolvers = {
  Citation: {
    record: (item: { readonly record: string }, _args: unknown, context: ApiContext, info: GraphQLResolveInfo) =>
      loadLink(item.record, graphOf(info, context)),
  },
};

async function claims(
  _root: unknown,
  args: PageArgs & ClaimsWanted & { about?: string | null } & AsOfArgs,
  context: ApiContext,
  info: GraphQLResolveInfo,
): Promise<unknown> {
  const list = listDigest('claims', args);
  const asked = pageAsked(args, list, isText);
  const graph = await graphAsked(args, info, context);
  if (args.about === undefined || args.about === null) {
    if (args.kinds === undefined || args.kinds === null)
      throw new PlatestemmaError('INPUT_INVALID', 'claims: expected "about" or "kinds", came neither');
    return connection(await claimsOfKinds(graph.store, args, asked), list);
  }
  const about = await loadAsked(args.about, graph);
  if (about === null) return connection({ items: [], more: false }, list);
  return connection(await claimsAbout(about, args, asked, graph, info), list);
}

/** Change sets are counted from 1 without gaps, so that their numbers are the cursors. */
function numbered<T>(page: {
  readonly items: readonly { item: T; position: number }[];
  readonly more: boolean;
}): object {
  const edges = page.items.map(({ item, position }) => ({ node: item, cursor: String(position) }));
  return {
    edges,
    nodes: page.items.map(({ item }) => item),
    pageInfo: {
      hasNextPage: page.more,
      hasPreviousPage: false,
      startCursor: edges[0]?.cursor ?? null,
      endCursor: edges.at(-1)?.cursor ?? null,
    },
  };
}

function atMost(ids: readonly string[], field: string): void {
  if (ids.length > largestPage)
    throw new PlatestemmaError('QUERY_TOO_COSTLY', `${field}: expected at most ${largestPage}, came ${ids.length}`);
}
