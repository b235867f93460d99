import { groupOf, matterOf } from '../domain/model/alternative.ts';
import type { AnyClaim, AnyRow } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';

/**
 * Claims that do not fit the group of alternatives that they are to stand in, by id: those of another kind than the others of the
 * group, or about something else. Of rows that come together the first stays.
 * @param rows that are to be written together
 */
export async function mixedInGroups(
  store: Pick<GraphStore, 'inGroups'>,
  rows: readonly AnyRow[],
): Promise<ReadonlyMap<string, PlatestemmaError>> {
  const errors = new Map<string, PlatestemmaError>();
  const groups = [...new Set(rows.flatMap(row => groupOf(row) ?? []))];
  if (groups.length === 0) return errors;
  const written = new Set(rows.map(({ id }) => id));
  const there = (await store.inGroups(groups)).flat().filter(({ id }) => !written.has(id));
  const first = new Map<string, AnyClaim>();
  for (const row of [...there, ...rows]) {
    const group = groupOf(row);
    if (group === undefined) continue;
    const claim = row as AnyClaim;
    const other = first.get(group) ?? claim;
    first.set(group, other);
    if (written.has(claim.id) && matterOf(claim) !== matterOf(other)) errors.set(claim.id, mixed(group, claim, other));
  }
  return errors;
}

function mixed(group: string, claim: AnyClaim, other: AnyClaim): PlatestemmaError {
  return new PlatestemmaError(
    'INPUT_INVALID',
    `${claim.id}, alternativeTo: expected what the others of "${group}" are, a ${matterOf(other)}, came a ${matterOf(claim)}`,
    { place: { key: claim.id, field: 'alternativeTo' } },
  );
}
