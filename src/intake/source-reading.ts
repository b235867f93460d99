import type { Intention } from './intention.ts';
import type { MarcxmlOptions } from './marcxml/marcxml-intentions.ts';
import type { TableOptions } from './table/table-intentions.ts';

/** A source to be read, and how. */
export type SourceReading =
  | { readonly format: 'marcxml'; readonly options: MarcxmlOptions }
  | { readonly format: 'table'; readonly options: TableOptions };

/** Reads a source of any format whose records come to bundles. What reads the other formats is not loaded. */
export async function intentionsOf(
  input: AsyncIterable<Uint8Array>,
  reading: SourceReading,
): Promise<AsyncGenerator<Intention>> {
  if (reading.format === 'marcxml') {
    const { marcxmlIntentions } = await import('./marcxml/marcxml-intentions.ts');
    return marcxmlIntentions(input, reading.options);
  }
  const { tableIntentions } = await import('./table/table-intentions.ts');
  return tableIntentions(input, reading.options);
}
