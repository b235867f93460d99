import type { CompiledChoice, CompiledOption } from './course.ts';
import { keyOfLink, keyOfOption, sorted } from './in-order.ts';
import { dayOfChoice } from './least-days.ts';
import type { ChoiceStep, LeastStep, OptionSteps } from './least-step.ts';

/**
 * Why a choice leaves no earlier day than it does: for each of its options one link that is as late or later, with the
 * steps to its beginning. Undefined where some option leaves all days.
 */
export function explainedChoice(
  compiled: CompiledChoice,
  days: Float64Array,
  explain: (variable: number) => readonly LeastStep[],
): ChoiceStep | undefined {
  const day = dayOfChoice(compiled, days);
  if (day === -Infinity) return undefined;
  const options = sorted(compiled.options, each => keyOfOption(each.option));
  return {
    ...{ kind: 'CHOICE', choice: compiled.choice, day },
    options: options.map(option => explainedOption(option, day, days, explain)),
  };
}

function explainedOption(
  { option, arcs }: CompiledOption,
  day: number,
  days: Float64Array,
  explain: (variable: number) => readonly LeastStep[],
): OptionSteps {
  const late = arcs.filter(({ from, weight }) => days[from]! + weight >= day);
  const { from, weight, link } = sorted(late, each => keyOfLink(each.link))[0]!;
  return { claim: option.claim, steps: [...explain(from), { kind: 'LINK', link, end: 'LEAST', weight }] };
}
