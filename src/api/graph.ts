import type { GraphQLResolveInfo } from 'graphql';
import type { AskedQuestions } from '../questions/questions.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { ApiContext } from './context.ts';
import type { Loaders } from './loaders/loaders.ts';

/** A graph that a field at the top asks about, and from which all below it is read: as it is recorded, was, or would be. */
export interface Graph {
  readonly store: GraphStore;
  readonly questions: AskedQuestions;
  /** Gather what a request asks of the store into few calls; live as long as the request, or until it changes something. */
  readonly loaders: Loaders;
}

/** The graph that a field belongs to. */
export function graphOf({ path }: Pick<GraphQLResolveInfo, 'path'>, { now, otherwise }: ApiContext): Graph {
  return otherwise.size === 0 ? now : (otherwise.get(topOf(path)) ?? now);
}

/** The name under which the field at the top answers. */
export function topOf(path: GraphQLResolveInfo['path']): string | number {
  let top = path;
  while (top.prev !== undefined) top = top.prev;
  return top.key;
}
