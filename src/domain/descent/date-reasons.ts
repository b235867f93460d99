import type { Course } from './course.ts';
import type {
  BoundReason,
  ChoiceReason,
  DateChoice,
  DateReason,
  DayBound,
  DayEnd,
  LinkReason,
} from './dates-network.ts';
import { daysIn, type LeastStep, type LinkStep } from './least-step.ts';
import { type DomainBound, firstDayFrom, lastDayOf } from './recorded-domain.ts';

/** Steps towards the least day of a course as reasons, each with the day or the days that it gives. */
export function dateReasons(
  course: Course,
  names: readonly string[],
  steps: readonly LeastStep[],
): readonly DateReason[] {
  return reasonsWith(course, names, new Map())(steps);
}

export function linkReason({ link, end }: LinkStep): LinkReason {
  const { from, to, rule, by } = link;
  return { kind: 'LINK', from, to, end, days: (end === 'LEAST' ? link.least : link.most) ?? 0, rule, by };
}

/** Why a variable cannot be on `day` or after it: the last day that a bound allows. */
export function lastDayReason(course: Course, variable: string, bound: DomainBound, day: number): DateReason {
  return boundReason(course, variable, bound, day);
}

/** Ids that reasons rest on, without repetition, in their order. */
export function involvedIn(reasons: readonly DateReason[]): readonly string[] {
  const ids = new Set<string>();
  const seen = new Set<readonly DateReason[]>();
  const visit = (list: readonly DateReason[]) => {
    if (seen.has(list)) return;
    seen.add(list);
    for (const reason of list) {
      if (reason.kind !== 'CHOICE') for (const id of reason.by) ids.add(id);
      else for (const option of reason.options) visit(option.reasons);
    }
  };
  visit(reasons);
  return [...ids];
}

type Reasons = (steps: readonly LeastStep[]) => readonly DateReason[];

function reasonsWith(
  course: Course,
  names: readonly string[],
  known: Map<readonly LeastStep[], readonly DateReason[]>,
): Reasons {
  const reasonsOf: Reasons = steps => {
    const before = known.get(steps);
    if (before !== undefined) return before;
    const reasons: DateReason[] = [];
    let day = -Infinity;
    for (const step of steps) {
      if (step.kind === 'BOUND') {
        reasons.push(boundReason(course, names[step.variable]!, step.bound, day));
        day = firstDayFrom(daysIn(course, step.bound), day);
      } else if (step.kind === 'LINK') {
        reasons.push(linkReason(step));
        day += step.weight;
      } else {
        const options = step.options.map(option => ({ claim: option.claim, reasons: reasonsOf(option.steps) }));
        reasons.push(choiceReason(step.choice, options));
        day = Math.max(day, step.day);
      }
    }
    known.set(steps, reasons);
    return reasons;
  };
  return reasonsOf;
}

function choiceReason({ group }: DateChoice, options: ChoiceReason['options']): ChoiceReason {
  return { kind: 'CHOICE', ...(group === undefined ? {} : { group }), options };
}

function boundReason(course: Course, variable: string, { days, bound, choice }: DomainBound, from: number): DateReason {
  if (bound !== undefined) return endReason(course, variable, { ...bound, days }, from);
  const options = choice!.options.map(option => ({
    claim: option.claim,
    reasons: option.bounds.map(each => endReason(course, variable, each, from)),
  }));
  return choiceReason(choice!, options);
}

/** The first day of a bound that is not before `from`, or its last day if there is none, in the sense of the course. */
function endReason(course: Course, variable: string, bound: DayBound, from: number): BoundReason {
  const days = daysIn(course, { days: bound.days });
  const first = firstDayFrom(days, from);
  const [early, late]: readonly DayEnd[] = course.sign === 1 ? ['FIRST', 'LAST'] : ['LAST', 'FIRST'];
  const end = first === Infinity ? late! : early!;
  const reached = first === Infinity ? lastDayOf(days) : first;
  const day = course.sign === 1 ? reached : 0 - reached;
  const { rule, by, recorded, earlyBy = [] } = bound;
  const ahead = end === 'FIRST' && recorded !== undefined ? firstDayFrom(recorded, day) - day : 0;
  if (ahead === 0 || ahead === Infinity) return { kind: 'BOUND', variable, end, day, rule, by };
  return { kind: 'BOUND', variable, end, day, rule, by: [...by, ...earlyBy], ahead };
}
