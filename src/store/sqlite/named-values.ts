import type { Prepared } from './prepared.ts';

export type Bound = Readonly<Record<string, string | number>>;

/** Reads by statements whose values have names; a name that a statement does not have is passed over. */
export class NamedValues {
  readonly #prepared: Prepared;

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
  }

  all<Row extends readonly unknown[]>(text: string, values: Bound): Row[] {
    const statement = this.#prepared.of(text);
    statement.setAllowUnknownNamedParameters(true);
    return statement.all(values) as unknown as Row[];
  }
}
