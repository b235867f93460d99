import { compareText } from '../text/compare.ts';

/** Direction of one side of a walk. */
export type WalkSide = 'SOURCES' | 'COPIES';

export interface WalkedStep {
  readonly near: string;
  readonly far: string;
  /** Id of the claim; absent: of a detail. */
  readonly claim?: string;
}

/** What one direction reaches, with its depth by id, and every step from what it reaches. */
export interface WalkedSide {
  readonly depths: ReadonlyMap<string, number>;
  readonly steps: readonly WalkedStep[];
}

export interface Frontier {
  /** Records, in their order, of which a side that has them does not have what a step of theirs leads to. */
  readonly frontier: readonly string[];
  readonly cut: boolean;
}

export interface WalkedLayers extends Frontier {
  /** By (least depth, id). */
  readonly reached: readonly (readonly [id: string, depth: number])[];
  /** Ids of claims that join two of the records, each once, in order. */
  readonly claims: readonly string[];
}

export interface WalkLimits {
  readonly depth: number;
  readonly limit: number;
}

/**
 * A walk breadth first, a layer at a time and each record once, whatever tells the steps from a layer.
 * @param from ids of records that are there
 * @param stepsFrom every step from a layer to a side; none from no layer
 */
export async function walkByLayers(
  from: readonly string[],
  sides: readonly WalkSide[],
  limits: WalkLimits,
  stepsFrom: (layer: readonly string[], side: WalkSide) => Promise<readonly WalkedStep[]>,
): Promise<WalkedLayers> {
  const walked = await Promise.all(sides.map(side => walkSide(from, limits, layer => stepsFrom(layer, side))));
  const reached = union(walked).slice(0, limits.limit);
  const ids = reached.map(([id]) => id);
  // Between what only one direction reached and what only the other did no step was seen yet.
  const [sources, copies] = walked;
  const across =
    sources === undefined || copies === undefined
      ? []
      : await stepsFrom(
          ids.filter(id => sources.depths.has(id) && !copies.depths.has(id)),
          'COPIES',
        );
  const claims = claimsBetween([...walked.flatMap(({ steps }) => steps), ...across], new Set(ids));
  return { reached, claims, ...frontierOf(walked, ids) };
}

export function frontierOf(sides: readonly WalkedSide[], reached: readonly string[]): Frontier {
  const there = new Set(reached);
  const leading = new Set<string>();
  for (const { depths, steps } of sides) {
    const has = (id: string) => there.has(id) && depths.has(id);
    for (const { near, far } of steps) if (has(near) && !has(far)) leading.add(near);
  }
  const frontier = reached.filter(id => leading.has(id));
  return { frontier, cut: frontier.length > 0 };
}

/** The first `limit` records by (depth, id). The last layer is looked beyond too: its steps lead to the frontier. */
async function walkSide(
  from: readonly string[],
  { depth: deepest, limit }: WalkLimits,
  stepsFrom: (layer: readonly string[]) => Promise<readonly WalkedStep[]>,
): Promise<WalkedSide> {
  const depths = new Map<string, number>();
  const steps: WalkedStep[] = [];
  let layer = from;
  for (let depth = 0; layer.length > 0 && depths.size < limit; depth++) {
    const taken = layer.toSorted(compareText).slice(0, limit - depths.size);
    for (const id of taken) depths.set(id, depth);
    const onward = await stepsFrom(taken);
    steps.push(...onward);
    if (depth === deepest) break;
    layer = [...new Set(onward.map(({ far }) => far))].filter(id => !depths.has(id));
  }
  return { depths, steps };
}

function union(sides: readonly WalkedSide[]): WalkedLayers['reached'] {
  const least = new Map<string, number>();
  for (const [id, depth] of sides.flatMap(({ depths }) => [...depths])) {
    least.set(id, Math.min(depth, least.get(id) ?? Number.POSITIVE_INFINITY));
  }
  return [...least].sort(([a, x], [b, y]) => x - y || compareText(a, b));
}

function claimsBetween(steps: readonly WalkedStep[], there: ReadonlySet<string>): readonly string[] {
  const joining = steps
    .filter(({ near, far }) => there.has(near) && there.has(far))
    .flatMap(({ claim }) => claim ?? []);
  return [...new Set(joining)].sort(compareText);
}
