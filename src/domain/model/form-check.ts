import { Compile, type Validator } from 'typebox/schema';
import { type FaultMessage, faultMessage } from './check-row-message.ts';
import type { JsonSchema } from './graph-file-schema.ts';

/** What a value must look like. The schema is compiled at first use: those of all kinds together take as long as a start. */
export class FormCheck {
  readonly #schema: () => JsonSchema;
  #validator: Validator | undefined;

  constructor(schema: () => JsonSchema) {
    this.#schema = schema;
  }

  /** What is wrong with a value, first of all; undefined for one of the right form. */
  fault(value: unknown): FaultMessage | undefined {
    this.#validator ??= Compile(this.#schema());
    if (this.#validator.Check(value)) return undefined;
    const [, errors] = this.#validator.Errors(value);
    return faultMessage(errors, value, this.#schema());
  }
}
