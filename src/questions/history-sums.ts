import type { HistorySums } from '../domain/model/history.ts';
import { claimKindNames, recordKindNames } from '../domain/model/kinds.ts';

const kindNames: readonly string[] = [...recordKindNames, ...claimKindNames];
const order: readonly string[] = ['changeSet', ...kindNames, 'removed', 'origin', 'awaited', 'checkpoint'];

/** Sorts that one of two histories has: change sets first, then kinds as they are declared, then what has no history. */
export function sortsOf(a: HistorySums, b: HistorySums): readonly string[] {
  return [...new Set([...order, ...Object.keys(a), ...Object.keys(b)])].filter(sort => sort in a || sort in b);
}

/** Sorts of which two histories have not the same lines. */
export function differingSorts(a: HistorySums, b: HistorySums): readonly string[] {
  return sortsOf(a, b).filter(sort => a[sort] !== b[sort]);
}

/** How many there are of a sort; of all kinds of rows together without one. */
export function countOf(sums: HistorySums, sort?: string): number {
  const sorts = sort === undefined ? kindNames : [sort];
  return sorts.reduce((all, name) => all + Number.parseInt(sums[name] ?? '0', 10), 0);
}
