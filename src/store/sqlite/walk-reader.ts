import type { WalkSide } from '../../domain/descent/walk-by-layers.ts';
import type { WalkStep } from '../../domain/descent/walk-steps.ts';
import { isRecordKind } from '../../domain/model/kinds.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { AroundCall } from './around-reader.ts';
import type { Deadline } from './deadline.ts';
import type { Prepared } from './prepared.ts';
import type { ReadRow } from './row-codec.ts';
import type { RowNode, RowReader } from './row-reader.ts';
import { kindNames } from './schema-text.ts';
import { walkSql } from './walk-statements.ts';

export interface WalkCall {
  readonly from: readonly string[];
  readonly steps: readonly WalkStep[];
  readonly sides: readonly WalkSide[];
  readonly depth: number;
  readonly limit: number;
  /** Stances that count, and certainties, as words. */
  readonly stances: string;
  readonly certainties: string;
  readonly excluded: readonly string[];
  readonly asOf: number;
  readonly around?: AroundCall | undefined;
}

export interface WalkFound {
  readonly records: readonly ReadRow[];
  readonly depth: readonly number[];
  readonly claims: readonly ReadRow[];
  readonly frontier: readonly string[];
  readonly around?: readonly (readonly ReadRow[])[];
}

interface Step {
  readonly near: number;
  readonly claim: RowNode | undefined;
  readonly far: RowNode;
}

type StepRow = readonly [
  near: number,
  claim: number | null,
  claimId: string | null,
  claimKind: number | null,
  far: number,
  farId: string,
  farKind: number,
];

/** What one direction reaches, with its depth by key, and every step from what it reaches. */
interface Side {
  readonly nodes: ReadonlyMap<number, RowNode & { readonly depth: number }>;
  readonly steps: readonly Step[];
}

/** Walks layer by layer: one statement a layer, which sees each record once, however many ways lead to it. */
export class WalkReader {
  readonly #prepared: Prepared;
  readonly #deadline: Deadline;
  readonly #rows: RowReader;

  constructor(prepared: Prepared, rows: RowReader, deadline: Deadline) {
    this.#prepared = prepared;
    this.#rows = rows;
    this.#deadline = deadline;
  }

