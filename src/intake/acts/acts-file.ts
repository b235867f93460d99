import type { ActFault } from '../../domain/acts/check-act.ts';

/** What a file gives to an act, once or many times. */
export interface ActsFile {
  /** The file is one JSON object: it does the act once. */
  readonly isSingle: boolean;
  readonly acts: readonly ReadAct[];
}

export interface ReadAct {
  /** Number of the row as a spreadsheet shows it, the one with the names of columns being the first; of a JSON list from 1. */
  readonly record: number;
  readonly given: Readonly<Record<string, unknown>>;
  /** What could not be read. */
  readonly faults: readonly ActFault[];
  /** Names of the columns that the fields stand in, by field, where they are columns. */
  readonly columns?: ReadonlyMap<string, string>;
}
