import { invariant } from '../../errors.ts';
import { dateContradiction, loopContradiction } from './date-contradictions.ts';
import { dateReasons } from './date-reasons.ts';
import { dateRoom } from './date-room.ts';
import type { DateContradiction, DateReason, DatesNetwork, DayEnd } from './dates-network.ts';
import { explainLeast } from './explain-least.ts';
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
    consistent: loops.length === 0 && contradicted.length === 0,
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

function contradictionsOf(
  { compiled, least, loops, contradicted }: Solution,
  most: number,
): readonly DateContradiction[] {
  const ofLoops = loops.slice(0, most).map(loop => loopContradiction(compiled, loop));
  const late = contradicted.slice(0, most - ofLoops.length);
  return [...ofLoops, ...late.map(variable => dateContradiction(compiled, least, variable))];
}

function explained({ network, compiled, least, last }: Solution, variable: string, end: DayEnd): readonly DateReason[] {
  const { names, numbers, forward, backward } = compiled;
  const v = numbers.get(variable)!;
  if (end === 'LAST' && last.byChoice.has(v)) return explainedByChoice(network, variable, last.days[v]!);
  const course = end === 'FIRST' ? forward : backward;
  const days = end === 'FIRST' ? least : last.days.map(day => 0 - day);
  return dateReasons(course, names, explainLeast(course, days, names, v));
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
