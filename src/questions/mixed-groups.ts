import { areAlternatives, groupOf, matterWords } from '../domain/model/alternative.ts';
import type { AnyClaim, AnyRow } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';

const none: ReadonlySet<string> = new Set();

/**
 * Claims that do not fit the group of alternatives that they come into, by id: those of another kind than the others of the group,
 * or about something else. Of rows that come together the first stays. What stood there before is left: `check` tells of it, and
 * of what two processes wrote at once.
 * @param rows that are to be written together
 * @param removed ids of rows that are taken out with that
 */
export async function mixedInGroups(
  store: Pick<GraphStore, 'rows' | 'inGroups'>,
  rows: readonly AnyRow[],
  removed = none,
): Promise<ReadonlyMap<string, PlatestemmaError>> {
  const errors = new Map<string, PlatestemmaError>();
  const claims = rows.filter(row => groupOf(row) !== undefined) as readonly AnyClaim[];
  if (claims.length === 0) return errors;
  const before = await store.rows(claims.map(({ id }) => id));
  const come = new Set(claims.filter((claim, i) => comesIn(claim, before[i])));
  const groups = new Set([...come].map(claim => groupOf(claim)!));
  const changed = new Set([...rows.map(({ id }) => id), ...removed]);
  const there = (await store.inGroups([...groups])).flat().filter(({ id }) => !changed.has(id));
  const first = new Map<string, AnyClaim>();
  for (const claim of [...there, ...claims.filter(each => !come.has(each)), ...come]) {
    const group = groupOf(claim);
    if (group === undefined) continue;
    const other = first.get(group) ?? claim;
    first.set(group, other);
    if (come.has(claim) && !areAlternatives(claim, other)) errors.set(claim.id, mixed(group, claim, other));
  }
  return errors;
}

/** Not what was so before. */
function comesIn(claim: AnyClaim, before: AnyRow | undefined): boolean {
  return before === undefined || groupOf(before) !== groupOf(claim) || !areAlternatives(claim, before as AnyClaim);
}

function mixed(group: string, claim: AnyClaim, other: AnyClaim): PlatestemmaError {
  return new PlatestemmaError(
    'INPUT_INVALID',
    `${claim.id}, alternativeTo: expected what ${other.id} in "${group}" is, ${matterWords(other)}, came ${matterWords(claim)}`,
    { place: { key: claim.id, field: 'alternativeTo' } },
  );
}
