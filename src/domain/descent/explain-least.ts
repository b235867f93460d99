import { boundSteps } from './bound-steps.ts';
import type { Course } from './course.ts';
import { explainedChoice } from './explain-choice.ts';
import { keyOfChoice, keyOfLink, sorted } from './in-order.ts';
import { roundedDay } from './least-days.ts';
import { type ChoiceStep, type LeastStep, type LinkStep, linkStep } from './least-step.ts';
import { stepsInCircle } from './steps-in-circle.ts';

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
    const steps = wayBack(search, variable, false) ?? wayBack(search, variable, true) ?? roundAbout(search, variable);
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
    if (course.first[at] === days[at]) return stepsFrom(search, at, boundSteps(course, at, -Infinity, days[at]!), back);
    const choices = overChoices ? choiceSteps(search, at) : [];
    const choice = choices.find(({ day }) => givesDay(course, days, at, day));
    if (choice !== undefined)
      return stepsFrom(search, at, [choice, ...boundSteps(course, at, choice.day, days[at]!)], back);
    for (const { from, step } of supports(search, at)) if (!back.has(from)) back.set(from, { step, towards: at });
  }
  return undefined;
}

/** Steps to a day that gaps made later round after round. */
function roundAbout(search: Search, variable: number): readonly LeastStep[] {
  const { course, days, names } = search;
  const { arcs, components } = course;
  const explain = explainer(search);
  const enters = (member: number) => {
    const outside = Array.from(arcs.into.subarray(arcs.intoStart[member], arcs.intoStart[member + 1])).filter(
      arc =>
        components.of[arcs.from[arc]!] !== components.of[member] &&
        days[arcs.from[arc]!]! + arcs.weight[arc]! > -Infinity,
    );
    return [
      ...outside.map(arc => {
        const step = linkStep(course, arc);
        return { steps: [...explain(arcs.from[arc]!), step], day: days[arcs.from[arc]!]! + step.weight };
      }),
      ...choiceSteps(search, member).map(choice => ({ steps: [choice], day: choice.day })),
    ];
  };
  return stepsInCircle(course, names, variable, enters);
}

function stepsFrom(
  { course, days }: Search,
  start: number,
  opening: readonly LeastStep[],
  back: ReadonlyMap<number, Back | undefined>,
): readonly LeastStep[] {
  const steps = [...opening];
  for (let at = start, way = back.get(at); way !== undefined; way = back.get(at)) {
    const reached = days[at]! + way.step.weight;
    at = way.towards;
    steps.push(way.step, ...boundSteps(course, at, reached, days[at]!));
  }
  return steps;
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

/** Choices that leave a variable no earlier day than some, in order. */
function choiceSteps(search: Search, variable: number): readonly ChoiceStep[] {
  const choices = search.course.choices.get(variable) ?? [];
  const steps = choices.flatMap(choice => explainedChoice(choice, search.days, explainer(search)) ?? []);
  return sorted(steps, step => keyOfChoice(step.choice));
}
