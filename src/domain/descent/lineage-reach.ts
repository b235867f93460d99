import type { LineageGraph, LineageStep } from './lineage-graph.ts';
import { type Region, regionOnDetail, regionOnWhole, regionsMeet } from './walk-region.ts';

/** A record of a lineage, as it is reached from the one asked about. */
export interface Reached {
  readonly depth: number;
  /** Only part of it, or of the record asked about, is meant on every way. */
  readonly inPart: boolean;
  /** It belongs here only if a region that is not recorded fits. */
  readonly regionUnknown: boolean;
}

export interface LineageReach {
  /** By id, in order of (depth, id). */
  readonly records: ReadonlyMap<string, Reached>;
  /** Steps that a way came to; false: none could take it, for its region. */
  readonly tried: ReadonlyMap<LineageStep, boolean>;
  /** The depth ended a way. */
  readonly cut: boolean;
}

export interface LineageLimits {
  /** Most steps. */
  readonly depth: number;
  /** Share of the smaller region that two must have in common to be of one part. */
  readonly partOverlap: number;
}

/**
 * What a record has among its sources, or its copies, by regions: from a detail up to its whole always; from a picture
 * to the source of a copying where the part that is meant lies in the part copied (the whole, where none is given); from
 * a whole down to a detail only where that is the part meant, so that no other detail is reached by way of the whole. A
 * copying that does not say which part of its source it took leads to no detail of that source.
 * Copies are reached exactly where the record would be reached as a source from them.
 */
export function lineageReach(
  graph: LineageGraph,
  start: string,
  side: 'SOURCES' | 'COPIES',
  { depth: deepest, partOverlap }: LineageLimits,
): LineageReach {
  const onward = side === 'SOURCES' ? toSources : toCopies;
  const found = new Map<string, Reached>();
  const seen = new Set<string>();
  const tried = new Map<LineageStep, boolean>();
  let layer: readonly State[] = [beginning(start)];
  for (let depth = 0; layer.length > 0 && depth <= deepest; depth++) {
    for (const state of layer) add(found, state, depth);
    const next: State[] = [];
    for (const { step, meets, state } of layer.flatMap(from => [...onward(graph, from, partOverlap)])) {
      tried.set(step, meets !== 'NO' || tried.get(step) === true);
      const key = keyOf(state);
      if (meets === 'NO' || state.id === start || seen.has(key)) continue;
      seen.add(key);
      next.push(state);
    }
    layer = next;
  }
  const order = [...found].sort(([a, i], [b, j]) => i.depth - j.depth || (a < b ? -1 : 1));
  return {
    records: new Map(order),
    tried,
    cut: layer.some(({ id }) => !found.has(id)),
  };
}

/** A record on a way, with the part of it that is meant. */
interface State {
  readonly id: string;
  readonly region: Region;
  /** Towards copies: the region is that of a detail, and only what names it follows it. */
  readonly named: boolean;
  /** Only part of this record is meant. */
  readonly part: boolean;
  /** Only part of the record at the beginning is meant. */
  readonly partOfStart: boolean;
  readonly perhaps: boolean;
  /** Reached from its whole, to which it does not lead back. */
  readonly down: boolean;
}

/** A step with the state that it would lead to, if the parts meet. */
interface Onward {
  readonly step: LineageStep;
  readonly meets: 'YES' | 'NO' | 'PERHAPS';
  readonly state: State;
}

function beginning(id: string): State {
  return { id, region: 'WHOLE', named: false, part: false, partOfStart: false, perhaps: false, down: false };
}

function* toSources(graph: LineageGraph, from: State, share: number): Generator<Onward> {
  for (const step of graph.asCopy.get(from.id) ?? []) {
    if (step.kind === 'Detail') yield* up(step, from);
    else {
      const meets = regionsMeet(from.region, step.onCopy ?? 'WHOLE', share);
      const region = step.kind === 'Copying' ? (step.onSource ?? 'UNKNOWN') : kept(from.region);
      yield { step, meets, state: across(from, step.source, region, step.onCopy, meets) };
    }
  }
  for (const step of graph.asSource.get(from.id) ?? []) {
    if (step.kind !== 'Detail') continue;
    const meets = known(regionsMeet(from.region, step.onSource ?? 'UNKNOWN', share));
    yield { step, meets, state: down(step, from, meets) };
  }
}

function* toCopies(graph: LineageGraph, from: State, share: number): Generator<Onward> {
  for (const step of graph.asSource.get(from.id) ?? []) {
    const meet = regionsMeet(step.onSource ?? 'UNKNOWN', from.region, share);
    const meets = from.named ? known(meet) : meet;
    if (step.kind === 'Detail') yield { step, meets, state: down(step, from, meets) };
    else {
      const region = step.kind === 'Copying' ? (step.onCopy ?? 'WHOLE') : kept(from.region);
      yield { step, meets, state: across(from, step.copy, region, step.onSource, meets) };
    }
  }
  for (const step of graph.asCopy.get(from.id) ?? []) if (step.kind === 'Detail') yield* up(step, from);
}

/** A detail must be known to be the part. */
function known(meets: Onward['meets']): Onward['meets'] {
  return meets === 'PERHAPS' ? 'NO' : meets;
}

/** A print is all of its surface, the other way round. */
function kept(region: Region): Region {
  return region === 'WHOLE' ? 'WHOLE' : 'UNKNOWN';
}

function across(from: State, id: string, region: Region, near: Region | undefined, meets: Onward['meets']): State {
  return {
    id,
    region,
    named: false,
    part: typeof region !== 'string',
    partOfStart: from.partOfStart || (from.region === 'WHOLE' && near !== undefined && near !== 'WHOLE'),
    perhaps: from.perhaps || meets === 'PERHAPS',
    down: false,
  };
}

function* up(step: LineageStep, from: State): Generator<Onward> {
  if (from.down) return;
  const region = regionOnWhole(from.region, step.onSource);
  yield {
    step,
    meets: 'YES',
    state: { ...from, id: step.source, region, named: region !== 'WHOLE', part: region !== 'WHOLE', down: false },
  };
}

function down(step: LineageStep, from: State, meets: Onward['meets']): State {
  const region = regionOnDetail(from.region, step.onSource);
  return {
    ...from,
    id: step.copy,
    region,
    part: region !== 'WHOLE',
    partOfStart: from.partOfStart || from.region === 'WHOLE',
    perhaps: from.perhaps || meets === 'PERHAPS',
    down: true,
  };
}

function keyOf({ id, region, named, part, partOfStart, perhaps, down }: State): string {
  return `${id} ${named} ${part} ${partOfStart} ${perhaps} ${down} ${typeof region === 'string' ? region : JSON.stringify(region)}`;
}

function add(found: Map<string, Reached>, { id, part, partOfStart, perhaps }: State, depth: number): void {
  const before = found.get(id);
  found.set(id, {
    depth: before?.depth ?? depth,
    inPart: (part || partOfStart) && before?.inPart !== false,
    regionUnknown: perhaps && before?.regionUnknown !== false,
  });
}
