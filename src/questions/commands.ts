import type { ActName } from '../domain/acts/acts.ts';
import type { ActFault } from '../domain/acts/check-act.ts';
import type { KindName } from '../domain/model/kinds.ts';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import type { Contradiction } from './lineage-answer.ts';

/**
 * All that can be written by people. Each command is one change set, whole or not at all; what it contradicts is told and
 * never refused.
 *
 * Every command may throw INPUT_INVALID, ID_MISTYPED, KIND_MISMATCH and DATE_UNREADABLE for what does not have its form, NOT_FOUND
 * for what is named and not there, and what the store throws; nothing has been written then.
 */
export interface Commands {
  /** A new record or claim. Its id is made, unless one is given by hand. */
  add(row: NewRow, signed: Signed): Promise<Written>;
  /**
   * Changes some fields of a record or claim. One that changes nothing writes nothing.
   * @throws REVISION_MOVED if it was changed after what was seen, and is not to be merged or the same fields were changed
   */
  edit(edit: Edit, signed: Signed): Promise<Written>;
  /**
   * A claim is said no longer; a record, which must not be named by others, is taken out.
   * @throws REVISION_MOVED; STILL_NAMED for a record
   */
  withdraw(what: Withdrawal, signed: Signed): Promise<Written>;
  /** What was withdrawn is said again, or there again, as it was last. @throws INPUT_INVALID if it was not withdrawn */
  restore(what: Restoration, signed: Signed): Promise<Written>;
  /** Another claim takes the place of one: what is not said of it is as it was there. @throws REVISION_MOVED */
  supersede(edit: Edit, signed: Signed): Promise<Superseded>;
  /**
   * What a change set, or all change sets of a run of an intake, wrote is as it was before.
   * @throws REVISION_MOVED if what it wrote was changed since; STILL_NAMED if what it added is named by what came later
   */
  undo(what: Undoing, signed: Signed): Promise<Undone>;
  /**
   * Gives a convention another value, whether there is a record of it yet or not. One that has it writes nothing.
   * @throws REVISION_MOVED
   */
  setConvention(what: SetConvention, signed: Signed): Promise<Written>;
  /**
   * Acts, each of which writes several records and claims: all of them in one change set, or none. What is said already is
   * not said again. In acts that are recorded together one name of a kind is one record.
   * @param isTrial all is worked out, and nothing is written
   */
  record(acts: readonly GivenAct[], signed: Signed, isTrial?: boolean): Promise<Recorded>;
}

/** Who changes something, and why. */
export interface Signed {
  readonly who: string;
  readonly why: string;
}

/** Fields by name, as in a graph file; with an id it is one given by hand. */
export interface NewRow {
  readonly kind: KindName;
  readonly id?: string;
  readonly fields: Readonly<Record<string, unknown>>;
}

/** What names a row as somebody saw it. */
interface RowSeen {
  readonly id: string;
  /** The kind that is expected; absent: any. */
  readonly kind?: KindName;
  /** Number of the last change set when the row was looked at; absent: it is not compared with what came since. */
  readonly seen?: number;
}

export interface Edit extends RowSeen {
  /** New values by name; null: it has none from now on. Others stay. */
  readonly fields: Readonly<Record<string, unknown>>;
  /** Fields that somebody else changed since are left as they are, if they are none of those given. */
  readonly merge?: boolean;
}

export interface SetConvention {
  readonly key: string;
  readonly value: unknown;
  /** Where the value comes from; "convention" if absent. */
  readonly source?: string;
  /** As of a row that is edited. */
  readonly seen?: number;
}

export interface Withdrawal extends RowSeen {
  /** Of a claim: why it is said no longer; absent: why it was written. */
  readonly because?: string;
}

export type Restoration = Pick<RowSeen, 'id' | 'kind'>;

/** Exactly one of the two. */
export interface Undoing {
  readonly changeSet?: number;
  readonly batch?: string;
}

export interface Written {
  /** The row as it is now; undefined: it is not there. */
  readonly row: Stamped<AnyRow> | undefined;
  /** Number of the change set; of the last one where nothing was changed. */
  readonly changeSet: number;
  /** Contradictions in which what was written takes part; undefined: they could not be looked for. */
  readonly problems: readonly Contradiction[] | undefined;
}

export interface Superseded extends Written {
  /** The claim whose place was taken. */
  readonly superseded: Stamped<AnyRow>;
}

export interface GivenAct {
  readonly act: ActName;
  /** Values by the names of its fields. */
  readonly given: Readonly<Record<string, unknown>>;
}

export interface Recorded {
  /** Why acts are refused; where there is one, nothing is written. */
  readonly refusals: readonly ActRefusal[];
  /** Of each act what it wrote or found, by the names of its answers. Empty where one is refused, and of a trial. */
  readonly acts: readonly RecordedAct[];
  /** How many records and claims were written; of a trial, would be. */
  readonly written: number;
  /** Number of the change set; of the last one where nothing was written. */
  readonly changeSet: number;
  /** As of what is written. */
  readonly problems: readonly Contradiction[] | undefined;
}

export type RecordedAct = Readonly<Record<string, AnyRow | readonly AnyRow[] | undefined>>;

/** Why an act is refused. */
interface ActRefusal extends ActFault {
  /** Its place among the acts, from 0. */
  readonly act: number;
}

export interface Undone {
  /** Numbers of the change sets that were undone. */
  readonly undone: readonly number[];
  /** Rows that are as they were before, and rows that are not there any more. */
  readonly restored: number;
  readonly removed: number;
  readonly changeSet: number;
  /** As of what is written. */
  readonly problems: readonly Contradiction[] | undefined;
}
