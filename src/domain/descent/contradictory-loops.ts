import type { DateArcs } from './date-arcs.ts';
import type { StrongComponents } from './strong-components.ts';

export interface ContradictoryLoops {
  /** Arcs of each loop, in order; no two loops share one. */
  readonly loops: readonly (readonly number[])[];
  /** The arcs without those of the loops. */
  readonly arcs: DateArcs;
}

/** Loops to be found in one component; with more the rest of its arcs is left aside. */
const mostLoops = 100;

/**
 * Loops of arcs that would make a day later than itself, whatever the dates. One search in each component from all its
 * variables at once; the arcs that made them late last are searched for a loop each time as many as there are variables
 * have changed (Cherkassky and Goldberg, "Negative-cycle detection algorithms", Mathematical Programming 85, 1999).
 */
export function contradictoryLoops(arcs: DateArcs, components: StrongComponents): ContradictoryLoops {
  const suspects = componentsWithLoops(arcs, components);
  if (suspects.length === 0) return { loops: [], arcs };
  const weight = arcs.weight.slice();
  const open = { ...arcs, weight };
  const loops: (readonly number[])[] = [];
  const last = new Int32Array(arcs.variables);
  const late = new Float64Array(arcs.variables);
  const waiting = new Uint8Array(arcs.variables);
  for (const c of suspects) {
    const members = components.variables.subarray(components.start[c], components.start[c + 1]);
    const before = loops.length;
    for (;;) {
      const loop = loopWithin(open, components.of, members, { last, late, waiting });
      if (loop === undefined) break;
      loops.push(loop);
      const enough = loops.length - before === mostLoops;
      for (const arc of enough ? arcsWithin(open, components.of, members) : loop) weight[arc] = -Infinity;
    }
  }
  return { loops, arcs: loops.length === 0 ? arcs : open };
}

/** Components of more than one variable, and those of one with an arc to itself; ascending. */
function componentsWithLoops({ from, to }: DateArcs, { of }: StrongComponents): readonly number[] {
  const found = new Set<number>();
  for (let arc = 0; arc < from.length; arc += 1) {
    if (of[from[arc]!] === of[to[arc]!]) found.add(of[from[arc]!]!);
  }
  return [...found].sort((a, b) => a - b);
}

function arcsWithin(arcs: DateArcs, of: Int32Array, members: Int32Array): readonly number[] {
  return Array.from(members).flatMap(v =>
    Array.from(arcs.outOf.subarray(arcs.outOfStart[v], arcs.outOfStart[v + 1])).filter(a => of[arcs.to[a]!] === of[v]),
  );
}

interface Lateness {
  /** Arc that made a variable late last; -1: none. */
  readonly last: Int32Array;
  /** Days by which a variable is later than it might be. */
  readonly late: Float64Array;
  /** 1 for variables in the queue. */
  readonly waiting: Uint8Array;
}

function loopWithin(
  arcs: DateArcs,
  of: Int32Array,
  members: Int32Array,
  { last, late, waiting }: Lateness,
): readonly number[] | undefined {
  for (const v of members) {
    last[v] = -1;
    late[v] = 0;
    waiting[v] = 1;
  }
  const queue = Array.from(members);
  let changes = 0;
  for (let next = 0; next < queue.length; next += 1) {
    const v = queue[next]!;
    waiting[v] = 0;
    for (let at = arcs.outOfStart[v]!; at < arcs.outOfStart[v + 1]!; at += 1) {
      const arc = arcs.outOf[at]!;
      const target = arcs.to[arc]!;
      const days = late[v]! + arcs.weight[arc]!;
      if (of[target] !== of[v] || days <= late[target]!) continue;
      late[target] = days;
      last[target] = arc;
      if (waiting[target] === 0) queue.push(target);
      waiting[target] = 1;
      changes += 1;
      if (changes % members.length !== 0) continue;
      const loop = loopOf(arcs, members, last);
      if (loop !== undefined) return loop;
    }
  }
  return undefined;
}

/** A loop among the arcs that made variables late last: it has a positive sum. */
function loopOf({ from }: DateArcs, members: Int32Array, last: Int32Array): readonly number[] | undefined {
  const passed = new Map<number, number>();
  for (const start of members) {
    let v = start;
    while (!passed.has(v) && last[v] !== -1) {
      passed.set(v, start);
      v = from[last[v]!]!;
    }
    if (passed.get(v) !== start || last[v] === -1) continue;
    const loop: number[] = [];
    const head = v;
    do {
      loop.push(last[v]!);
      v = from[last[v]!]!;
    } while (v !== head);
    return loop.reverse();
  }
  return undefined;
}
