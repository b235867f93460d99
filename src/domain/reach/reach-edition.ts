import type { ConventionUse } from '../conventions/convention-use.ts';
import type { ConventionKey, Conventions } from '../conventions/conventions.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import type { AnswerFlag } from './answer-flag.ts';
import { type Candidate, shownArrival } from './candidates.ts';
import { type Answer, answer, type Contradiction, editionJudge } from './judge-edition.ts';
import { aheadKey } from './published-window.ts';
import type { ObjectDay, ReachEdition, ReachTarget } from './reach-edition-input.ts';
import type { ReachOutcome } from './reach-outcome.ts';
import { reasonsOf } from './reach-reasons.ts';
import type { StayCases } from './stay-cases.ts';
import { contradictory } from './verdict.ts';

/**
 * Whether an edition could have been where the target was by the day of its object. Pure: depends on the arguments
 * alone, so that it may be worked once for all editions of the same outlets and window. Linear in outlets times stays.
 */
export function reachEdition(edition: ReachEdition, target: ReachTarget, conventions: Conventions): ReachOutcome {
  const judged = editionJudge(target, conventions)(edition);
  if ('contradiction' in judged) return contradicted(edition, target, judged, conventions);
  const { headline, parts, cases, days } = judged;
  const marked = days.some(day => day.cautious !== undefined);
  const cautious = marked ? answer(parts, cases, days.map(cautiously)) : undefined;
  return outcome(edition, target, headline, cautious, cases, conventions);
}

function cautiously({ headline, cautious }: ObjectDay): DayRange {
  return cautious ?? headline;
}

function contradicted(
  edition: ReachEdition,
  { flags = [] }: ReachTarget,
  { contradiction, access, ways = [] }: Contradiction,
  conventions: Conventions,
): ReachOutcome {
  const all = new Set([...edition.published.flags, ...flags]);
  const uses = usesOf(editionKeys(edition), ways, conventions);
  const outcome = { ...contradictory, arrival: {}, flags: [...all], conventions: uses, why: [contradiction] };
  return access === undefined ? outcome : { ...outcome, access };
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
  const keys = editionKeys(edition);
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
    arrival: decides === undefined ? {} : shownArrival(decides),
    flags: [...flags],
    conventions: usesOf(keys, [...headline.bounds, ...(cautious?.bounds ?? [])], conventions),
    why: reasonsOf({
      verdict,
      margin,
      cautious: second,
      decides,
      ahead: kind === 'OTHER' ? 0 : conventions.get(aheadKey(kind)),
    }),
  };
}

/** What the days of an edition rest on, and whether an access was in the town. */
function editionKeys({ published, accesses = [] }: ReachEdition): ConventionKey[] {
  return [
    ...(published.byImprint === undefined ? [] : [aheadKey(published.byImprint)]),
    ...(accesses.some(({ at, byAsked }) => at !== undefined && byAsked !== true) ? (['route.sameTown'] as const) : []),
  ];
}

function usesOf(
  keys: readonly ConventionKey[],
  ways: readonly Candidate[],
  conventions: Conventions,
): readonly ConventionUse[] {
  const all = [...keys, ...ways.flatMap(({ lag }) => lag.route.conventions.map(({ key }) => key))];
  return conventions.uses(all);
}
