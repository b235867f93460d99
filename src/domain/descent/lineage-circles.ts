import type { LineageStep } from './lineage-graph.ts';
import { inCircles } from './walk-circles.ts';

/** Steps by which something would be its own source. */
export interface CircleContradiction {
  readonly code: 'CIRCLE';
  readonly message: string;
  /** Ids of the claims, in the order in which they lead round. */
  readonly involved: readonly string[];
}

/** A shortest circle of each set of records that lead to each other by copying, printing and casting, by its first id. */
export function lineageCircles(steps: readonly LineageStep[]): readonly CircleContradiction[] {
  const leading = steps.filter(step => step.kind !== 'Detail');
  const records = [...new Set(leading.flatMap(({ copy, source }) => [copy, source]))].sort();
  const asCopy = Map.groupBy(leading, step => step.copy);
  return inCircles(
    records,
    leading.map(({ copy, source }) => [copy, source]),
  )
    .flatMap(circle => shortestCircle(new Set(circle.toSorted()), asCopy))
    .sort((a, b) => (a[0]!.copy < b[0]!.copy ? -1 : 1))
    .map(circle => ({
      code: 'CIRCLE',
      message:
        circle.length === 1
          ? 'this would make it a source of itself'
          : `these ${circle.length} claims lead in a circle: each would be a source of its own source`,
      involved: circle.map(step => step.by),
    }));
}

function shortestCircle(
  members: ReadonlySet<string>,
  asCopy: ReadonlyMap<string, readonly LineageStep[]>,
): readonly (readonly LineageStep[])[] {
  let shortest: readonly LineageStep[] | undefined;
  for (const member of members) {
    const circle = wayBack(member, members, asCopy);
    if (circle !== undefined && circle.length < (shortest?.length ?? Infinity)) shortest = circle;
  }
  return shortest === undefined ? [] : [shortest];
}

/** Breadth first to sources among the members, until one is the beginning. */
function wayBack(
  start: string,
  members: ReadonlySet<string>,
  asCopy: ReadonlyMap<string, readonly LineageStep[]>,
): readonly LineageStep[] | undefined {
  const before = new Map<string, LineageStep>();
  const queue = [start];
  for (const at of queue) {
    for (const step of asCopy.get(at) ?? []) {
      if (step.source === start) return [...way(at, start, before), step];
      if (!members.has(step.source) || before.has(step.source)) continue;
      before.set(step.source, step);
      queue.push(step.source);
    }
  }
  return undefined;
}

function way(to: string, start: string, before: ReadonlyMap<string, LineageStep>): readonly LineageStep[] {
  const steps: LineageStep[] = [];
  for (let at = to; at !== start; at = steps.at(-1)!.copy) steps.push(before.get(at)!);
  return steps.reverse();
}
