import type { ConventionUse } from '../conventions/convention-use.ts';
import type { ConventionKey, Conventions } from '../conventions/conventions.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import type { AnswerFlag } from './answer-flag.ts';
import { bestCandidate, type Judged, stayContradicts } from './best-candidate.ts';
import { type Candidate, candidatesOf, type PartCandidates } from './candidates.ts';
import { joinVerdicts } from './join-verdicts.ts';
import { aheadKey } from './published-window.ts';
import type { ObjectDay, ReachEdition, ReachStay, ReachTarget } from './reach-edition-input.ts';
import type { ReachOutcome, Reason } from './reach-outcome.ts';
import { reasonsOf } from './reach-reasons.ts';
import { type StayCases, stayCases } from './stay-cases.ts';
import { contradictory, isReversed, type VerdictAndMargin } from './verdict.ts';

/**
 * Whether an edition could have been where the target was by the day of its object. Pure: depends on the arguments
 * alone, so that it may be worked once for all editions of the same outlets and window. Linear in outlets times stays.
 */
export function reachEdition(edition: ReachEdition, target: ReachTarget, conventions: Conventions): ReachOutcome {
  const contradiction = contradictionIn(edition, target);
  if (contradiction !== undefined) return contradicted(edition, target, contradiction);
  const parts = candidatesOf(edition, target.stays, conventions);
  const cases = stayCases(
    target.stays.filter(stay => !stayContradicts(stay)),
    conventions.get('stay.exactUpTo'),
  );
  const days = target.objectDay.filter(({ headline }) => !isReversed(headline));
  const headline = answer(
    parts,
    cases,
    days.map(day => day.headline),
  );
  if (headline === undefined) {
    const access = parts.find(part => part.contradiction !== undefined)?.contradiction;
    const message = 'somebody had it before it can have arrived there';
    return { ...contradicted(edition, target, { code: 'ACCESS_CONTRADICTS', message }), access };
  }
  const marked = days.some(day => day.cautious !== undefined);
  const cautious = marked ? answer(parts, cases, days.map(cautiously)) : undefined;
  return outcome(edition, target, headline, cautious, cases, conventions);
}

interface Answer extends VerdictAndMargin {
  readonly decides: Candidate | undefined;
}

/** Undefined: there is no case. */
function answer(
  parts: readonly PartCandidates[],
  { cases, exact }: StayCases,
  objectDays: readonly DayRange[],
): Answer | undefined {
  const judgedBy = (stays: readonly ReachStay[]) =>
    joinVerdicts(
      parts
        .filter(({ contradiction }) => contradiction === undefined)
        .flatMap(({ candidates }) => objectDays.map(day => bestOf(candidates.filter(isAmong(stays)), day))),
    );
  const judged = cases.map(judgedBy).filter(each => each !== undefined);
  const joined = joinVerdicts(exact ? judged : bounded(judged));
  if (joined === undefined) return undefined;
  return { verdict: joined.verdict, margin: joined.margin, decides: joined.decides.decides.candidate };
}

/** Of the stays outside groups, then of all: in time by the first alone is in time, too late by all is too late. */
function bounded<J extends VerdictAndMargin>(judged: readonly J[]): readonly J[] {
  const [certain, all] = judged;
  if (certain?.verdict === 'IN_EVERY_CASE') return [certain];
  return all?.verdict === 'IN_NO_CASE' ? [all] : judged;
}

/** Nowhere to see it: too late, without room. */
type Best = VerdictAndMargin & { readonly candidate: Candidate | undefined };

function bestOf(candidates: readonly Candidate[], object: DayRange): Best {
  const best: Judged | undefined = bestCandidate(candidates, object);
  return best ?? { verdict: 'IN_NO_CASE', margin: {}, candidate: undefined };
}

/** An access of those asked about holds wherever they were. */
function isAmong(stays: readonly ReachStay[]): (candidate: Candidate) => boolean {
  return ({ stay, access }) => stays.includes(stay) || access?.byAsked === true;
}

function cautiously({ headline, cautious }: ObjectDay): DayRange {
  return cautious ?? headline;
}

function contradictionIn({ published }: ReachEdition, { objectDay, stays }: ReachTarget): Reason | undefined {
  if (published.reckoned.length === 0) {
    return { code: 'DATINGS_CONTRADICT', message: 'its recorded dates have no day in common' };
  }
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

function contradicted({ published }: ReachEdition, { flags = [] }: ReachTarget, reason: Reason): ReachOutcome {
  const all = new Set([...published.flags, ...flags]);
  return { ...contradictory, arrival: {}, flags: [...all], conventions: [], why: [reason] };
}

function outcome(
  edition: ReachEdition,
  target: ReachTarget,
  headline: Answer,
  cautious: Answer | undefined,
  { exact }: StayCases,
  conventions: Conventions,
): ReachOutcome {
  const { verdict, margin, decides } = headline;
  const flags = new Set<AnswerFlag>([
    ...edition.published.flags,
    ...(target.flags ?? []),
    ...(decides?.lag.flags ?? []),
  ]);
  if (cautious !== undefined) flags.add('MARK_WINDOW');
  if (!exact) flags.add('INEXACT');
  const { class: kind } = edition.published;
  const keys: ConventionKey[] = kind === 'OTHER' ? [] : [aheadKey(kind)];
  if (cautious !== undefined) keys.push('decoratedWithin');
  if (target.stays.some(({ group }) => group !== undefined)) keys.push('stay.exactUpTo');
  const second = cautious === undefined ? undefined : { verdict: cautious.verdict, margin: cautious.margin };
  return {
    verdict,
    margin,
    cautious: second,
    outlet: decides?.outlet,
    stay: decides?.stay,
    access: decides?.access,
    lag: decides?.lag,
    arrival: decides === undefined ? {} : decides.shown,
    flags: [...flags],
    conventions: inOrder([...keys.map(key => conventions.use(key)), ...(decides?.lag.route.conventions ?? [])]),
    why: reasonsOf({
      verdict,
      margin,
      cautious: second,
      decides,
      ahead: kind === 'OTHER' ? 0 : conventions.get(aheadKey(kind)),
    }),
  };
}

function inOrder(uses: readonly ConventionUse[]): readonly ConventionUse[] {
  return uses.toSorted((a, b) => (a.key < b.key ? -1 : 1));
}
