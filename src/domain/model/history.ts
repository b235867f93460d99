import type { AnyRow, Origin, Stamped } from './row.ts';

/** What was written at once. */
export interface ChangeSet {
  readonly number: number;
  /** Instant, ISO 8601 in UTC. */
  readonly moment: string;
  readonly who: string;
  readonly why: string;
  /** Run of an intake that several change sets belong to. */
  readonly batch?: string;
}

export interface WrittenChange {
  readonly changeSet: ChangeSet;
  readonly put: readonly Stamped<AnyRow>[];
  /** Ids of rows that were there until then. One of the two lists is not empty. */
  readonly removed: readonly string[];
}

export interface OriginFound {
  readonly id: string;
  /** Digest of what was taken from there, as the intake made it. */
  readonly digest: string;
}

export interface AwaitedLink {
  /** Origin of the record awaited. */
  readonly origin: Origin;
  /** The claim to be made when it comes; the role named `role` is empty. */
  readonly claim: AnyRow;
  readonly role: string;
}

export interface Checkpoint {
  /** Records of the source that have been dealt with, counted from its beginning. */
  readonly records: number;
  /** The report so far, as the intake keeps it. */
  readonly report: unknown;
}

export interface NamedCheckpoint extends Checkpoint {
  readonly intake: string;
}

/**
 * A graph with its history, part by part: change sets from 1 in their order, each with the versions it put; then what has
 * no history, as it is now: all origins, all links that wait, all checkpoints of intakes.
 */
export type HistoryPart =
  | ({ readonly part: 'changeSet' } & WrittenChange)
  | { readonly part: 'origin'; readonly origin: Origin & OriginFound }
  | { readonly part: 'awaited'; readonly link: AwaitedLink }
  | { readonly part: 'checkpoint'; readonly checkpoint: NamedCheckpoint };

/** What a graph file with its history ends with: how many lines of each sort there were, and the sum of their digests. */
export interface HistoryEnd {
  readonly part: 'end';
  readonly sums: HistorySums;
}

/** Number of lines and sum of their digests as one word, by sort: a kind of row, or a part of history. */
export type HistorySums = Readonly<Record<string, string>>;

/** Version of the form of graph files with history; one that is read says no other. */
export const historyVersion = 1;

/** What the first line of a graph file with history says that it is. */
export const historyFormat = 'graph with history';
