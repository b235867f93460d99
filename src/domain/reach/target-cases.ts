import type { Conventions } from '../conventions/conventions.ts';
import { stayContradicts } from './best-candidate.ts';
import type { ObjectDay, ReachStay, ReachTarget } from './reach-edition-input.ts';
import type { Reason } from './reach-outcome.ts';
import { type StayCases, stayCases } from './stay-cases.ts';
import { isReversed } from './verdict.ts';

/** What depends on the target alone: the sets of stays that may be true together, and the days of the object that are possible. */
export interface TargetCases {
  readonly cases: StayCases;
  readonly days: readonly ObjectDay[];
  /** Why there is no case at all. */
  readonly contradiction: Reason | undefined;
}

export function targetCases(target: ReachTarget, conventions: Conventions): TargetCases {
  const stays = target.stays.filter(stay => !stayContradicts(stay));
  return {
    cases: stayCases(stays, conventions.get('stay.exactUpTo')),
    days: target.objectDay.filter(({ headline }) => !isReversed(headline)),
    contradiction: contradictionIn(target),
  };
}

function contradictionIn({ objectDay, stays }: ReachTarget): Reason | undefined {
  if (objectDay.every(({ headline }) => isReversed(headline))) {
    return { code: 'OBJECT_CONTRADICTS', message: 'the recorded dates of the object have no day in common' };
  }
  const stay = stays.find(each => stayContradicts(each) && !hasRival(each, stays));
  if (stay === undefined) return undefined;
  return { code: 'STAY_CONTRADICTS', message: `the stay at ${stay.place.name} ended before it began` };
}

/** Whether its group leaves another possibility. */
function hasRival({ group }: ReachStay, stays: readonly ReachStay[]): boolean {
  if (group === undefined) return false;
  return group.open || stays.some(each => each.group?.id === group.id && !stayContradicts(each));
}
