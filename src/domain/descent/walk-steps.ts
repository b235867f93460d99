import type { ClaimKindName } from '../model/kinds.ts';

/** Roles of the claims that a walk crosses: the one on the side of the copy, and the one on the side of the source. */
export const claimSteps = {
  Copying: { copy: 'copy', source: 'source' },
  PrintedFrom: { copy: 'picture', source: 'matrix' },
  Casting: { copy: 'cast', source: 'parent' },
  EditionDescent: { copy: 'later', source: 'earlier' },
} as const satisfies Partial<Record<ClaimKindName, { readonly copy: string; readonly source: string }>>;

export type ClaimStep = keyof typeof claimSteps;

/** What a walk crosses: the claims of a kind from role to role, or the field `of` of details. */
export type WalkStep = ClaimStep | 'Detail';

export const claimStepNames = Object.keys(claimSteps) as readonly ClaimStep[];

/** Most steps that any walk may take. */
export const deepestWalk = 30;
