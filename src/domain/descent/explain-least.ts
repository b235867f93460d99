import { compareText } from '../text/compare.ts';
import type { CompiledChoice, CompiledOption, Course } from './compiled-network.ts';
import { keyOfChoice, keyOfLink, keyOfOption, sorted } from './in-order.ts';
import { roundedDay } from './least-days.ts';
import {
  type ChoiceStep,
  dayAfter,
  daysIn,
  keyOfDomainBound,
  type LeastStep,
  type LinkStep,
  linkStep,
  type OptionSteps,
  withoutNeedless,
} from './least-step.ts';
import { firstDayFrom } from './recorded-domain.ts';

/**
 * The fewest steps that give a variable its least day: breadth first, back over links that leave no room, to a variable
 * whose own recorded days say it; over a choice only where no way leads round it. Empty for an open day. Among equals
 * the first by name. Linear, and once more for every choice on the way.
 */
export function explainLeast(
  course: Course,
  days: Float64Array,
  names: readonly string[],
  variable: number,
): readonly LeastStep[] {
  return explainer({ course, days, names, known: new Map() })(variable);
}

interface Search {
  readonly course: Course;
  readonly days: Float64Array;
  readonly names: readonly string[];
  readonly known: Map<number, readonly LeastStep[]>;
}

function explainer(search: Search): (variable: number) => readonly LeastStep[] {
  return variable => {
    const { known, days } = search;
    const before = known.get(variable);
    if (before !== undefined) return before;
    if (days[variable] === -Infinity) return [];
    const steps = wayBack(search, variable, false) ?? wayBack(search, variable, true) ?? [];
    known.set(variable, steps);
    return steps;
  };
}

/** The way a variable was reached on the search back: by which link, towards which variable. */
interface Back {
  readonly step: LinkStep;
  readonly towards: number;
}

function wayBack(search: Search, variable: number, overChoices: boolean): readonly LeastStep[] | undefined {
  const { course, days } = search;
  const back = new Map<number, Back | undefined>([[variable, undefined]]);
  for (const at of back.keys()) {
    if (course.first[at] === days[at]) return stepsFrom(search, at, boundSteps(search, at, -Infinity), back);
    const choice = overChoices ? choiceStep(search, at) : undefined;
    if (choice !== undefined) return stepsFrom(search, at, [choice, ...boundSteps(search, at, choice.day)], back);
    for (const { from, step } of supports(search, at)) if (!back.has(from)) back.set(from, { step, towards: at });
  }
  return undefined;
}

function stepsFrom(
  search: Search,
  start: number,
  opening: readonly LeastStep[],
  back: ReadonlyMap<number, Back | undefined>,
): readonly LeastStep[] {
  const { course, days } = search;
  const steps = [...opening];
  for (let at = start, way = back.get(at); way !== undefined; way = back.get(at)) {
    const reached = days[at]! + way.step.weight;
    at = way.towards;
    steps.push(way.step, ...boundSteps(search, at, reached));
  }
  return withoutNeedless(course, steps, dayAfter(course, steps));
}

/** Links that alone give a variable its day, in order of name. */
function supports({ course, days, names }: Search, variable: number) {
  const { into, intoStart, from, weight } = course.arcs;
  const found = Array.from(into.subarray(intoStart[variable], intoStart[variable + 1]))
    .filter(arc => weight[arc] !== -Infinity && givesDay(course, days, variable, days[from[arc]!]! + weight[arc]!))
    .map(arc => ({ from: from[arc]!, step: linkStep(course, arc) }));
  if (found.length < 2) return found;
  return sorted(found, ({ from: start, step }) => `${names[start]} ${step.end} ${keyOfLink(step.link)}`);
}

function givesDay(course: Course, days: Float64Array, variable: number, reached: number): boolean {
  return reached > -Infinity && roundedDay(course, variable, reached) === days[variable];
}

/** Recorded days that take a variable from the day it was reached on to its least day: as few as there are. */
function boundSteps({ course, days }: Search, variable: number, reached: number): readonly LeastStep[] {
  const steps: LeastStep[] = [];
  let day = reached;
  while (day < days[variable]!) {
    const next = latestBound(course, variable, day);
    if (next === undefined || next.day <= day) break;
    steps.push({ kind: 'BOUND', variable, bound: next.bound });
    day = next.day;
  }
  return steps;
}

function latestBound(course: Course, variable: number, from: number) {
  const reached = course.domains[variable]!.bounds.map(bound => ({
    bound,
    day: firstDayFrom(daysIn(course, bound), from),
  }));
  return reached
    .filter(({ day }) => day < Infinity)
    .sort((a, b) => b.day - a.day || compareText(keyOfDomainBound(a.bound), keyOfDomainBound(b.bound)))[0];
}

function choiceStep(search: Search, variable: number): ChoiceStep | undefined {
  const choices = search.course.choices.get(variable) ?? [];
  const steps = choices.flatMap(choice => explainedChoice(search, choice) ?? []);
  return sorted(steps, step => keyOfChoice(step.choice))[0];
}

/** Undefined where some option leaves an earlier day. */
function explainedChoice(search: Search, { choice, head, options }: CompiledChoice): ChoiceStep | undefined {
  const explained: (OptionSteps & { readonly day: number })[] = [];
  for (const option of sorted(options, each => keyOfOption(each.option))) {
    const found = explainedOption(search, head, option);
    if (found === undefined) return undefined;
    explained.push(found);
  }
  const day = Math.min(...explained.map(option => option.day));
  return { kind: 'CHOICE', choice, day, options: explained.map(({ claim, steps }) => ({ claim, steps })) };
}

function explainedOption(search: Search, head: number, { option, arcs }: CompiledOption) {
  const { course, days } = search;
  const explain = explainer(search);
  for (const { from, weight, link } of sorted(arcs, each => keyOfLink(each.link))) {
    const reached = days[from]! + weight;
    if (reached === -Infinity || roundedDay(course, head, reached) < days[head]!) continue;
    const before = explain(from);
    if (before.length === 0) continue;
    const steps = [...before, { kind: 'LINK', link, end: 'LEAST', weight } as const];
    return { claim: option.claim, steps, day: reached };
  }
  return undefined;
}
