import neo4j from 'neo4j-driver';
import { certaintiesOf, defaultBasis, isSameBasis } from '../../domain/model/counted.ts';
import { recordKindNames } from '../../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, Stamped } from '../../domain/model/row.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { Walk, WalkAsked } from '../graph-store.ts';
import { knownIn, roundsOf, roundsValues } from './around-reader.ts';
import type { Ask } from './connection.ts';
import { decodeRow, type ReadProperties } from './row-codec.ts';
import { cypher, now } from './statements.ts';
import { beginningText, layerText, reachedText, type WalkSide } from './walk-statements.ts';

type Row = Stamped<AnyRow>;

interface Step {
  readonly near: string;
  readonly far: string;
}

interface ClaimStep extends Step {
  readonly claim: string;
}

/** What one direction reaches, with its depth, every step from there to this side, and claims from there. */
interface Side {
  readonly depths: ReadonlyMap<string, number>;
  readonly steps: readonly Step[];
  readonly claims: readonly ClaimStep[];
}

/** From so many records on, what they reach together is walked layer by layer: by itself each would see the same again. */
const manyBeginnings = 16;

/**
 * Walks over derived steps, by one statement with what stands around, where they say all that is asked; else over claims, one
 * statement a layer, and does not look around.
 */
export async function walk(ask: Ask, asked: WalkAsked): Promise<Walk> {
  const directions: readonly WalkSide[] = asked.direction === 'BOTH' ? ['SOURCES', 'COPIES'] : [asked.direction];
  const isDerived = countsAsDerived(asked) && asked.steps.length > 0 && asked.from.length < manyBeginnings;
  if (isDerived) return walkAtOnce(ask, asked, directions);
  const sides = await sidesByLayers(ask, asked, directions);
  const reached = union(sides).slice(0, asked.limit);
  const there = new Set(reached.map(([id]) => id));
  const claims = claimsBetween(sides, there);
  const rows = await readRows(ask, [...there, ...claims], asked);
  return {
    records: reached.map(([id]) => rows.get(id) as Stamped<AnyRecord>),
    depth: reached.map(([, depth]) => depth),
    claims: claims.map(id => rows.get(id) as Stamped<AnyClaim>),
    ...frontierOf(sides, [...there]),
  };
}

/** Derived steps are those of claims that count now under the default basis. */
function countsAsDerived({ basis = defaultBasis, excluded = [], view }: WalkAsked): boolean {
  return view?.asOf === undefined && excluded.length === 0 && isSameBasis(basis, defaultBasis);
}

type SideRow = readonly (readonly [id: string, depth: number, onward: readonly string[]])[];

type WalkRow = [
  records: readonly ReadProperties[],
  depth: readonly number[],
  claims: readonly ReadProperties[],
  sides: readonly SideRow[],
  rounds: readonly (readonly ReadProperties[])[],
];

async function walkAtOnce(ask: Ask, asked: WalkAsked, directions: readonly WalkSide[]): Promise<Walk> {
  const { from, steps, depth: deepest, limit, around } = asked;
  const known = knownIn(around ?? { rounds: [] });
  const [found] = await ask<WalkRow>(reachedText(steps, directions, deepest, known.rounds), {
    from,
    limit: neo4j.int(limit),
    ...roundsValues(known),
  });
  const [records, depth, claims, sides, rounds] = found!;
  const rows = records.map(decodeRow) as Stamped<AnyRecord>[];
  const joining = claims.map(decodeRow).sort((a, b) => compareText(a.id, b.id)) as Stamped<AnyClaim>[];
  return {
    records: rows,
    depth,
    claims: joining,
    ...frontierOf(
      sides.map(sideOf),
      rows.map(({ id }) => id),
    ),
    ...(around === undefined ? {} : { around: roundsOf(rounds, known) }),
  };
}

function sideOf(found: SideRow): Pick<Side, 'depths' | 'steps'> {
  return {
    depths: new Map(found.map(([id, depth]) => [id, depth])),
    steps: found.flatMap(([near, , onward]) => onward.map(far => ({ near, far }))),
  };
}

type StepRow = [near: string, claim: string | null, far: string];

