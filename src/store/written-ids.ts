import type { WriteBatch } from './graph-store.ts';

/** Ids of all rows that a batch puts and removes. A batch that has none makes no change set. */
export function writtenIds({ packed = [], put, remove = [] }: WriteBatch): readonly string[] {
  return [...packed.flatMap(({ ids }) => ids), ...put.map(({ row }) => row.id), ...remove.map(({ id }) => id)];
}
