import type { CompiledChoice, Course } from './course.ts';
import { firstCommonDay } from './recorded-domain.ts';

/** Where a solution is asked for in which one variable is no earlier than a day. */
export interface Raised {
  readonly least: Float64Array;
  readonly variable: number;
  readonly day: number;
}

/**
 * The least day of every variable under all arcs, choices and recorded days of a course, last days left aside; -Infinity
 * where nothing bounds it. If all are within the last days they are a solution, the earliest in every variable; otherwise
 * there is none. In every component one search by relaxation with a queue (Bellman and Ford; Moore, "The shortest path
 * through a maze", 1959). Linear without loops. No loop of arcs may have a positive sum, and none may lead over a choice.
 */
export function leastDays(course: Course, raised?: Raised): Float64Array {
  const { components } = course;
  const days = raised?.least.slice() ?? new Float64Array(course.arcs.variables).fill(-Infinity);
  if (raised !== undefined) days[raised.variable] = raised.day;
  const from = raised === undefined ? 0 : components.of[raised.variable]!;
  const waiting = new Uint8Array(days.length);
  for (let component = from; component < components.count; component += 1) settle(course, component, days, waiting);
  return days;
}

/**
 * The first day of a variable that is not before `day` and not before any day recorded, outside gaps. After the last day
 * nothing is rounded, so that a later day never gives an earlier one.
 */
export function roundedDay({ first, last, gaps }: Course, variable: number, day: number): number {
  const least = Math.max(day, first[variable]!);
  const bounds = gaps.size === 0 || least > last[variable]! ? undefined : gaps.get(variable);
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

function settle(course: Course, component: number, days: Float64Array, waiting: Uint8Array): void {
  const { variables, start } = course.components;
  const [begin, end] = [start[component]!, start[component + 1]!];
  for (let at = begin; at < end; at += 1) days[variables[at]!] = enteringDay(course, variables[at]!, days);
  if (end - begin > 1) relax(course, component, days, waiting);
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
function relax(course: Course, component: number, days: Float64Array, waiting: Uint8Array): void {
  const { outOf, outOfStart, to, weight } = course.arcs;
  const { of, variables, start } = course.components;
  const queue = Array.from(variables.subarray(start[component], start[component + 1]));
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

const none: readonly CompiledChoice[] = [];

function choicesAt({ choices }: Course, variable: number): readonly CompiledChoice[] {
  return choices.size === 0 ? none : (choices.get(variable) ?? none);
}
