import type { Day } from '../dates/day-bounds.ts';
import { commonRanges } from '../dates/day-ranges.ts';
import type { DateContradiction, DateGrounds, DateReason, DatesNetwork, DayEnd, LinkedDays } from './dates-network.ts';
import { once } from './once.ts';
import type { SolvedPart } from './solved-part.ts';

/** Contradictions may hide others behind them: after so many rounds the days are told as recorded. */
const mostRounds = 20;

/**
 * A part that contradicts itself, with the days that hold whichever of the claims that its contradictions name turns out to
 * be wrong: those left without them all. A variable that they speak of has besides the days recorded for itself.
 */
export function withUndisputedDays(
  part: SolvedPart,
  network: DatesNetwork,
  solve: (network: DatesNetwork) => SolvedPart,
): SolvedPart {
  if (part.consistent) return part;
  const disputed = once(() => new Set(part.contradictions().flatMap(({ reasons }) => variablesIn(reasons))));
  const rest = once(() => undisputedPart(part, network, solve));
  const restOf = (variable: string) => (rest()?.has(variable) ? rest() : undefined);
  const days = (variable: string): LinkedDays => {
    const left = restOf(variable)?.days(variable);
    const own = part.days(variable);
    if (left === undefined || !own.contradictory) return own;
    return disputed().has(variable) ? withinRecorded(own, left) : left;
  };
  const why = (variable: string, end: DayEnd) => {
    if (!part.days(variable).contradictory) return part.why(variable, end);
    const left = restOf(variable);
    const isTold = left !== undefined && dayAt(left.days(variable), end) === dayAt(days(variable), end);
    return isTold ? left.why(variable, end) : [];
  };
  return { ...part, days, why };
}

function dayAt({ linked }: LinkedDays, end: DayEnd): Day | undefined {
  return end === 'FIRST' ? linked.lo : linked.hi;
}

function withinRecorded(own: LinkedDays, left: LinkedDays): LinkedDays {
  const [linked] = commonRanges([own.recorded], [left.linked]);
  return linked === undefined ? own : { ...own, linked, parts: commonRanges(own.parts, [linked]) };
}

/** Solved without the claims in dispute, and without those that are in dispute then; undefined if that does not end soon. */
function undisputedPart(
  part: SolvedPart,
  network: DatesNetwork,
  solve: (network: DatesNetwork) => SolvedPart,
): SolvedPart | undefined {
  let [left, solved] = [network, part];
  for (let round = 0; round < mostRounds; round++) {
    left = withoutDisputed(left, solved.contradictions());
    solved = solve(left);
    if (solved.consistent) return solved;
  }
  return undefined;
}

/** A choice is left aside whole if one of its options is in dispute: to take away that one alone would say more. */
function withoutDisputed(network: DatesNetwork, contradictions: readonly DateContradiction[]): DatesNetwork {
  const ids = new Set(contradictions.flatMap(({ involved }) => involved));
  const isFree = ({ by }: DateGrounds) => !by.some(id => ids.has(id));
  return {
    bounds: network.bounds.filter(isFree),
    links: network.links.filter(isFree),
    choices: network.choices.filter(({ options }) =>
      options.every(({ claim, bounds, links }) => !ids.has(claim) && bounds.every(isFree) && links.every(isFree)),
    ),
  };
}

function variablesIn(reasons: readonly DateReason[]): readonly string[] {
  return reasons.flatMap(reason => {
    if (reason.kind === 'BOUND') return [reason.variable];
    if (reason.kind === 'LINK') return [reason.from, reason.to];
    return reason.options.flatMap(option => variablesIn(option.reasons));
  });
}
