import type { DayRange } from '../domain/dates/day-bounds.ts';
import { dateVariable } from '../domain/descent/date-variable.ts';
import type { DateContradiction, LinkedDates, LinkedDays } from '../domain/descent/dates-network.ts';
import type { Contradiction } from './lineage-answer.ts';

export type DaysOf = (
  of: string,
  event: 'made' | 'published',
) => Pick<LinkedDays, 'recorded' | 'linked' | 'contradictory'>;

/** Days of what the network knows; open for what no claim dates. Each is worked out once. */
export function daysIn(dates: LinkedDates): DaysOf {
  const variables = new Set(dates.variables);
  const open: DayRange = {};
  const known = new Map<string, ReturnType<DaysOf>>();
  return (of, event) => {
    const variable = dateVariable(of, event);
    const found = known.get(variable);
    if (found !== undefined) return found;
    const days = variables.has(variable)
      ? dates.days(variable)
      : { recorded: open, linked: open, contradictory: false };
    known.set(variable, days);
    return days;
  };
}

/** Contradictions as an answer tells them: circles, then dates, then handedness. */
export function contradictionsIn(
  circles: readonly Contradiction[],
  dates: LinkedDates,
  mirror: readonly Contradiction[] = [],
): readonly Contradiction[] {
  return [
    ...circles.map(told),
    ...dates
      .contradictions()
      .map(shortest)
      .map(each => ({ ...told(each), daysShort: each.daysShort })),
    ...mirror.map(told),
  ];
}

function told({ code, message, involved }: Contradiction): Contradiction {
  return { code, message, involved };
}

/** The explanation with the fewest claims, where there are several. */
function shortest(contradiction: DateContradiction): DateContradiction {
  return contradiction.smaller ?? contradiction;
}
