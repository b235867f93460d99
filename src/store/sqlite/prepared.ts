import type { DatabaseSync, StatementSync } from 'node:sqlite';

/** Statements of a connection, prepared when they are first used. Rows come as arrays, in the order of the columns. */
export class Prepared {
  readonly #database: DatabaseSync;
  readonly #known = new Map<string, StatementSync>();

  constructor(database: DatabaseSync) {
    this.#database = database;
  }

  of(text: string): StatementSync {
    const known = this.#known.get(text);
    if (known !== undefined) return known;
    const statement = this.#database.prepare(text);
    statement.setReturnArrays(true);
    this.#known.set(text, statement);
    return statement;
  }

  /** The first row, or undefined. */
  first<Row extends readonly unknown[]>(text: string, ...values: readonly (string | number | null)[]): Row | undefined {
    return this.of(text).get(...values) as unknown as Row | undefined;
  }

  all<Row extends readonly unknown[]>(text: string, ...values: readonly (string | number | null)[]): Row[] {
    return this.of(text).all(...values) as unknown as Row[];
  }

  /** Texts that have been used so far. */
  used(): readonly string[] {
    return [...this.#known.keys()];
  }
}
