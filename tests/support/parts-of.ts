import type { GraphStore, HistoryPart } from '../../src/store/graph-store.ts';

/** All parts of the history of a store. */
export async function partsOf(store: Pick<GraphStore, 'history'>): Promise<readonly HistoryPart[]> {
  const parts: HistoryPart[] = [];
  for await (const part of store.history()) parts.push(part);
  return parts;
}
