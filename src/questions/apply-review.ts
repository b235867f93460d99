import type { ChangeSet, GraphStore } from '../store/graph-store.ts';
import { applyChanges } from './apply-changes.ts';
import type { Contradiction } from './lineage-answer.ts';
import { problemsOf } from './problems-of.ts';
import type { TableReview } from './table-review.ts';

export interface AppliedReview {
  readonly changeSet: number;
  /** Contradictions in which what was written takes part; undefined: too much was written to look for them. */
  readonly problems: readonly Contradiction[] | undefined;
}

/** Most rows around which contradictions are looked for: each is as much work as a question. */
const mostLookedAt = 200;

/**
 * Writes what a review found to be changed or new, in one change set. It belongs to no intake: what people edit in tables
 * counts as edited here.
 * @param changeSet the one that the review was made for
 * @returns undefined where there is nothing to write
 * @throws REVISION_MOVED if one of the rows was changed since the review: nothing is written then
 */
export async function applyReview(
  store: GraphStore,
  { changed, added }: TableReview,
  changeSet: Omit<ChangeSet, 'number'>,
): Promise<AppliedReview | undefined> {
  if (changed.length + added.length === 0) return undefined;
  const rows = [...changed, ...added].map(({ row }) => row);
  const { changeSet: number } = await applyChanges(store, {
    rows,
    added: await neverThere(
      store,
      added.map(({ row }) => row.id),
    ),
    seen: new Map(changed.map(({ row, now }) => [row.id, now])),
    changeSet,
  });
  return { changeSet: number, problems: rows.length > mostLookedAt ? undefined : await problemsOf(store, rows) };
}

/** A row that was taken out may be put again. */
async function neverThere(store: GraphStore, ids: readonly string[]): Promise<ReadonlySet<string>> {
  const never = new Set<string>();
  for (const id of ids) if ((await store.versions(id)).length === 0) never.add(id);
  return never;
}
