import type { CompiledChoice, Course } from './compiled-network.ts';
import { firstCommonDay } from './recorded-domain.ts';

export interface LeastDays {
  /** -Infinity where nothing bounds a variable. */
  readonly days: Float64Array;
  /** False: choices that lead round in a circle were left before they came to rest; days may be earlier than the least. */
  readonly settled: boolean;
}

/** Where a solution is asked for in which one variable is no earlier than a day. */
export interface Raised {
  readonly least: LeastDays;
  readonly variable: number;
  readonly day: number;
}

/** Rounds of choices that lead round in a circle. */
const mostRounds = 1000;

/**
 * The least day of every variable under all arcs, choices and recorded days of a course, last days left aside: if all
 * are within the last days, they are a solution, the earliest in every variable; otherwise there is none. In every
 * component one search by relaxation with a queue (Bellman and Ford; Moore, "The shortest path through a maze", 1959).
 * Linear without loops. No loop of arcs may have a positive sum.
 */
export function leastDays(course: Course, raised?: Raised): LeastDays {
  const { components } = course;
  const days = raised?.least.days.slice() ?? new Float64Array(course.arcs.variables).fill(-Infinity);
  if (raised !== undefined) days[raised.variable] = raised.day;
  let settled = raised?.least.settled ?? true;
  const from = raised === undefined ? 0 : components.of[raised.variable]!;
  const waiting = new Uint8Array(days.length);
  for (let component = from; component < components.count; component += 1) {
    if (!settle(course, component, days, waiting)) settled = false;
  }
  return { days, settled };
}

/** The first day of a variable that is not before `day` and not before any day recorded, outside gaps. */
export function roundedDay({ first, gaps }: Course, variable: number, day: number): number {
  const least = Math.max(day, first[variable]!);
  const bounds = gaps.size === 0 ? undefined : gaps.get(variable);
  return bounds === undefined ? least : firstCommonDay(bounds, least);
}

/** The day from which a choice lets its head be: that of the earliest option, each as late as its latest arc. */
export function dayOfChoice({ options }: CompiledChoice, days: Float64Array): number {
  let earliest = Infinity;
  for (const { arcs } of options) {
    let latest = -Infinity;
    for (const { from, weight } of arcs) latest = Math.max(latest, days[from]! + weight);
    earliest = Math.min(earliest, latest);
  }
  return earliest;
}

function settle(course: Course, component: number, days: Float64Array, waiting: Uint8Array): boolean {
  const { variables, start } = course.components;
  const [begin, end] = [start[component]!, start[component + 1]!];
  for (let at = begin; at < end; at += 1) days[variables[at]!] = enteringDay(course, variables[at]!, days);
  if (end - begin === 1) return true;
  let changed: readonly number[] = Array.from(variables.subarray(begin, end));
  for (let round = 0; round < mostRounds; round += 1) {
    relax(course, component, days, changed, waiting);
    changed = choose(course, component, days);
    if (changed.length === 0) return true;
  }
  return false;
}

/** The day of a variable as its recorded days, arcs and choices have it at present. */
function enteringDay(course: Course, variable: number, days: Float64Array): number {
  const { into, intoStart, from, weight } = course.arcs;
  let day = days[variable]!;
  const end = intoStart[variable + 1]!;
  for (let at = intoStart[variable]!; at < end; at += 1) {
    const arc = into[at]!;
    day = Math.max(day, days[from[arc]!]! + weight[arc]!);
  }
  for (const choice of choicesAt(course, variable)) day = Math.max(day, dayOfChoice(choice, days));
  return roundedDay(course, variable, day);
}

/** @param waiting 1 for variables in the queue; 0 for all before and after */
function relax(
  course: Course,
  component: number,
  days: Float64Array,
  changed: readonly number[],
  waiting: Uint8Array,
): void {
  const { outOf, outOfStart, to, weight } = course.arcs;
  const { of } = course.components;
  const queue = [...changed];
  for (const variable of queue) waiting[variable] = 1;
  for (let next = 0; next < queue.length; next += 1) {
    const variable = queue[next]!;
    waiting[variable] = 0;
    const end = outOfStart[variable + 1]!;
    for (let at = outOfStart[variable]!; at < end; at += 1) {
      const arc = outOf[at]!;
      const target = to[arc]!;
      const day = days[variable]! + weight[arc]!;
      if (of[target] !== component || day <= days[target]!) continue;
      days[target] = roundedDay(course, target, day);
      if (waiting[target] === 0) queue.push(target);
      waiting[target] = 1;
    }
  }
}

/** Variables of a component that its choices make later. */
function choose(course: Course, component: number, days: Float64Array): readonly number[] {
  const { variables, start } = course.components;
  if (course.choices.size === 0) return [];
  const changed: number[] = [];
  for (const variable of variables.subarray(start[component]!, start[component + 1]!)) {
    const day = Math.max(-Infinity, ...choicesAt(course, variable).map(choice => dayOfChoice(choice, days)));
    if (day <= days[variable]!) continue;
    days[variable] = roundedDay(course, variable, day);
    changed.push(variable);
  }
  return changed;
}

const none: readonly CompiledChoice[] = [];

function choicesAt({ choices }: Course, variable: number): readonly CompiledChoice[] {
  return choices.size === 0 ? none : (choices.get(variable) ?? none);
}
