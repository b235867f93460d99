/** What an answer rests on. */
export interface Grounds {
  /** Which claims counted, in words. */
  readonly basis: string;
  /** Ids of the claims that produced it, in order of id. */
  readonly claims: readonly string[];
  /** Conventions used, in order of key. */
  readonly conventions: readonly ConventionUse[];
  /** True if claims were supposed or left out for the question. */
  readonly supposed: boolean;
  /** Number of the change set that the graph was asked as of; absent: now. */
  readonly asOf?: number;
  /** How the graph was taken otherwise than it is recorded now, as sentences; none: it was not. */
  readonly premises: readonly string[];
  readonly cautions: readonly string[];
}

/** A convention that was used, with the version used. */
export interface ConventionUse {
  readonly key: string;
  readonly id: string;
  readonly version: number;
}

/** Why, in words of the screens: a stable code and a sentence. */
export interface Reason {
  readonly code: string;
  readonly message: string;
}

/** Said with every computed answer. */
export const recordedClaimsCaution =
  'About the recorded claims: "none" means not if these claims are right. A score or verdict is not proof and not appraisal.';

export const inTimeCaution = '"In time" is not "was there": it says that a copy could have come, not that one did.';
