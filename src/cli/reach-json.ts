import { formatDay } from '../domain/dates/calendar.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';
import type { MarginDays, Reach, ReachRow, VerdictAndMargin } from '../questions/questions.ts';

/** The answer with the names of the API: days written out, open ends null. */
export function reachJson(answer: Reach): unknown {
  return {
    target: answer.target,
    objectDay: dayBounds(answer.objectDay),
    counts: answer.counts,
    editions: { nodes: answer.rows.items.map(({ item }) => rowJson(item)), hasNextPage: answer.rows.more },
    grounds: answer.grounds,
  };
}

function rowJson(row: ReachRow): unknown {
  return {
    ...row,
    ...withMargin(row),
    ...(row.cautious === undefined ? {} : { cautious: withMargin(row.cautious) }),
    recorded: withMargin(row.recorded),
    arrival: dayBounds(row.arrival),
  };
}

function withMargin({ verdict, margin }: VerdictAndMargin): {
  verdict: string;
  margin: { [N in keyof MarginDays]: number | null };
} {
  return { verdict, margin: { every: margin.every ?? null, some: margin.some ?? null } };
}

function dayBounds(range: DayRange): { first: string | null; last: string | null } {
  return {
    first: range.lo === undefined ? null : formatDay(range.lo),
    last: range.hi === undefined ? null : formatDay(range.hi),
  };
}
