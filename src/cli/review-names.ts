import { claimSentence, namedInSentence } from '../domain/model/claim-sentence.ts';
import { isClaimKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRow } from '../domain/model/row.ts';
import type { TableReview } from '../questions/table-review.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { namedRows } from './named-rows.ts';

/** What the rows of a review are called: records by their names, claims by what they say. */
export type ReviewNames = (row: AnyRow) => string;

/** Most rows that are asked for at once. */
const stretch = 500;

export async function reviewNames(store: GraphStore, { changed, added }: TableReview): Promise<ReviewNames> {
  const rows = [...changed, ...added].map(({ row }) => row);
  const ids = [...new Set(rows.flatMap(row => (isClaimKind(row.kind) ? namedInSentence(row as AnyClaim) : [])))];
  let known: readonly AnyRow[] = rows;
  for (let at = 0; at < ids.length; at += stretch) {
    const found = await store.rows(ids.slice(at, at + stretch));
    known = [...known, ...found.filter(row => row !== undefined)];
  }
  const names = await namedRows(store, known, []);
  return row => (isClaimKind(row.kind) ? claimSentence(row as AnyClaim, names.called) : names.called(row.id));
}
