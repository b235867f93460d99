import neo4j from 'neo4j-driver';
import {
  frontierOf,
  type WalkedLayers,
  type WalkedSide,
  type WalkedStep,
  type WalkSide,
  walkByLayers,
} from '../../domain/descent/walk-by-layers.ts';
import { certaintiesOf, defaultBasis, isSameBasis } from '../../domain/model/counted.ts';
import { recordKindNames } from '../../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, Stamped } from '../../domain/model/row.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { Walk, WalkAsked } from '../graph-store.ts';
import { knownIn, roundsOf, roundsValues } from './around-reader.ts';
import type { Ask } from './connection.ts';
import { decodeRow, type ReadProperties } from './row-codec.ts';
import { cypher, now } from './statements.ts';
import { beginningText, layerText, reachedText } from './walk-statements.ts';

type Row = Stamped<AnyRow>;

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
  const { reached, claims, frontier, cut } = await walkOverClaims(ask, asked, directions);
  const rows = await readRows(ask, [...reached.map(([id]) => id), ...claims], asked);
  return {
    records: reached.map(([id]) => rows.get(id) as Stamped<AnyRecord>),
    depth: reached.map(([, depth]) => depth),
    claims: claims.map(id => rows.get(id) as Stamped<AnyClaim>),
    ...{ frontier, cut },
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

function sideOf(found: SideRow): WalkedSide {
  return {
    depths: new Map(found.map(([id, depth]) => [id, depth])),
    steps: found.flatMap(([near, , onward]) => onward.map(far => ({ near, far }))),
  };
}

type StepRow = [near: string, claim: string | null, far: string];

async function walkOverClaims(ask: Ask, asked: WalkAsked, directions: readonly WalkSide[]): Promise<WalkedLayers> {
  const { basis = defaultBasis, excluded = [], view, steps } = asked;
  const asOf = neo4j.int(view?.asOf ?? now);
  const given = { asOf, excluded, stances: basis.stances, certainties: certaintiesOf(basis) };
  const stepsFrom = async (layer: readonly string[], direction: WalkSide) =>
    layer.length === 0 || steps.length === 0
      ? []
      : (await ask<StepRow>(layerText(steps, direction), { ...given, layer })).map(decodeStep);
  const from = (await ask<[string]>(beginningText, { from: asked.from, asOf, kinds: recordKindNames })).map(
    ([id]) => id,
  );
  return walkByLayers(from, directions, asked, stepsFrom);
}

function decodeStep([near, claim, far]: StepRow): WalkedStep {
  return claim === null ? { near, far } : { near, far, claim };
}

async function readRows(ask: Ask, ids: readonly string[], { view }: WalkAsked): Promise<ReadonlyMap<string, Row>> {
  const given = { ids, asOf: neo4j.int(view?.asOf ?? now) };
  const [found] = await ask<[readonly [number, ReadProperties][]]>(cypher.rowsAsOf, given);
  return new Map(found![0].map(([at, properties]) => [ids[at]!, decodeRow(properties)]));
}
