import type { Intention } from './intention.ts';
import { type MarcxmlOptions, marcxmlIntentions } from './marcxml/marcxml-intentions.ts';

/** A source to be read, as plain data: it crosses between threads. */
export type SourceReading = { readonly format: 'marcxml'; readonly options: MarcxmlOptions };

/** Reads a source of any format whose records come to bundles. */
export function intentionsOf(input: AsyncIterable<Uint8Array>, { options }: SourceReading): AsyncGenerator<Intention> {
  return marcxmlIntentions(input, options);
}
