import { compareText } from '../text/compare.ts';
import type { HandednessGraph } from './handedness-graph.ts';
import type { HandednessContradiction, HandednessLink } from './handedness-link.ts';
import { shortestWays } from './shortest-ways.ts';

/** Records times links of a part up to which the shortest loop of all is looked for; beyond, a short one. */
const mostWork = 20_000_000;

/**
 * Loops that lead from a record back to itself in reverse, in each part until none is left without the links of those
 * found: the shortest first. None of their links can be left out. A part of n records and m links takes O(n (n + m)) a
 * loop, a very large one O(n + m).
 */
export function mirrorContradictions(graph: HandednessGraph): readonly HandednessContradiction[] {
  if (graph.contradictory.size === 0) return [];
  const records = graph.ids
    .map((id, record) => ({ id, record, part: graph.partOf(record) }))
    .filter(({ part }) => graph.contradictory.has(part))
    .sort((a, b) => compareText(a.id, b.id));
  return [...Map.groupBy(records, ({ part }) => part).values()].flatMap(part =>
    contradictionsOfPart(
      graph,
      part.map(({ record }) => record),
    ),
  );
}

/** Links that lead from a record back to it in reverse. */
interface Loop {
  readonly start: string;
  readonly links: readonly HandednessLink[];
}

function contradictionsOfPart(graph: HandednessGraph, records: readonly number[]): readonly HandednessContradiction[] {
  const found: HandednessContradiction[] = [];
  const without = new Set<HandednessLink>();
  for (;;) {
    const loop = oddLoop(graph, records, without);
    if (loop === undefined) return found;
    for (const link of loop.links) without.add(link);
    found.push(contradictionOf(loop));
  }
}

function oddLoop(
  graph: HandednessGraph,
  records: readonly number[],
  without: ReadonlySet<HandednessLink>,
): Loop | undefined {
  const size = records.reduce((sum, record) => sum + graph.around(record).length, records.length);
  const thorough = records.length * size <= mostWork;
  let shortest: Loop | undefined;
  for (const record of records) {
    const most = shortest === undefined ? Infinity : shortest.links.length - 1;
    const links = shortestWays(graph, record, { without, most })(record, true);
    if (links === undefined) continue;
    shortest = { start: graph.ids[record]!, links };
    if (!thorough) return simpleLoop(shortest);
  }
  return shortest;
}

/** Of a way that leads back in reverse, the stretch that does so by itself. */
function simpleLoop({ start, links }: Loop): Loop {
  const seen = new Map<string, { readonly at: number; readonly reversed: boolean }>();
  let [record, reversed] = [start, false];
  for (const [at, link] of links.entries()) {
    const before = seen.get(record);
    if (before !== undefined && before.reversed !== reversed)
      return { start: record, links: links.slice(before.at, at) };
    seen.set(record, { at, reversed });
    record = link.one === record ? link.other : link.one;
    reversed = reversed !== (link.reversed === true);
  }
  const { at } = seen.get(record)!;
  return { start: record, links: links.slice(at) };
}

function contradictionOf({ start, links }: Loop): HandednessContradiction {
  const involved = [...new Set(links.flatMap(({ by }) => by))];
  const steps = links.length === 1 ? 'this step leads' : `these ${links.length} steps lead`;
  return { code: 'MIRROR', message: `${steps} from ${start} back to itself in reverse`, involved, links };
}
