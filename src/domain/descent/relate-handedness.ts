import { type HandednessGraph, handednessGraph } from './handedness-graph.ts';
import type { HandednessLink, HandednessRelation, HandednessRelations } from './handedness-link.ts';
import { mirrorContradictions } from './mirror-contradictions.ts';
import { once } from './once.ts';
import { shortestWays } from './shortest-ways.ts';

/**
 * Relations of handedness that follow from links of known handedness; links of unknown handedness say nothing. Linear,
 * but for contradictions, which are looked for when they are asked for.
 */
export function relateHandedness(links: readonly HandednessLink[]): HandednessRelations {
  const graph = handednessGraph(links);
  const contradictions = once(() => mirrorContradictions(graph));
  return {
    between: (one, other) => relation(graph, one, other),
    get contradictions() {
      return contradictions();
    },
  };
}

function relation(graph: HandednessGraph, one: string, other: string): HandednessRelation {
  const [from, to] = [graph.numbers.get(one), graph.numbers.get(other)];
  if (one === other && from === undefined) return { handedness: 'SAME', contradictory: false, links: [], against: [] };
  if (from === undefined || to === undefined || graph.partOf(from) !== graph.partOf(to)) return unknown;
  const ways = shortestWays(graph, from);
  const [same, reversed] = [ways(to, false), ways(to, true)];
  if (same !== undefined && reversed !== undefined) {
    return { handedness: 'UNKNOWN', contradictory: true, links: same, against: reversed };
  }
  const handedness = same === undefined ? 'REVERSED' : 'SAME';
  return { handedness, contradictory: false, links: same ?? reversed ?? [], against: [] };
}

const unknown: HandednessRelation = Object.freeze({
  ...({ handedness: 'UNKNOWN', contradictory: false, links: [], against: [] } as const),
});