async function sidesByLayers(ask: Ask, asked: WalkAsked, directions: readonly WalkSide[]): Promise<readonly Side[]> {
  const { basis = defaultBasis, excluded = [], view, steps } = asked;
  const asOf = neo4j.int(view?.asOf ?? now);
  const given = { asOf, excluded, stances: basis.stances, certainties: certaintiesOf(basis) };
  const askLayer = async (layer: readonly string[], direction: WalkSide) =>
    layer.length === 0 || steps.length === 0 ? [] : ask<StepRow>(layerText(steps, direction), { ...given, layer });
  const from = (await ask<[string]>(beginningText, { from: asked.from, asOf, kinds: recordKindNames })).map(
    ([id]) => id,
  );
  const sides: Side[] = [];
  for (const direction of directions) {
    sides.push(await sideByLayers(from, asked, layer => askLayer(layer, direction)));
  }
  if (sides.length === 2) {
    // Between what only one direction reached and what only the other did no step was seen yet.
    const [sources, copies] = sides as [Side, Side];
    const onlySources = [...sources.depths.keys()].filter(id => !copies.depths.has(id));
    const across = await askLayer(onlySources, 'COPIES');
    sides[0] = { ...sources, claims: [...sources.claims, ...claimSteps(across)] };
  }
  return sides;
}

/** The first `limit` records by (depth, id). The last layer is looked beyond too: its steps lead to the frontier. */
async function sideByLayers(
  from: readonly string[],
  { depth: deepest, limit }: WalkAsked,
  ask: (layer: readonly string[]) => Promise<readonly StepRow[]>,
): Promise<Side> {
  const depths = new Map<string, number>();
  const steps: StepRow[] = [];
  let layer: readonly string[] = from;
  for (let depth = 0; layer.length > 0 && depths.size < limit; depth++) {
    const taken = layer.toSorted(compareText).slice(0, limit - depths.size);
    for (const id of taken) depths.set(id, depth);
    const onward = await ask(taken);
    steps.push(...onward);
    if (depth === deepest) break;
    layer = [...new Set(onward.map(([, , far]) => far))].filter(id => !depths.has(id));
  }
  return { depths, steps: steps.map(([near, , far]) => ({ near, far })), claims: claimSteps(steps) };
}

function claimSteps(steps: readonly StepRow[]): readonly ClaimStep[] {
  return steps.flatMap(([near, claim, far]) => (claim === null ? [] : [{ near, far, claim }]));
}

async function readRows(ask: Ask, ids: readonly string[], { view }: WalkAsked): Promise<ReadonlyMap<string, Row>> {
  const given = { ids, asOf: neo4j.int(view?.asOf ?? now) };
  const [found] = await ask<[readonly [number, ReadProperties][]]>(cypher.rowsAsOf, given);
  return new Map(found![0].map(([at, properties]) => [ids[at]!, decodeRow(properties)]));
}

/** By (least depth, id). */
function union(sides: readonly Side[]): readonly (readonly [id: string, depth: number])[] {
  const least = new Map<string, number>();
  for (const [id, depth] of sides.flatMap(({ depths }) => [...depths])) {
    least.set(id, Math.min(depth, least.get(id) ?? Infinity));
  }
  return [...least].sort(([a, x], [b, y]) => x - y || compareText(a, b));
}

/** Ids of claims that join two of the records, each once, in order. */
function claimsBetween(sides: readonly Side[], there: ReadonlySet<string>): readonly string[] {
  const joining = sides
    .flatMap(({ claims }) => claims)
    .filter(({ near, far }) => there.has(near) && there.has(far))
    .map(({ claim }) => claim);
  return [...new Set(joining)].sort(compareText);
}

/** Records, in their order, of which a side that has them does not have what a step of theirs leads to. */
function frontierOf(
  sides: readonly Pick<Side, 'depths' | 'steps'>[],
  reached: readonly string[],
): Pick<Walk, 'frontier' | 'cut'> {
  const there = new Set(reached);
  const leading = new Set<string>();
  for (const { depths, steps } of sides) {
    const has = (id: string) => there.has(id) && depths.has(id);
    for (const { near, far } of steps) if (has(near) && !has(far)) leading.add(near);
  }
  const frontier = reached.filter(id => leading.has(id));
  return { frontier, cut: frontier.length > 0 };
}
