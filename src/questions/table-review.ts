import type { AnyRow } from '../domain/model/row.ts';
import type { ErrorCode, SourcePlace } from '../errors.ts';
import type { IntakeProblem } from '../intake/intention.ts';
import type { ChangedCell, MovedCell } from './review-row.ts';

/** What tables say otherwise than the store, before anything is written. */
export interface TableReview {
  /** Rows that were read: those without a difference, changed, added and refused ones. */
  rows: number;
  readonly changed: ChangedRow[];
  readonly added: AddedRow[];
  readonly refused: RefusedRow[];
}

export interface ChangedRow {
  readonly place: SourcePlace;
  readonly row: AnyRow;
  readonly cells: readonly ChangedCell[];
  /** Change set in which the table saw the row, and the one in which it was last written. */
  readonly seen: number;
  readonly now: number;
}

export interface AddedRow {
  readonly place: SourcePlace;
  readonly row: AnyRow;
  readonly cells: readonly ChangedCell[];
}

export interface RefusedRow {
  readonly place: SourcePlace;
  /** At least one; the field of its place is the column. */
  readonly problems: readonly (IntakeProblem & { readonly moved?: MovedCell })[];
}

/** @param column absent: the row itself */
export function problemOf(place: SourcePlace, code: ErrorCode, message: string, column?: string): IntakeProblem {
  return { code, message, place: { ...place, ...(column === undefined ? {} : { field: column }) } };
}
