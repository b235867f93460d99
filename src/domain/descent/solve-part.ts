import { invariant } from '../../errors.ts';
import { dateContradiction, loopContradiction } from './date-contradictions.ts';
import { dateReasons } from './date-reasons.ts';
import { dateRoom } from './date-room.ts';
import type { DateContradiction, DateReason, DatesNetwork, DayEnd } from './dates-network.ts';
import { explainLeast } from './explain-least.ts';
import { fewestClaims } from './fewest-claims.ts';
import { contradictoryDays, linkedDays } from './linked-days.ts';
import { once } from './once.ts';
import { type Solution, solutionOf } from './solution.ts';
import type { SolvedPart } from './solved-part.ts';

/** Solves a network without choices of mixed form. Explanations are made when they are asked for. */
export function solvePart(network: DatesNetwork, mostContradictions: number): SolvedPart {
  const solution = solutionOf(network);
  const { compiled, least, last, loops, contradicted, contradictory } = solution;
  const { names, numbers, domains } = compiled;
  const number = (variable: string) => {
    const found = numbers.get(variable);
    invariant(found !== undefined, `a variable that the network does not have is asked for: ${variable}`);
    return found;
  };
  const contradictions = once(() => contradictionsOf(solution, mostContradictions));
  return {
    names,
    has: variable => numbers.has(variable),
    consistent: isConsistent(solution),
    exact: last.exact,
    days: variable => {
      const v = number(variable);
      return contradictory(v) ? contradictoryDays(domains[v]!) : linkedDays(domains[v]!, least[v]!, last.days[v]!);
    },
    asRecorded: variable => contradictoryDays(domains[number(variable)]!),
    why: (variable, end) => (contradictory(number(variable)) ? [] : explained(solution, variable, end)),
    contradictions,
    contradictionCount: loops.length + contradicted.length,
    room: dateRoom(solution, contradictions),
  };
}

/** The first contradictions, each with no claim too many; what then comes out the same is told once. */
function contradictionsOf(solution: Solution, most: number): readonly DateContradiction[] {
  const { network, compiled, least, loops, contradicted } = solution;
  const ofLoops = loops.slice(0, most).map(loop => loopContradiction(compiled, loop));
  const late = contradicted.slice(0, most - ofLoops.length);
  const found = [...ofLoops, ...late.map(variable => dateContradiction(compiled, least, variable))];
  const told = found.map(({ smaller, ...worst }) => {
    const fewest = withFewestClaims(network, worst);
    return smaller === undefined ? fewest : withSmaller(fewest, withFewestClaims(network, smaller));
  });
  return [...new Map(told.map(each => [each.involved.join(' '), each])).values()];
}

function withFewestClaims(network: DatesNetwork, told: DateContradiction): DateContradiction {
  const fewer = fewestClaims(network, told.reasons, each => !isConsistent(solutionOf(each)));
  if (fewer === undefined) return told;
  const { compiled, least, loops, contradicted } = solutionOf(fewer);
  const [loop] = loops;
  return loop === undefined ? dateContradiction(compiled, least, contradicted[0]!) : loopContradiction(compiled, loop);
}

function withSmaller(worst: DateContradiction, smaller: DateContradiction): DateContradiction {
  if (smaller.involved.length >= worst.involved.length) return worst;
  return smaller.daysShort < worst.daysShort ? { ...worst, smaller } : smaller;
}

function isConsistent({ loops, contradicted }: Solution): boolean {
  return loops.length === 0 && contradicted.length === 0;
}

function explained(solution: Solution, variable: string, end: DayEnd): readonly DateReason[] {
  const { network, compiled, last } = solution;
  const v = compiled.numbers.get(variable)!;
  if (end === 'LAST' && last.byChoice.has(v)) return explainedByChoice(network, variable, last.days[v]!);
  const reasons = reasonsFor(solution, variable, end);
  const day = dayAt(solution, variable, end);
  const says = (each: DatesNetwork) => dayAt(solutionOf(each), variable, end) === day;
  const fewer = fewestClaims(network, reasons, says);
  return fewer === undefined ? reasons : reasonsFor(solutionOf(fewer), variable, end);
}

function reasonsFor({ compiled, least, last }: Solution, variable: string, end: DayEnd): readonly DateReason[] {
  const { names, numbers, forward, backward } = compiled;
  const course = end === 'FIRST' ? forward : backward;
  const days = end === 'FIRST' ? least : last.days.map(day => 0 - day);
  return dateReasons(course, names, explainLeast(course, days, names, numbers.get(variable)!));
}

/** Undefined for a variable that is not there. */
function dayAt({ compiled, least, last }: Solution, variable: string, end: DayEnd): number | undefined {
  const v = compiled.numbers.get(variable);
  return v === undefined ? undefined : (end === 'FIRST' ? least : last.days)[v];
}

const supposed = 'supposed';

/** What a variable would contradict on the day after its last: from there back to it. */
function explainedByChoice(
  { bounds, ...network }: DatesNetwork,
  variable: string,
  last: number,
): readonly DateReason[] {
  const later = { variable, days: [{ lo: last + 1 }], rule: supposed, by: [] };
  const [contradiction] = contradictionsOf(solutionOf({ ...network, bounds: [...bounds, later] }), 1);
  return withoutSupposed(contradiction?.reasons ?? []).toReversed();
}

function withoutSupposed(reasons: readonly DateReason[]): readonly DateReason[] {
  return reasons
    .filter(reason => reason.kind === 'CHOICE' || reason.rule !== supposed)
    .map(reason =>
      reason.kind === 'CHOICE'
        ? { ...reason, options: reason.options.map(each => ({ ...each, reasons: withoutSupposed(each.reasons) })) }
        : reason,
    );
}
