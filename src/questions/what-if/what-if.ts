import type { Basis, Certainty } from '../../domain/model/counted.ts';
import type { SourcePlace } from '../../errors.ts';

/** How a question takes the graph otherwise than it is recorded now. Nothing of it is stored. */
export interface WhatIf {
  /** Which claims count; what is absent is that of the default basis. */
  readonly basis?: Partial<Pick<Basis, 'stances' | 'certaintyAtLeast'>>;
  /** Records and claims that are taken to be there. */
  readonly suppose?: readonly Supposed[];
  /** What is taken to be withdrawn. */
  readonly without?: Without;
  /** When; absent: now. */
  readonly asOf?: AsOf;
}

/** Whether anything is taken otherwise. */
export function isGiven({ basis, suppose, without, asOf }: WhatIf): boolean {
  return basis !== undefined || without !== undefined || asOf !== undefined || (suppose?.length ?? 0) > 0;
}

/** A record or claim as a graph file has it; without an id it is given one. */
export interface Supposed {
  readonly value: unknown;
  /** Where it stands, for what is said of faults in it. */
  readonly place?: SourcePlace;
}

/** Claims that are left out: all that one of these names. */
export interface Without {
  /** Ids of claims. */
  readonly claims?: readonly string[];
  /** Ids of references: claims all of whose evidence cites one of them. */
  readonly references?: readonly string[];
  /** Names of those who say so. */
  readonly saidBy?: readonly string[];
  /** Rules that read them or chose their places, as claims name them; or keys of conventions of the graph. */
  readonly rules?: readonly string[];
  readonly certainties?: readonly Certainty[];
}

/**
 * Exactly one of the three. A moment is ISO 8601 in UTC, a day `YYYY-MM-DD` stands for its last instant in UTC. Before the
 * first change set the graph is empty, after the last it is as it is now.
 */
export interface AsOf {
  readonly changeSet?: number;
  readonly moment?: string;
  readonly day?: string;
}
