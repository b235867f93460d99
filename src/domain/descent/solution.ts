import { compareText } from '../text/compare.ts';
import { type CompiledNetwork, compileNetwork, withArcs } from './compiled-network.ts';
import { connectedParts } from './connected-parts.ts';
import { contradictoryLoops } from './contradictory-loops.ts';
import type { DatesNetwork } from './dates-network.ts';
import { inOrder } from './in-order.ts';
import { type LastDays, lastDays } from './last-days.ts';
import { leastDays } from './least-days.ts';

/** A network solved, with its numbers. */
export interface Solution {
  readonly network: DatesNetwork;
  /** Without the arcs of contradictory loops. */
  readonly compiled: CompiledNetwork;
  /** Arcs of contradictory loops. */
  readonly loops: readonly (readonly number[])[];
  readonly least: Float64Array;
  /** Where some dates contradict each other, those of links alone. */
  readonly last: LastDays;
  /** Variables whose least day is later than their last, in order of name. */
  readonly contradicted: readonly number[];
  /** Whether a variable is linked with a contradiction. */
  contradictory(variable: number): boolean;
}

/**
 * Solves a network without choices of mixed form: contradictory loops first, then the earliest solution, then the last
 * day of every variable.
 */
export function solutionOf(network: DatesNetwork): Solution {
  const found = withoutLoops(compileNetwork(network));
  // Which loops are found depends on the order of the links: if there are any, in an order of their own.
  const { compiled, loops } = found.loops.length === 0 ? found : withoutLoops(compileNetwork(inOrder(network)));
  const least = leastDays(compiled.forward);
  const contradicted = lateVariables(compiled, least);
  const starts = [...contradicted, ...loops.map(loop => compiled.forward.arcs.from[loop[0]!]!)];
  const last = starts.length === 0 ? lastDays(compiled, least) : lastDaysByLinks(compiled);
  return { network, compiled, loops, least, last, contradicted, contradictory: linkedWith(compiled, starts) };
}

export function isConsistent({ loops, contradicted }: Solution): boolean {
  return loops.length === 0 && contradicted.length === 0;
}

function withoutLoops(network: CompiledNetwork) {
  const { loops, arcs } = contradictoryLoops(network.forward.arcs, network.forward.components);
  return { loops, compiled: loops.length === 0 ? network : withArcs(network, arcs) };
}

function lateVariables({ names, domains }: CompiledNetwork, days: Float64Array): readonly number[] {
  const found: number[] = [];
  for (let v = 0; v < days.length; v += 1) if (days[v]! > domains[v]!.last) found.push(v);
  return found.sort((a, b) => compareText(names[a]!, names[b]!));
}

function lastDaysByLinks({ backward }: CompiledNetwork): LastDays {
  return { days: leastDays(backward).map(day => 0 - day), byChoice: new Set(), exact: true };
}

function linkedWith({ names, forward: { arcs } }: CompiledNetwork, starts: readonly number[]): (v: number) => boolean {
  if (starts.length === 0) return () => false;
  const parts = connectedParts(names.length);
  for (let arc = 0; arc < arcs.from.length; arc += 1) parts.join(arcs.from[arc]!, arcs.to[arc]!);
  const contradictory = new Set(starts.map(parts.of));
  return variable => contradictory.has(parts.of(variable));
}
