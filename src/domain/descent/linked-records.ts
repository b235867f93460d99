import type { Conventions } from '../conventions/conventions.ts';
import type { Basis } from '../model/counted.ts';
import type { AnyClaim, AnyRecord } from '../model/row.ts';

/**
 * The part of the graph that a network is made of. Records that a claim names and that are missing here are taken as
 * nothing more than their id; groups of alternatives that are missing are taken as not open. Without some claim the
 * network says less; but of a plate that is copied all appearances must be here, since it may be copied from any of them.
 */
export interface LinkedRecords {
  readonly records: readonly AnyRecord[];
  readonly claims: readonly AnyClaim[];
}

export interface NetworkOptions {
  readonly conventions: Conventions;
  readonly basis?: Basis | undefined;
  /**
   * Least days on the way of an edition from where it was published to a place (where it was seen) or to a picture
   * (where the copyist worked); absent, or undefined as an answer: 0 days.
   */
  readonly leastOnTheWay?: ((edition: string, to: string) => OnTheWay | undefined) | undefined;
}

export interface OnTheWay {
  readonly days: number;
  /** Ids of the conventions and claims that say so; none for 0 days, which bound nothing. */
  readonly by: readonly string[];
  /** Keys of the conventions that were looked at. */
  readonly keys: readonly string[];
}
