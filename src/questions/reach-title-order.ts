import type { EditionFilter, GraphStore, ListPosition } from '../store/graph-store.ts';
import type { Page } from './page.ts';
import type { ReachPosition } from './questions.ts';

/** Ids of editions by title, then id. */
export async function pageByTitle(
  store: GraphStore,
  filter: EditionFilter,
  first: number,
  after: ListPosition | undefined,
  signal?: AbortSignal,
): Promise<Page<string, ReachPosition>> {
  const found = await store.editionsByTitle(filter, after, first + 1, signal);
  return {
    items: found.slice(0, first).map(({ id, sort }) => ({ item: id, position: { order: 'TITLE', sort, id } })),
    more: found.length > first,
  };
}
