import { invariant } from '../../errors.ts';
import { dateRoom } from './date-room.ts';
import type { DatesNetwork } from './dates-network.ts';
import { explainedDay } from './explained-day.ts';
import { contradictoryDays, linkedDays } from './linked-days.ts';
import { once } from './once.ts';
import { isConsistent, solutionOf } from './solution.ts';
import type { SolvedPart } from './solved-part.ts';
import { toldContradictions } from './told-contradictions.ts';

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
  const contradictions = once(() => toldContradictions(solution, mostContradictions));
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
    why: (variable, end) => (contradictory(number(variable)) ? [] : explainedDay(solution, variable, end)),
    contradictions,
    contradictionCount: loops.length + contradicted.length,
    room: dateRoom(solution, contradictions),
  };
}
