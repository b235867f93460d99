import type { GraphQLResolveInfo } from 'graphql';
import type { AnyRow } from '../../domain/model/row.ts';
import type { SearchHit, SearchQuestion } from '../../questions/questions.ts';
import { matchClasses, type SearchPosition } from '../../store/graph-store.ts';
import type { ApiContext } from '../context.ts';
import { type Connection, connection } from '../paging/connection.ts';
import { listDigest } from '../paging/cursor.ts';
import { type PageArgs, pageAsked } from '../paging/page-args.ts';
import { given, type Nullable } from './given.ts';
import { graphAsked, type WhatIfArgs } from './graph-asked.ts';
import { isListPosition } from './list-resolvers.ts';
import { loadLink } from './load.ts';

type SearchArgs = PageArgs & Nullable<Omit<SearchQuestion, 'page'>>;

export async function search(
  _root: unknown,
  args: SearchArgs & Pick<WhatIfArgs, 'asOf'>,
  context: ApiContext,
  info: GraphQLResolveInfo,
): Promise<unknown> {
  const { asOf, ...others } = args;
  const { first: _first, after: _after, ...asked } = given(others);
  const list = listDigest('search', args);
  const page = pageAsked(args, list, isSearchPosition);
  const graph = await graphAsked({ asOf }, info, context);
  const { hits, cut, conventions } = await graph.questions.search({ ...asked, page }, context.ending.signal);
  const found = connection(hits, list);
  const rows = await Promise.all(found.nodes.map(hit => loadLink(hit.id, graph)));
  return { ...withRows(found, rows), cut, conventions };
}

function withRows(found: Connection<SearchHit>, rows: readonly (AnyRow | null)[]): object {
  const edges = found.edges.map((edge, i) => ({ node: rows[i], match: edge.node.match, cursor: edge.cursor }));
  return { edges, nodes: rows, pageInfo: found.pageInfo };
}

function isSearchPosition(value: unknown): value is SearchPosition {
  if (!isListPosition(value)) return false;
  const { match } = value as SearchPosition;
  return match === undefined || matchClasses.includes(match);
}
