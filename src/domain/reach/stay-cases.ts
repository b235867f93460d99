import type { ReachStay } from './reach-edition-input.ts';

/** The sets of stays that may be true together. */
export interface StayCases {
  readonly cases: readonly (readonly ReachStay[])[];
  /** False: too many groups, and `cases` are the stays outside groups, then all of them: no more than bounds. */
  readonly exact: boolean;
}

/** Every choice of one stay a group beside those outside groups; of an open group, none may be true. */
export function stayCases(stays: readonly ReachStay[], exactUpTo: number): StayCases {
  const certain = stays.filter(({ group }) => group === undefined);
  const groups = [...Map.groupBy(stays, ({ group }) => group?.id).entries()].filter(([id]) => id !== undefined);
  if (groups.length > exactUpTo) return { cases: [certain, stays], exact: false };
  let cases: readonly (readonly ReachStay[])[] = [certain];
  for (const [, members] of groups) {
    const open = members.some(({ group }) => group?.open === true);
    const choices: readonly (readonly ReachStay[])[] = [...members.map(stay => [stay]), ...(open ? [[]] : [])];
    cases = cases.flatMap(sofar => choices.map(choice => [...sofar, ...choice]));
  }
  return { cases, exact: true };
}
