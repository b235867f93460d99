import type { WriteBatch } from './graph-store.ts';

/** Ids of the rows of a change that are made from a version, each with the change set of that version. */
export function seenVersions({ put, remove = [] }: WriteBatch): readonly (readonly [id: string, seen: number])[] {
  const all = [
    ...put.map(({ row, seen }) => [row.id, seen] as const),
    ...remove.map(({ id, seen }) => [id, seen] as const),
  ];
  return all.flatMap(([id, seen]) => (seen === undefined ? [] : [[id, seen] as const]));
}
