import { formatDay } from '../dates/calendar.ts';
import { compareText } from '../text/compare.ts';
import { boundSteps } from './bound-steps.ts';
import type { CompiledNetwork } from './compiled-network.ts';
import type { Course } from './course.ts';
import { dateReasons, involvedIn, lastDayReason, linkReason } from './date-reasons.ts';
import type { DateContradiction, DateReason } from './dates-network.ts';
import { explainLeast } from './explain-least.ts';
import { fewerSteps } from './fewer-steps.ts';
import { dayAfter, keyOfDomainBound, type LeastStep, linkStep } from './least-step.ts';
import { type DomainBound, firstCommonDay, lastDayOf } from './recorded-domain.ts';

/**
 * Why the least day of a variable is later than its last: the recorded days and links that make it so late, and the
 * bound that ends first.
 */
export function dateContradiction(
  { names, domains, forward }: CompiledNetwork,
  days: Float64Array,
  variable: number,
): DateContradiction {
  const least = days[variable]!;
  const reached = firstCommonDay(
    domains[variable]!.bounds.map(bound => bound.days),
    least,
  );
  const bound = missedBound(forward, variable, reached);
  const last = lastDayOf(bound.days);
  const worst = [...explainLeast(forward, days, names, variable), ...boundSteps(forward, variable, least, reached)];
  const told = (steps: readonly LeastStep[]): DateContradiction => {
    const day = dayAfter(forward, steps);
    const ending = lastDayReason(forward, names[variable]!, bound, day);
    const message = `${names[variable]}: not before ${formatDay(day)} and not after ${formatDay(last)}, ${words(day - last)}`;
    return contradiction('DATES', message, day - last, [...dateReasons(forward, names, steps), ending]);
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

/** Of the bounds that a day is too late for, the one that ends first. */
function missedBound(course: Course, variable: number, day: number): DomainBound {
  const missed = course.domains[variable]!.bounds.filter(bound => lastDayOf(bound.days) < day);
  return missed.toSorted(
    (a, b) => lastDayOf(a.days) - lastDayOf(b.days) || compareText(keyOfDomainBound(a), keyOfDomainBound(b)),
  )[0]!;
}
