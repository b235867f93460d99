import { dateReasons } from './date-reasons.ts';
import type { DateReason, DatesNetwork, DayEnd } from './dates-network.ts';
import { explainLeast } from './explain-least.ts';
import { fewestClaims } from './fewest-claims.ts';
import { type Solution, solutionOf } from './solution.ts';
import { toldContradictions } from './told-contradictions.ts';

/** Why the days of a variable begin or end where they do, with no claim too many; the network contradicts nothing. */
export function explainedDay(solution: Solution, variable: string, end: DayEnd): readonly DateReason[] {
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
  const [contradiction] = toldContradictions(solutionOf({ ...network, bounds: [...bounds, later] }), 1);
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
