/** Arcs between numbered variables: the day of `to` is no earlier than the day of `from` plus `weight`. */
export interface ArcEnds {
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** -Infinity says nothing. */
  readonly weight: Float64Array;
  /** 2n where the least days of link n say it, 2n + 1 where its most days do; -1: only that a choice lies between. */
  readonly source: Int32Array;
}

/**
 * Arcs by variable: `into` lists those that end at variable v from `intoStart[v]` to before `intoStart[v + 1]`, `outOf`
 * those that begin there.
 */
export interface DateArcs extends ArcEnds {
  readonly variables: number;
  readonly into: Int32Array;
  readonly intoStart: Int32Array;
  readonly outOf: Int32Array;
  readonly outOfStart: Int32Array;
}

/** Arcs with their lists; linear. */
export function dateArcs(variables: number, ends: ArcEnds): DateArcs {
  const [into, intoStart] = listed(variables, ends.to);
  const [outOf, outOfStart] = listed(variables, ends.from);
  return { ...ends, variables, into, intoStart, outOf, outOfStart };
}

/** The same arcs seen against the course of time, for days counted backwards. */
export function againstTime({ from, to, into, intoStart, outOf, outOfStart, ...arcs }: DateArcs): DateArcs {
  return {
    ...{ ...arcs, from: to, to: from },
    ...{ into: outOf, intoStart: outOfStart, outOf: into, outOfStart: intoStart },
  };
}

/** Numbers of the arcs in order of one of their ends, and where each variable begins. */
function listed(variables: number, end: Int32Array): readonly [arcs: Int32Array, start: Int32Array] {
  const start = new Int32Array(variables + 1);
  for (const variable of end) start[variable + 1]! += 1;
  for (let v = 0; v < variables; v += 1) start[v + 1]! += start[v]!;
  const place = start.slice();
  const arcs = new Int32Array(end.length);
  for (let arc = 0; arc < end.length; arc += 1) {
    const at = place[end[arc]!]!++;
    arcs[at] = arc;
  }
  return [arcs, start];
}
