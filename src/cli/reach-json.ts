import type { MarginDays, Reach, ReachRow, VerdictAndMargin } from '../questions/questions.ts';
import { daysJson } from './days-json.ts';

/** The answer with the names of the API: days written out, open ends null. */
export function reachJson(answer: Reach): unknown {
  return {
    target: answer.target,
    objectDay: daysJson(answer.objectDay),
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
    arrival: daysJson(row.arrival),
  };
}

function withMargin({ verdict, margin }: VerdictAndMargin): {
  verdict: string;
  margin: { [N in keyof MarginDays]: number | null };
} {
  return { verdict, margin: { every: margin.every ?? null, some: margin.some ?? null } };
}
