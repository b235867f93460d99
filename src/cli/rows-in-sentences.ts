import { namedInSentence } from '../domain/model/claim-sentence.ts';
import { isClaimKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRow } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { type NamedRows, namedRows } from './named-rows.ts';

/** Rows by id, with all that the claims among them name in their sentences. */
export function rowsInSentences(store: GraphStore, rows: readonly AnyRow[]): Promise<NamedRows> {
  const claims = rows.filter((row): row is AnyClaim => isClaimKind(row.kind));
  return namedRows(store, rows, claims.flatMap(namedInSentence));
}
