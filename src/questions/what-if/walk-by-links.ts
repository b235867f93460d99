import { claimStepNames, claimSteps, type WalkStep } from '../../domain/descent/walk-steps.ts';
import { counts } from '../../domain/model/counted.ts';
import { isRecordKind } from '../../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, Stamped } from '../../domain/model/row.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { GraphStore, Via, Walk, WalkAsked } from '../../store/graph-store.ts';
import { linkedIn } from '../linked-in.ts';
import { held } from './supposed-rows.ts';

type Reads = Pick<GraphStore, 'rows' | 'surroundings'>;
type WalkSide = 'SOURCES' | 'COPIES';

interface Step {
  readonly near: string;
  readonly far: string;
  /** Id of the claim; undefined: of a detail. */
  readonly claim?: string;
}

/** What one direction reaches, with its depth by id, and every step from what it reaches. */
interface Side {
  readonly depths: ReadonlyMap<string, number>;
  readonly steps: readonly Step[];
}

/**
 * The walk of the port, where no engine can walk by itself: over what is supposed, and around what is left out for what it
 * says. It asks for the surroundings of a layer at a time, and so as often as there are layers.
 */
export async function walkByLinks(store: Reads, asked: WalkAsked): Promise<Walk> {
  const rows = new Map<string, Stamped<AnyRow>>();
  const from = await beginning(store, asked.from, rows);
  const directions: readonly WalkSide[] = asked.direction === 'BOTH' ? ['SOURCES', 'COPIES'] : [asked.direction];
  const sides = await Promise.all(
    directions.map(side => sideFrom(from, asked, layer => stepsFrom(store, layer, side, asked, rows))),
  );
  const reached = union(sides).slice(0, asked.limit);
  const there = new Set(reached.map(([id]) => id));
  // Between what only one direction reached and what only the other did no step was seen yet.
  const [sources, copies] = sides;
  const across =
    sources === undefined || copies === undefined
      ? []
      : await stepsFrom(
          store,
          [...there].filter(id => sources.depths.has(id) && !copies.depths.has(id)),
          'COPIES',
          asked,
          rows,
        );
  const claims = claimsBetween([...sides.flatMap(({ steps }) => steps), ...across], there);
  const frontier = frontierOf(sides, there);
  return {
    records: reached.map(([id]) => rows.get(id) as Stamped<AnyRecord>),
    depth: reached.map(([, depth]) => depth),
    claims: claims.map(id => rows.get(id) as Stamped<AnyClaim>),
    frontier: reached.flatMap(([id]) => (frontier.has(id) ? [id] : [])),
    cut: frontier.size > 0,
  };
}

async function beginning(
  store: Reads,
  ids: readonly string[],
  rows: Map<string, Stamped<AnyRow>>,
): Promise<readonly string[]> {
  const found = await store.rows([...new Set(ids)]);
  const records = found.filter(row => row !== undefined && isRecordKind(row.kind)) as readonly Stamped<AnyRow>[];
  for (const record of records) rows.set(record.id, record);
  return records.map(({ id }) => id);
}

/** The first `limit` records by (depth, id). The last layer is looked beyond too: its steps lead to the frontier. */
async function sideFrom(
  from: readonly string[],
  { depth: deepest, limit }: WalkAsked,
  ask: (layer: readonly string[]) => Promise<readonly Step[]>,
): Promise<Side> {
  const depths = new Map<string, number>();
  const steps: Step[] = [];
  let layer = from;
  for (let depth = 0; layer.length > 0 && depths.size < limit; depth++) {
    const taken = layer.toSorted(compareText).slice(0, limit - depths.size);
    for (const id of taken) depths.set(id, depth);
    const onward = await ask(taken);
    steps.push(...onward);
    if (depth === deepest) break;
    layer = [...new Set(onward.map(({ far }) => far))].filter(id => !depths.has(id));
  }
  return { depths, steps };
}

/** Every step from a layer to one side; rows that are read for it are kept. */
async function stepsFrom(
  store: Reads,
  layer: readonly string[],
  side: WalkSide,
  asked: WalkAsked,
  rows: Map<string, Stamped<AnyRow>>,
): Promise<readonly Step[]> {
  if (layer.length === 0 || asked.steps.length === 0) return [];
  const via = asked.steps.map(step => viaOf(step, side));
  const { own, rounds } = await store.surroundings(layer, { rounds: [via] });
  const found = [...own, ...rounds.flat()];
  for (const row of found) rows.set(row.id, row);
  const linked = linkedIn(found, via);
  return layer.flatMap(near => [
    ...linked(near).flatMap(row => stepOver(row, near, side, asked)),
    ...stepToWhole(rows.get(near)!, asked),
  ]);
}

/** The end of a step on the near side; of a detail that of the whole, from which its parts are reached. */
function viaOf(step: WalkStep, side: WalkSide): Via {
  if (step === 'Detail') return { kind: 'Detail', name: 'of' };
  return { kind: step, name: side === 'SOURCES' ? claimSteps[step].copy : claimSteps[step].source };
}

function stepOver(row: AnyRow, near: string, side: WalkSide, { basis, excluded = [] }: WalkAsked): readonly Step[] {
  if (row.kind === 'Detail') return [{ near, far: row.id }];
  const kind = claimStepNames.find(name => name === row.kind);
  if (kind === undefined || !counts(row as AnyClaim, basis) || excluded.includes(row.id)) return [];
  const { copy, source } = claimSteps[kind];
  return [{ near, far: held(row, side === 'SOURCES' ? source : copy)!, claim: row.id }];
}

function stepToWhole(row: AnyRow, { steps }: WalkAsked): readonly Step[] {
  return row.kind === 'Detail' && steps.includes('Detail') ? [{ near: row.id, far: row.of }] : [];
}

/** By (least depth, id). */
function union(sides: readonly Side[]): readonly (readonly [id: string, depth: number])[] {
  const least = new Map<string, number>();
  for (const [id, depth] of sides.flatMap(({ depths }) => [...depths])) {
    least.set(id, Math.min(depth, least.get(id) ?? Number.POSITIVE_INFINITY));
  }
  return [...least].sort(([a, x], [b, y]) => x - y || compareText(a, b));
}

/** Ids of claims that join two of the records, each once, in order. */
function claimsBetween(steps: readonly Step[], there: ReadonlySet<string>): readonly string[] {
  const joining = steps
    .filter(({ near, far }) => there.has(near) && there.has(far))
    .flatMap(({ claim }) => claim ?? []);
  return [...new Set(joining)].sort(compareText);
}

/** Ids of the records of which a side that has them does not have what a step of theirs leads to. */
function frontierOf(sides: readonly Side[], there: ReadonlySet<string>): ReadonlySet<string> {
  const frontier = new Set<string>();
  for (const { depths, steps } of sides) {
    const has = (id: string) => there.has(id) && depths.has(id);
    for (const { near, far } of steps) if (has(near) && !has(far)) frontier.add(near);
  }
  return frontier;
}
