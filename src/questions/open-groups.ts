import type { AnyClaim } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';

/** Ids of the groups of alternatives, among those the claims name, that are open: or something not recorded. */
export async function openGroups(store: GraphStore, claims: readonly AnyClaim[]): Promise<ReadonlySet<string>> {
  const named = [...new Set(claims.flatMap(claim => claim.alternativeTo ?? []))];
  const groups = await store.rows(named);
  return new Set(groups.flatMap(group => (group?.kind === 'Alternatives' && group.open === true ? [group.id] : [])));
}
