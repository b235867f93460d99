/**
 * Stable codes of everything that can go wrong. DEVELOPERS.md has the same table; a test keeps the two equal.
 */
export const errorCodes = {
  INPUT_INVALID: 'what was given does not have the form that was asked for',
  DATE_UNREADABLE: 'a date or date phrase cannot be read',
  NOT_FOUND: 'a command or change names a record that is not there',
  REVISION_MOVED: 'a record or claim was changed since it was seen',
  STILL_NAMED: 'what is to be taken out is named by what stays',
  KIND_MISMATCH: 'a record of another kind was expected',
  ID_MISTYPED: 'an id fails its check character',
  QUERY_TOO_COSTLY: 'a query is deeper, wider or larger than the limits allow',
  SUPPOSE_TOO_LARGE: 'more is supposed or left out than a question may',
  CURSOR_INVALID: 'a cursor was not made for this list and these arguments',
  NOT_ALLOWED: 'who asks may not do this',
  SERVER_BUSY: 'more is asked of the server at once than it can answer',
  STORE_BUSY: 'another process is writing to the store',
  STORE_FULL: 'the disk that holds the store is full',
  STORE_READ_ONLY: 'the store cannot be written to',
  STORE_NEWER: 'the store was written by a newer version of this program',
  STORE_NOT_OURS: 'the file is no store of this program',
  STORE_TIMEOUT: 'a question took longer than its limit and was ended',
  STORE_UNREACHABLE: 'the store cannot be opened or reached',
  SOURCE_REFUSED: 'a source file cannot be read',
  OUTPUT_REFUSED: 'a file or stream that was to take an answer cannot be written',
  TARGET_NOT_EMPTY: 'what is to be filled or written holds something else',
  TRANSFER_DIFFERS: 'what was transferred is not what it was taken from',
  BROKEN_PROMISE: 'a fault of this program, not of its input',
} as const;

export type ErrorCode = keyof typeof errorCodes;

/** Where in the input a fault lies: file, record (1-based ordinal or name), key (control number or id), field. */
export interface SourcePlace {
  readonly file?: string;
  readonly record?: number;
  readonly key?: string;
  readonly field?: string;
}

/** Of REVISION_MOVED: the row as it was seen and as it is, and names of the fields that differ. */
export interface Moved {
  readonly seen: unknown;
  readonly now: unknown;
  readonly fields: readonly string[];
}

export interface ErrorDetails {
  readonly cause?: unknown;
  readonly place?: SourcePlace;
  readonly moved?: Moved;
  /** True if the same call may succeed when made again unchanged. */
  readonly retriable?: boolean;
}

/** The one error of this program: a stable code, and a message that says what was expected, what came and where. */
export class PlatestemmaError extends Error {
  readonly code: ErrorCode;
  readonly place: SourcePlace | undefined;
  readonly moved: Moved | undefined;
  readonly retriable: boolean;

  constructor(code: ErrorCode, message: string, details: ErrorDetails = {}) {
    super(message, details.cause === undefined ? undefined : { cause: details.cause });
    this.name = 'PlatestemmaError';
    this.code = code;
    this.place = details.place;
    this.moved = details.moved;
    this.retriable = details.retriable ?? false;
  }
}

/** Our own promise, checked: a failure is a fault of this program and is masked at the edges. */
export function invariant(condition: unknown, promise: string): asserts condition {
  if (!condition) throw new PlatestemmaError('BROKEN_PROMISE', promise);
}
