import type { WalkStep } from '../../domain/descent/walk-steps.ts';
import { isRecordKind } from '../../domain/model/kinds.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { Deadline } from './deadline.ts';
import type { KeyCache } from './key-cache.ts';
import type { Prepared } from './prepared.ts';
import type { ReadRow } from './row-codec.ts';
import { kindNames } from './schema-text.ts';
import { sql } from './statements.ts';
import { type WalkSide, walkSql } from './walk-statements.ts';

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
}

export interface WalkFound {
  readonly records: readonly ReadRow[];
  readonly depth: readonly number[];
  readonly claims: readonly ReadRow[];
  readonly frontier: readonly string[];
}

type Step = readonly [near: number, claim: number | null, far: number];

/** What one direction reaches: depths by key, and every step from what it reaches. */
interface Side {
  readonly depths: ReadonlyMap<number, number>;
  readonly steps: readonly Step[];
}

interface Reached {
  readonly key: number;
  readonly depth: number;
  readonly row: ReadRow;
}

/** Walks layer by layer: one statement a layer, which sees each record once, however many ways lead to it. */
export class WalkReader {
  readonly #prepared: Prepared;
  readonly #keys: KeyCache;
  readonly #deadline: Deadline;
  readonly #rowOf: (key: number, asOf: number) => ReadRow | null;

  constructor(
    prepared: Prepared,
    keys: KeyCache,
    deadline: Deadline,
    rowOf: (key: number, asOf: number) => ReadRow | null,
  ) {
    this.#prepared = prepared;
    this.#keys = keys;
    this.#deadline = deadline;
    this.#rowOf = rowOf;
  }

  walk(call: WalkCall): WalkFound {
    const from = this.#beginning(call);
    const sides = call.sides.map(side => this.#side(from, side, call));
    const reached = this.#reached(sides, call);
    const there = new Set(reached.map(({ key }) => key));
    const frontier = frontierOf(sides, there);
    return {
      records: reached.map(({ row }) => row),
      depth: reached.map(({ depth }) => depth),
      claims: this.#claims(sides, there, call),
      frontier: reached.flatMap(({ key, row }) => (frontier.has(key) ? [row[1]] : [])),
    };
  }

  /** Keys of the records to begin with, each once, that are there in the view. */
  #beginning({ from, asOf }: WalkCall): readonly number[] {
    const keys = new Set(from.map(id => this.#keys.get(id)).filter(key => key !== undefined));
    return [...keys].filter(key => {
      const row = this.#rowOf(key, asOf);
      return row !== null && isRecordKind(kindNames[row[0]]!);
    });
  }

  /** The first `limit` records by (depth, id). The last layer is looked beyond too: its steps lead to the frontier. */
  #side(from: readonly number[], side: WalkSide, call: WalkCall): Side {
    const depths = new Map<number, number>();
    const steps: Step[] = [];
    let layer = from;
    for (let depth = 0; layer.length > 0 && depths.size < call.limit; depth++) {
      const taken = this.#firstById(layer, call.limit - depths.size);
      for (const key of taken) depths.set(key, depth);
      const onward = this.#steps(taken, side, call);
      for (const step of onward) steps.push(step);
      if (depth === call.depth) break;
      layer = [...new Set(onward.map(([, , far]) => far))].filter(key => !depths.has(key));
    }
    return { depths, steps };
  }

  #firstById(layer: readonly number[], room: number): readonly number[] {
    if (layer.length <= room) return layer;
    const named = layer.map(key => ({ key, id: this.#nodeOf(key)[0] }));
    return named
      .sort((a, b) => compareText(a.id, b.id))
      .slice(0, room)
      .map(({ key }) => key);
  }

  #steps(
    layer: readonly number[],
    side: WalkSide,
    { steps, stances, certainties, excluded, asOf }: WalkCall,
  ): readonly Step[] {
    this.#deadline.check();
    if (steps.length === 0) return [];
    const named = excluded.map(id => this.#keys.get(id)).filter(key => key !== undefined);
    const ofClaims = steps.some(step => step !== 'Detail');
    const values = {
      layer: JSON.stringify(layer),
      asOf,
      ...(ofClaims ? { stances, certainties, excluded: JSON.stringify(named) } : {}),
    };
    return this.#prepared.of(walkSql(steps, side)).all(values) as unknown as Step[];
  }

  #reached(sides: readonly Side[], { limit, asOf }: WalkCall): readonly Reached[] {
    const depths = new Map<number, number>();
    for (const side of sides) {
      for (const [key, depth] of side.depths) depths.set(key, Math.min(depth, depths.get(key) ?? depth));
    }
    const reached = [...depths].map(([key, depth]) => {
      this.#deadline.check();
      return { key, depth, row: this.#rowOf(key, asOf)! };
    });
    return reached.sort((a, b) => a.depth - b.depth || compareText(a.row[1], b.row[1])).slice(0, limit);
  }

  /** Claims that join two of the records. Between what only COPIES reached and what only SOURCES did none was seen yet. */
  #claims(sides: readonly Side[], there: ReadonlySet<number>, call: WalkCall): readonly ReadRow[] {
    const claims = new Set<number>();
    const gather = (steps: readonly Step[]): void => {
      for (const [near, claim, far] of steps)
        if (claim !== null && there.has(near) && there.has(far)) claims.add(claim);
    };
    for (const { steps } of sides) gather(steps);
    if (sides.length > 1)
      gather(
        this.#steps(
          [...there].filter(key => !sides[0]!.depths.has(key)),
          'SOURCES',
          call,
        ),
      );
    return [...claims]
      .map(key => {
        this.#deadline.check();
        return this.#rowOf(key, call.asOf)!;
      })
      .sort((a, b) => compareText(a[1], b[1]));
  }

  #nodeOf(key: number): readonly [id: string, kind: number] {
    return this.#prepared.first<[string, number]>(sql.nodeOfKey, key)!;
  }
}

/** Keys of the records of which a side that has them does not have what a step of theirs leads to. */
function frontierOf(sides: readonly Side[], there: ReadonlySet<number>): ReadonlySet<number> {
  const frontier = new Set<number>();
  for (const { depths, steps } of sides) {
    const has = (key: number) => there.has(key) && depths.has(key);
    for (const [near, , far] of steps) if (has(near) && !has(far)) frontier.add(near);
  }
  return frontier;
}
