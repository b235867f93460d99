import type { Intention } from './intention.ts';
import { type MarcxmlOptions, marcxmlIntentions } from './marcxml/marcxml-intentions.ts';
import { type TableOptions, tableIntentions } from './table/table-intentions.ts';

/** A source to be read, as plain data: it crosses between threads. */
export type SourceReading =
  | { readonly format: 'marcxml'; readonly options: MarcxmlOptions }
  | { readonly format: 'table'; readonly options: TableOptions };

/** Reads a source of any format whose records come to bundles. */
export function intentionsOf(input: AsyncIterable<Uint8Array>, reading: SourceReading): AsyncGenerator<Intention> {
  return reading.format === 'marcxml'
    ? marcxmlIntentions(input, reading.options)
    : tableIntentions(input, reading.options);
}
