import { formatDay } from '../dates/calendar.ts';
import { compareText } from '../text/compare.ts';
import type { CompiledNetwork, Course } from './compiled-network.ts';
import { dateReasons, involvedIn, lastDayReason, linkReason } from './date-reasons.ts';
import type { DateContradiction, DateReason } from './dates-network.ts';
import { explainLeast } from './explain-least.ts';
import { fewerSteps } from './fewer-steps.ts';
import { dayAfter, keyOfDomainBound, type LeastStep, linkStep, withoutNeedless } from './least-step.ts';
import { type DomainBound, lastDayOf } from './recorded-domain.ts';

/**
 * Why the least day of a variable is later than its last: the recorded days and links that make it so late, and the
 * bound that ends first. None can be left out.
 */
export function dateContradiction(
  { names, forward }: CompiledNetwork,
  days: Float64Array,
  variable: number,
): DateContradiction {
  const bound = missedBound(forward, days, variable);
  const last = lastDayOf(bound.days);
  const worst = withoutNeedless(forward, explainLeast(forward, days, names, variable), last + 1);
  const told = (steps: readonly LeastStep[]): DateContradiction => {
    const reached = dayAfter(forward, steps);
    const ending = lastDayReason(forward, names[variable]!, bound, reached);
    const message = `${names[variable]}: not before ${formatDay(reached)} and not after ${formatDay(last)}, ${words(reached - last)}`;
    return contradiction('DATES', message, reached - last, [...dateReasons(forward, names, steps), ending]);
  };
  const fewer = fewerSteps(forward, names, variable, last, worst);
  return { ...told(worst), ...(fewer === undefined ? {} : { smaller: told(fewer) }) };
}

/** Links that lead back to a variable later than itself, beginning with the variable that is first by name. */
export function loopContradiction({ names, forward }: CompiledNetwork, loop: readonly number[]): DateContradiction {
  const nameOf = (arc: number | undefined) => names[forward.arcs.from[arc!]!]!;
  const start = loop.indexOf(loop.toSorted((a, b) => compareText(nameOf(a), nameOf(b)))[0]!);
  const steps = [...loop.slice(start), ...loop.slice(0, start)].map(arc => linkStep(forward, arc));
  const late = steps.reduce((sum, { weight }) => sum + weight, 0);
  const message = `${nameOf(loop[start])}: these links lead back to it later than itself, ${words(late)}`;
  return contradiction('LOOP', message, late, steps.map(linkReason));
}

function words(days: number): string {
  return `${days} ${days === 1 ? 'day' : 'days'} short`;
}

function contradiction(
  code: DateContradiction['code'],
  message: string,
  daysShort: number,
  reasons: readonly DateReason[],
): DateContradiction {
  return { code, message, involved: involvedIn(reasons), daysShort, reasons };
}

/** Of the bounds that the least day is too late for, the one that ends first. */
function missedBound(course: Course, days: Float64Array, variable: number): DomainBound {
  const missed = course.domains[variable]!.bounds.filter(bound => lastDayOf(bound.days) < days[variable]!);
  return missed.toSorted(
    (a, b) => lastDayOf(a.days) - lastDayOf(b.days) || compareText(keyOfDomainBound(a), keyOfDomainBound(b)),
  )[0]!;
}
