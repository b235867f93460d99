/** One row of a table as it came. */
export interface TableRow {
  /** Counted from 1, without the row that names the columns and lines without any value. */
  readonly number: number;
  /** Values by column, in the order of the source; columns without a value are left out. */
  readonly cells: ReadonlyMap<string, string>;
  /** Lists of JSON by name: how many elements each has, which are cells by `name.0`, `name.1`, … */
  readonly lists: ReadonlyMap<string, number>;
}

/** A row that cannot be read, and why. */
export interface BrokenRow {
  readonly number: number;
  readonly fault: string;
}
