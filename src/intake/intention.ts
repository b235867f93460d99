import type { AnyRow, Origin } from '../domain/model/row.ts';
import type { ErrorCode, SourcePlace } from '../errors.ts';

/** A row that an intake wants in the graph. Its id is a name within the bundle (`@edition`), resolved when applied. */
export interface IntendedRow {
  /** The row; `id` and every link that begins with `@` name rows of the same bundle. Other links are real ids. */
  readonly row: AnyRow;
  /** Records: by what the record is recognised when it comes again. Claims have none: they are told apart by kind and evidence. */
  readonly origin?: Origin;
}

/** A link to a record of the same or another source that may not have come yet. */
export interface IntendedLink {
  /** The claim, with the role named `role` left empty. */
  readonly row: AnyRow;
  readonly role: string;
  readonly target: Origin;
}

/** What one record of a source comes to: its rows, the record itself first. */
export interface Bundle {
  readonly outcome: 'taken';
  readonly place: SourcePlace;
  /** Origin of the record itself: source, and key there. */
  readonly origin: Origin;
  /** Digest of everything in the record that is taken: equal digests mean that nothing changed. */
  readonly digest: string;
  readonly rows: readonly IntendedRow[];
  readonly links: readonly IntendedLink[];
  /** What could not be read or resolved within a record that is taken all the same. */
  readonly remarks: readonly IntakeProblem[];
}

/** A record that is not taken, and why. */
export interface Refusal {
  readonly outcome: 'refused';
  readonly problem: IntakeProblem;
}

export interface IntakeProblem {
  readonly code: ErrorCode;
  readonly message: string;
  readonly place: SourcePlace;
}

/** Every format in is an async generator of these, in the order of the source. */
export type Intention = Bundle | Refusal;
