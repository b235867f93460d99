import type { GraphQLResolveInfo } from 'graphql';
import { type RecordKindName, recordKindNames, recordKinds } from '../../domain/model/kinds.ts';
import type { ListPosition } from '../../store/graph-store.ts';
import type { ApiContext } from '../context.ts';
import { connection } from '../paging/connection.ts';
import { listDigest } from '../paging/cursor.ts';
import { type PageArgs, pageAsked } from '../paging/page-args.ts';
import { graphAsked, type WhatIfArgs } from './graph-asked.ts';
import { loadLink } from './load.ts';

type ListResolver = (
  root: unknown,
  args: PageArgs & Pick<WhatIfArgs, 'asOf'>,
  context: ApiContext,
  info: GraphQLResolveInfo,
) => unknown;

/** The root connection of every kind of record, by label. Conventions are asked for by a question of their own. */
export function listResolvers(): Record<string, ListResolver> {
  const listed = recordKindNames.filter(kind => kind !== 'Convention');
  return Object.fromEntries(listed.map(kind => [recordKinds[kind].plural, listResolver(kind)]));
}

function listResolver(kind: RecordKindName): ListResolver {
  return async (_root, args, context, info) => {
    const list = listDigest(recordKinds[kind].plural, args);
    const { first, after } = pageAsked(args, list, isListPosition);
    const graph = await graphAsked(args, info, context);
    const found = await graph.store.list(kind, after, first + 1);
    const items = await Promise.all(
      found.slice(0, first).map(async ({ sort, id }) => ({ item: await loadLink(id, graph), position: { sort, id } })),
    );
    return {
      ...connection({ items, more: found.length > first }, list),
      totalCount: () => graph.store.count(kind),
    };
  };
}

export function isListPosition(value: unknown): value is ListPosition {
  const { sort, id } = (value ?? {}) as Partial<Record<'sort' | 'id', unknown>>;
  return typeof sort === 'string' && typeof id === 'string';
}
