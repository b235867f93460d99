import type { DayRange } from '../domain/dates/day-bounds.ts';
import type { PlateInEdition } from '../domain/descent/editions-plates.ts';
import type { AnyRow } from '../domain/model/row.ts';
import type { Grounds } from './grounds.ts';
import type { Contradiction } from './lineage-answer.ts';

/** The editions of a work, or those that an edition descends from and that descend from it. Ids stand for records and claims. */
export interface Descent {
  /** Id of the work or edition asked about. */
  readonly of: string;
  /** By (depth, earliest day, id). */
  readonly editions: readonly DescentEdition[];
  /** Ids of the claims of descent between them, in order of id. */
  readonly steps: readonly string[];
  /** Circles, then dates. */
  readonly contradictions: readonly Contradiction[];
  /** There are more editions than are listed. */
  readonly cut: boolean;
  readonly grounds: Grounds;
  /** Rows read for it, which need not be read again to show it. */
  readonly rows: readonly AnyRow[];
}

export interface DescentEdition {
  readonly edition: string;
  /** Most descents that lead to it from an edition that descends from none of the others. */
  readonly depth: number;
  /** When it was published, by all the claims whose dates are linked. */
  readonly published: DayRange;
  /** By its own datings alone; reversed where they have no day in common. */
  readonly recorded: DayRange;
  /** Its dates are linked with some that contradict each other: `published` says no more than `recorded`. */
  readonly datesContradict: boolean;
  readonly plates: readonly PlateInEdition[];
}