  walk(call: WalkCall): WalkFound {
    const from = this.#beginning(call);
    const excluded = this.#rows.nodes(call.excluded).flatMap(node => node?.key ?? []);
    const bySide = new Map(call.sides.map(side => [side, this.#asker(side, excluded, call)]));
    const ask = (layer: readonly RowNode[], side: WalkSide) => bySide.get(side)!(layer);
    const sides = call.sides.map(side => sideFrom(from, call, layer => ask(layer, side)));
    const reached = union(sides).slice(0, call.limit);
    const there = new Set(reached.map(({ key }) => key));
    // Between what only one direction reached and what only the other did no step was seen yet.
    const [onlySources = [], onlyCopies = []] = sides.map((side, i) =>
      reached.filter(({ key }) => side.nodes.has(key) && sides[1 - i]?.nodes.has(key) === false),
    );
    const across = onlyCopies.length > 0 ? ask(onlySources, 'COPIES') : [];
    const claims = claimsBetween([...sides.flatMap(({ steps }) => steps), ...across], there);
    const frontier = frontierOf(sides, there);
    const rows = this.#rows.rows([...reached, ...claims], call.asOf);
    return {
      records: reached.map(({ key }) => rows.get(key)!),
      depth: reached.map(({ depth }) => depth),
      claims: claims.map(({ key }) => rows.get(key)!),
      frontier: reached.flatMap(({ key, id }) => (frontier.has(key) ? [id] : [])),
    };
  }

  /** The records to begin with, each once, that are there in the view. */
  #beginning({ from, asOf }: WalkCall): readonly RowNode[] {
    const nodes = this.#rows.nodes([...new Set(from)]).filter(node => node !== undefined);
    const records = nodes.filter(({ kind }) => isRecordKind(kindNames[kind]!));
    const rows = this.#rows.rows(records, asOf);
    return records.filter(({ key }) => rows.has(key));
  }

  /** What asks for the steps from a layer to one side; the text of the statement is made once for all layers. */
  #asker(
    side: WalkSide,
    excluded: readonly number[],
    { steps, stances, certainties, asOf }: WalkCall,
  ): (layer: readonly RowNode[]) => readonly Step[] {
    const text = walkSql(steps, side, excluded.length > 0);
    const ofClaims = steps.some(step => step !== 'Detail');
    const values = {
      asOf,
      ...(ofClaims ? { stances, certainties } : {}),
      ...(ofClaims && excluded.length > 0 ? { excluded: JSON.stringify(excluded) } : {}),
    };
    return layer => {
      this.#deadline.check();
      if (steps.length === 0 || layer.length === 0) return [];
      const keys = JSON.stringify(layer.map(({ key }) => key));
      const found = this.#prepared.of(text).all({ ...values, layer: keys }) as unknown as StepRow[];
      return found.map(stepOf);
    };
  }
}

function stepOf([near, claim, claimId, claimKind, far, farId, farKind]: StepRow): Step {
  return {
    near,
    claim: claim === null ? undefined : { key: claim, id: claimId!, kind: claimKind! },
    far: { key: far, id: farId, kind: farKind },
  };
}

/** The first `limit` records by (depth, id). The last layer is looked beyond too: its steps lead to the frontier. */
function sideFrom(
  from: readonly RowNode[],
  { depth: deepest, limit }: WalkCall,
  ask: (layer: readonly RowNode[]) => readonly Step[],
): Side {
  const nodes = new Map<number, RowNode & { readonly depth: number }>();
  const steps: Step[] = [];
  let layer = from;
  for (let depth = 0; layer.length > 0 && nodes.size < limit; depth++) {
    const taken = firstById(layer, limit - nodes.size);
    for (const { key, id, kind } of taken) nodes.set(key, { key, id, kind, depth });
    const onward = ask(taken);
    for (const step of onward) steps.push(step);
    if (depth === deepest) break;
    const next = new Map(onward.map(({ far }) => [far.key, far]));
    layer = [...next.values()].filter(({ key }) => !nodes.has(key));
  }
  return { nodes, steps };
}

function firstById(layer: readonly RowNode[], room: number): readonly RowNode[] {
  return layer.length <= room ? layer : layer.toSorted(byId).slice(0, room);
}

/** By (least depth, id). */
function union(sides: readonly Side[]): readonly (RowNode & { readonly depth: number })[] {
  const all = new Map<number, RowNode & { readonly depth: number }>();
  for (const node of sides.flatMap(({ nodes }) => [...nodes.values()])) {
    if (node.depth < (all.get(node.key)?.depth ?? Infinity)) all.set(node.key, node);
  }
  return [...all.values()].sort((a, b) => a.depth - b.depth || byId(a, b));
}

/** Claims that join two of the records, each once, by id. */
function claimsBetween(steps: readonly Step[], there: ReadonlySet<number>): readonly RowNode[] {
  const claims = new Map<number, RowNode>();
  for (const { near, claim, far } of steps) {
    if (claim !== undefined && there.has(near) && there.has(far.key)) claims.set(claim.key, claim);
  }
  return [...claims.values()].sort(byId);
}

/** Keys of the records of which a side that has them does not have what a step of theirs leads to. */
function frontierOf(sides: readonly Side[], there: ReadonlySet<number>): ReadonlySet<number> {
  const frontier = new Set<number>();
  for (const { nodes, steps } of sides) {
    const has = (key: number) => there.has(key) && nodes.has(key);
    for (const { near, far } of steps) if (has(near) && !has(far.key)) frontier.add(near);
  }
  return frontier;
}

function byId(a: RowNode, b: RowNode): number {
  return compareText(a.id, b.id);
}
