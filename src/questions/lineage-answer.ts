import type { DayRange } from '../domain/dates/day-bounds.ts';
import type { DateContradiction } from '../domain/descent/dates-network.ts';
import type { MissingLink } from '../domain/descent/lineage-gaps.ts';
import type { HandednessFromHere } from '../domain/descent/lineage-handedness.ts';
import type { WalkStep } from '../domain/descent/walk-steps.ts';
import type { AnyRow } from '../domain/model/row.ts';
import type { Towards } from '../store/graph-store.ts';
import type { Grounds } from './grounds.ts';

export interface LineageAsked {
  /** Id of a picture or printing surface. */
  readonly of: string;
  /** BOTH if absent. */
  readonly towards?: Towards;
  /** Most steps, 0 to 30; the convention `limit.depth` if absent. */
  readonly depth?: number;
}

/** Where a picture comes from and what was made from it. Ids stand for records and claims. */
export interface Lineage {
  readonly of: string;
  readonly towards: Towards;
  /** By (depth, id); the one asked about first. */
  readonly nodes: readonly LineageNode[];
  /** By id. */
  readonly steps: readonly LineageStepTaken[];
  readonly earliest: readonly string[];
  readonly latest: readonly string[];
  /** Circles, then dates, then handedness. */
  readonly contradictions: readonly Contradiction[];
  /** By claim. */
  readonly missingLinks: readonly MissingLink[];
  /** There is more beyond the depth or the most records of a lineage. */
  readonly cut: boolean;
  readonly grounds: Grounds;
  /** Rows read for it, which need not be read again to show it. */
  readonly rows: readonly AnyRow[];
}

export interface LineageNode {
  readonly record: string;
  /** Fewest steps from the one asked about. */
  readonly depth: number;
  /** When it was made, by all the claims whose dates are linked. */
  readonly made: DayRange;
  /** By its own datings alone; reversed where they have no day in common. */
  readonly recorded: DayRange;
  /** Its dates are linked with some that contradict each other: `made` says no more than `recorded`. */
  readonly datesContradict: boolean;
  readonly handedness: HandednessFromHere;
  /** Only part of it, or of the one asked about, is meant. */
  readonly inPart: boolean;
  /** It belongs here only if a region that is not recorded fits. */
  readonly regionUnknown: boolean;
  /** By earliest day of publication, then by id of the edition. */
  readonly appearances: readonly LineageAppearance[];
}

/** A publication that a plate is in. */
export interface LineageAppearance {
  readonly claim: string;
  readonly edition: string;
  readonly published: DayRange;
}

/** A claim that joins two nodes; of the kind Detail: the detail whose field says it. */
export interface LineageStepTaken {
  readonly kind: WalkStep;
  readonly by: string;
  readonly copy: string;
  readonly source: string;
}

/** Claims that cannot all be right. */
export interface Contradiction {
  /** CIRCLE: something would be its own source; LOOP, DATES, NO_ALTERNATIVE: of dates; MIRROR: of handedness. */
  readonly code: 'CIRCLE' | DateContradiction['code'] | 'MIRROR';
  readonly message: string;
  /** Ids of claims, of records whose fields say it, and of conventions. */
  readonly involved: readonly string[];
  /** Of dates: by how many days they miss each other. */
  readonly daysShort?: number;
}
