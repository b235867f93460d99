import { compareText } from '../text/compare.ts';
import { boundSteps } from './bound-steps.ts';
import type { Course } from './course.ts';
import { roundedDay } from './least-days.ts';
import { type LeastStep, linkStep } from './least-step.ts';

/**
 * Steps to the least day of a variable that gaps between recorded days made later round after round of a circle of
 * links: no way back shows where that began. The component is solved again, each day with what made it so late.
 * @param enters steps by which a variable of the component is reached from outside, with the day
 */
export function stepsInCircle(
  course: Course,
  names: readonly string[],
  variable: number,
  enters: (member: number) => readonly Entrance[],
): readonly LeastStep[] {
  const { variables, start, of } = course.components;
  const component = of[variable]!;
  const members = Array.from(variables.subarray(start[component], start[component + 1]));
  const queue = members.sort((a, b) => compareText(names[a]!, names[b]!));
  const reached = new Map<number, Reached>();
  const reach = (member: number, steps: readonly LeastStep[], day: number, before?: Reached) => {
    const rounded = roundedDay(course, member, day);
    if (rounded <= (reached.get(member)?.day ?? -Infinity)) return;
    reached.set(member, { day: rounded, before, steps: [...steps, ...boundSteps(course, member, day, rounded)] });
    queue.push(member);
  };
  for (const member of [...queue]) {
    reach(member, [], -Infinity);
    for (const { steps, day } of enters(member)) reach(member, steps, day);
  }
  for (const member of queue) {
    const from = reached.get(member);
    if (from === undefined) continue;
    for (const arc of arcsInOrder(course, names, member)) {
      const step = linkStep(course, arc);
      reach(course.arcs.to[arc]!, [step], from.day + step.weight, from);
    }
  }
  return stepsTo(reached.get(variable));
}

/** A way into a component. */
export interface Entrance {
  readonly steps: readonly LeastStep[];
  readonly day: number;
}

/** How a variable came to a day: the steps since another was reached. */
interface Reached extends Entrance {
  readonly before: Reached | undefined;
}

function stepsTo(reached: Reached | undefined): readonly LeastStep[] {
  const parts: (readonly LeastStep[])[] = [];
  for (let at = reached; at !== undefined; at = at.before) parts.push(at.steps);
  return parts.reverse().flat();
}

/** Arcs from a variable to others of its component. */
function arcsInOrder({ arcs, components: { of } }: Course, names: readonly string[], from: number): readonly number[] {
  return Array.from(arcs.outOf.subarray(arcs.outOfStart[from], arcs.outOfStart[from + 1]))
    .filter(arc => of[arcs.to[arc]!] === of[from] && arcs.weight[arc] !== -Infinity)
    .sort((a, b) => compareText(names[arcs.to[a]!]!, names[arcs.to[b]!]!) || arcs.weight[b]! - arcs.weight[a]!);
}
