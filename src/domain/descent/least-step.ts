import type { Course } from './course.ts';
import type { DateChoice, DateLink } from './dates-network.ts';
import { keyOfBound, keyOfChoice } from './in-order.ts';
import { type DomainBound, firstDayFrom, mirrorDays } from './recorded-domain.ts';

/** A step towards the least day of a variable: a recorded day, a link, or a choice that leaves nothing earlier. */
export type LeastStep = BoundStep | LinkStep | ChoiceStep;

export interface BoundStep {
  readonly kind: 'BOUND';
  readonly variable: number;
  readonly bound: DomainBound;
}

export interface LinkStep {
  readonly kind: 'LINK';
  readonly link: DateLink;
  readonly end: 'LEAST' | 'MOST';
  readonly weight: number;
}

export interface ChoiceStep {
  readonly kind: 'CHOICE';
  readonly choice: DateChoice;
  /** Day from which it lets its variable be. */
  readonly day: number;
  readonly options: readonly OptionSteps[];
}

export interface OptionSteps {
  readonly claim: string;
  readonly steps: readonly LeastStep[];
}

/** The day to which steps lead from nothing. */
export function dayAfter(course: Course, steps: readonly LeastStep[]): number {
  let day = -Infinity;
  for (const step of steps) {
    if (step.kind === 'BOUND') day = firstDayFrom(daysIn(course, step.bound), day);
    else day = step.kind === 'LINK' ? day + step.weight : Math.max(day, step.day);
  }
  return day;
}

/** The days of a bound, counted as the course does. */
export function daysIn({ sign }: Course, { days }: Pick<DomainBound, 'days'>): DomainBound['days'] {
  return sign === 1 ? days : mirrorDays(days);
}

/** What tells two bounds of a variable apart. */
export function keyOfDomainBound({ bound, choice }: DomainBound): string {
  return bound === undefined ? keyOfChoice(choice!) : keyOfBound(bound);
}

/** The link that an arc stands for. */
export function linkStep({ arcs, links }: Course, arc: number): LinkStep {
  const source = arcs.source[arc]!;
  const link = links[Math.floor(source / 2)]!;
  return source % 2 === 0
    ? { kind: 'LINK', link, end: 'LEAST', weight: link.least! }
    : { kind: 'LINK', link, end: 'MOST', weight: 0 - link.most! };
}
