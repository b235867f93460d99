import { compareText } from '../text/compare.ts';
import type { Course } from './course.ts';
import { type BoundStep, daysIn, keyOfDomainBound } from './least-step.ts';
import { firstDayFrom } from './recorded-domain.ts';

/** Recorded days that take a variable from the day it was reached on to a later day: as few as there are. */
export function boundSteps(course: Course, variable: number, reached: number, goal: number): readonly BoundStep[] {
  const steps: BoundStep[] = [];
  let day = reached;
  while (day < goal) {
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
