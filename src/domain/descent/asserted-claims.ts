import type { AnyClaim, AnyRecord } from '../model/row.ts';

/** Claims of which exactly one is true, or, in an open group, something that is not recorded. */
export interface ClaimGroup {
  readonly id: string;
  readonly open: boolean;
  /** Two or more, unless the group is open. */
  readonly members: readonly AnyClaim[];
}

export interface AssertedClaims {
  /** Claims that hold together. */
  readonly outright: readonly AnyClaim[];
  readonly groups: readonly ClaimGroup[];
}

/**
 * Counted claims by how they are asserted: outright, or as alternatives. Where of a group that is not open one member
 * alone counts, that one is asserted outright. A group whose record is missing is not open.
 */
export function assertedClaims(counted: readonly AnyClaim[], records: readonly AnyRecord[]): AssertedClaims {
  const open = new Set(records.flatMap(record => (record.kind === 'Alternatives' && record.open ? [record.id] : [])));
  const byGroup = Map.groupBy(counted, claim => claim.alternativeTo);
  const outright = [...(byGroup.get(undefined) ?? [])];
  const groups: ClaimGroup[] = [];
  for (const [id, members] of byGroup) {
    if (id === undefined) continue;
    if (members.length > 1 || open.has(id)) groups.push({ id, open: open.has(id), members });
    else outright.push(...members);
  }
  return { outright, groups };
}
