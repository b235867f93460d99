import type { HistoryPart } from '../domain/model/history.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { transferMark } from './transfer-mark.ts';

/** A store as the parts of its history at one moment. What a transfer noted for itself is no part. */
export async function* historyOf(store: GraphStore): AsyncGenerator<HistoryPart> {
  for await (const part of store.history()) {
    if (part.part !== 'checkpoint' || part.checkpoint.intake !== transferMark) yield part;
  }
}
