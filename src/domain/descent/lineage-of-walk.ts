import type { AnyClaim, AnyRecord } from '../model/row.ts';
import { type LineageStep, lineageGraph } from './lineage-graph.ts';
import { type LineageLimits, lineageReach, type Reached } from './lineage-reach.ts';

/** What a store walked over: records within some steps, the claims between them, and where more lies. */
export interface WalkedOver {
  readonly records: readonly AnyRecord[];
  readonly claims: readonly AnyClaim[];
  readonly frontier: readonly string[];
}

export interface LineageMember extends Reached {
  readonly record: AnyRecord;
}

/** The part of a walk that the regions of claims and details allow. */
export interface LineageOfWalk {
  /** By (depth, id). */
  readonly members: readonly LineageMember[];
  /** Steps between them, in order of `by`: all but those that only lead to other parts than are meant. */
  readonly steps: readonly LineageStep[];
  readonly claims: readonly AnyClaim[];
  /** Regions of pictures were compared, to tell whether a step is of the part that is meant. */
  readonly comparesRegions: boolean;
  /** More lies beyond a limit. */
  readonly cut: boolean;
}

/** Prunes a walk from a record in one direction or both: no copy of a source is among the members as such. */
export function lineageOfWalk(
  { records, claims, frontier }: WalkedOver,
  start: string,
  towards: 'SOURCES' | 'COPIES' | 'BOTH',
  limits: LineageLimits,
): LineageOfWalk {
  const graph = lineageGraph(records, claims);
  const sides = towards === 'BOTH' ? (['SOURCES', 'COPIES'] as const) : [towards];
  const reaches = sides.map(side => lineageReach(graph, start, side, limits));
  const all = union(reaches.map(reach => reach.records));
  const isRefused = (step: LineageStep) =>
    reaches.some(({ tried }) => tried.get(step) === false) && !reaches.some(({ tried }) => tried.get(step) === true);
  const possible = graph.steps.filter(step => all.has(step.copy) && all.has(step.source) && !isRefused(step));
  const { reached, steps } = withoutIdleDetails(all, possible, start);
  const taken = new Set(steps.map(step => step.by));
  const members = records.flatMap(record => {
    const how = reached.get(record.id);
    return how === undefined ? [] : [{ record, ...how }];
  });
  return {
    members: members.sort((a, b) => a.depth - b.depth || (a.record.id < b.record.id ? -1 : 1)),
    steps,
    claims: claims.filter(claim => taken.has(claim.id)),
    comparesRegions: graph.steps.some(
      ({ onCopy, onSource }) => typeof onCopy === 'object' || typeof onSource === 'object',
    ),
    cut: reaches.some(({ cut }) => cut) || frontier.some(id => reached.has(id)),
  };
}

/** A detail that no step but that to its whole leads to or from says nothing of the lineage of the whole. */
function withoutIdleDetails(
  all: ReadonlyMap<string, Reached>,
  possible: readonly LineageStep[],
  start: string,
): { readonly reached: ReadonlyMap<string, Reached>; readonly steps: readonly LineageStep[] } {
  const reached = new Map(all);
  let steps = possible;
  for (;;) {
    const ends = new Map<string, number>();
    for (const { copy, source } of steps) for (const id of [copy, source]) ends.set(id, (ends.get(id) ?? 0) + 1);
    const idle = steps.filter(({ kind, copy }) => kind === 'Detail' && copy !== start && ends.get(copy) === 1);
    if (idle.length === 0) return { reached, steps };
    for (const { copy } of idle) reached.delete(copy);
    steps = steps.filter(step => !idle.includes(step));
  }
}

function union(sides: readonly ReadonlyMap<string, Reached>[]): ReadonlyMap<string, Reached> {
  const all = new Map<string, Reached>();
  for (const [id, how] of sides.flatMap(side => [...side])) {
    const before = all.get(id) ?? how;
    all.set(id, {
      depth: Math.min(before.depth, how.depth),
      inPart: before.inPart && how.inPart,
      regionUnknown: before.regionUnknown && how.regionUnknown,
    });
  }
  return all;
}
