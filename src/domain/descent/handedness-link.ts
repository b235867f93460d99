/** How two pictures or printing surfaces stand to each other; `reversed` absent: not known. */
export interface HandednessLink {
  /** Ids of the records; the relation is the same both ways. */
  readonly one: string;
  readonly other: string;
  /** True: mirror-wise; false: in the same direction. */
  readonly reversed?: boolean | undefined;
  /** Id of the rule in `handednessRules`, or another word where a question adds something of its own. */
  readonly rule: string;
  /** Ids of claims, and of records whose fields say it. */
  readonly by: readonly string[];
}

export type Handedness = 'SAME' | 'REVERSED' | 'UNKNOWN';

/** What the links of a graph say of handedness. */
export interface HandednessRelations {
  /** What is deduced for two records, with the fewest links that say it. Linear in the links around them. */
  between(one: string, other: string): HandednessRelation;
  /** Stable order; no two share a link. */
  readonly contradictions: readonly HandednessContradiction[];
}

export interface HandednessRelation {
  /** UNKNOWN where nothing says it, and where it is contradictory. */
  readonly handedness: Handedness;
  readonly contradictory: boolean;
  /** Fewest links from one record to the other, in order; where it is contradictory, those that say SAME. */
  readonly links: readonly HandednessLink[];
  /** Where it is contradictory: fewest links that say REVERSED. */
  readonly against: readonly HandednessLink[];
}

/** Links that lead from a picture back to itself in reverse: they cannot all be right; any one taken away leaves none. */
export interface HandednessContradiction {
  readonly code: 'MIRROR';
  readonly message: string;
  /** Ids of claims and records, without repetition, in the order of the links. */
  readonly involved: readonly string[];
  readonly links: readonly HandednessLink[];
}
