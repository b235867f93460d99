import type { Conventions } from '../conventions/conventions.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import { bestCandidate, type Judged } from './best-candidate.ts';
import { type Candidate, candidatesOf, type PartCandidates } from './candidates.ts';
import { joinVerdicts } from './join-verdicts.ts';
import { lagBetween } from './lag-between.ts';
import type { ObjectDay, ReachEdition, ReachStay, ReachTarget, RecordedAccess } from './reach-edition-input.ts';
import type { Reason } from './reach-outcome.ts';
import type { StayCases } from './stay-cases.ts';
import { targetCases } from './target-cases.ts';
import type { VerdictAndMargin } from './verdict.ts';

/** The verdict on an edition with all that reasons are given from. */
export interface JudgedEdition {
  readonly headline: Answer;
  readonly parts: readonly PartCandidates[];
  readonly cases: StayCases;
  /** Days of the object that are possible. */
  readonly days: readonly ObjectDay[];
}

/** Why there is no possible case. */
export interface Contradiction {
  readonly contradiction: Reason;
  readonly access?: RecordedAccess | undefined;
  /** Ways that rule out the accesses, if they do. */
  readonly ways?: readonly Candidate[];
}

/**
 * Judges editions by every way they may have come, for every case of the stays and days of the object. What depends on
 * the target alone is worked once.
 * @param between how the lag between places is found: as `lagBetween` does it
 */
export function editionJudge(
  target: ReachTarget,
  conventions: Conventions,
  between: typeof lagBetween = lagBetween,
): (edition: ReachEdition) => JudgedEdition | Contradiction {
  const { cases, days, contradiction } = targetCases(target, conventions);
  const headlines = days.map(day => day.headline);
  return edition => {
    if (edition.published.reckoned.length === 0) return noDay;
    if (contradiction !== undefined) return { contradiction };
    const parts = candidatesOf(edition, target.stays, conventions, between);
    const headline = answer(parts, cases, headlines);
    if (headline !== undefined) return { headline, parts, cases, days };
    const ways = parts.flatMap(part => part.contradiction ?? []);
    return {
      contradiction: { code: 'ACCESS_CONTRADICTS', message: 'somebody had it before it can have arrived there' },
      access: ways[0]?.access,
      ways,
    };
  };
}

const noDay: Contradiction = {
  contradiction: { code: 'DATINGS_CONTRADICT', message: 'its recorded dates have no day in common' },
};

/** A verdict with the way that decides it. */
export interface Answer extends VerdictAndMargin {
  readonly decides: Candidate | undefined;
  /** All ways that room is told from, over all cases. */
  readonly bounds: readonly Candidate[];
}

/** The verdict over all cases for the days of the object; undefined: there is no case. */
export function answer(
  parts: readonly PartCandidates[],
  { cases, exact }: StayCases,
  objectDays: readonly DayRange[],
): Answer | undefined {
  const judgedBy = (stays: readonly ReachStay[]) => {
    const best: Best[] = [];
    for (const { candidates, contradiction } of parts) {
      if (contradiction !== undefined) continue;
      const among = candidates.every(isAmong(stays)) ? candidates : candidates.filter(isAmong(stays));
      for (const day of objectDays) best.push(bestOf(among, day));
    }
    return joinVerdicts(best);
  };
  const judged = cases.map(judgedBy).filter(each => each !== undefined);
  const joined = joinVerdicts(exact ? judged : bounded(judged));
  if (joined === undefined) return undefined;
  return {
    verdict: joined.verdict,
    margin: joined.margin,
    decides: joined.decides.decides.candidate,
    bounds: joined.bounds.flatMap(({ bounds }) => bounds.flatMap(({ candidate }) => candidate ?? [])),
  };
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
