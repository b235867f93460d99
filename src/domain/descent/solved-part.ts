import type { DateContradiction, DateReason, DateRoom, DayEnd, LinkedDays } from './dates-network.ts';

/** A part of a network, solved: as `LinkedDates`, for its own variables. */
export interface SolvedPart {
  readonly names: readonly string[];
  has(variable: string): boolean;
  /** There are days on which all that it says holds. */
  readonly consistent: boolean;
  readonly exact: boolean;
  days(variable: string): LinkedDays;
  /** As `days` would be if the variable were linked with a contradiction. */
  asRecorded(variable: string): LinkedDays;
  why(variable: string, end: DayEnd): readonly DateReason[];
  /** At most as many as were asked for. */
  contradictions(): readonly DateContradiction[];
  /** How many there are. */
  readonly contradictionCount: number;
  room(id: string): DateRoom;
}
