import type { GraphStore, WriteBatch } from '../../../src/store/graph-store.ts';

/** A fault that an engine might have. */
export interface Fault {
  readonly fault: string;
  readonly spoil: (store: GraphStore) => Partial<GraphStore>;
}

/** A fault of what is written. */
export function changed(store: GraphStore, change: (batch: WriteBatch) => WriteBatch): Partial<GraphStore> {
  return { write: batch => store.write(change(batch)) };
}

/** A row with its fields in order of their names. */
export function sortedFields<T>(row: T): T {
  return row === undefined
    ? row
    : (Object.fromEntries(Object.entries(row as object).sort(([a], [b]) => (a < b ? -1 : 1))) as T);
}
