import { PlatestemmaError } from '../../errors.ts';
import type { Intention } from '../intention.ts';
import { marcToBundle } from './marc-to-bundle.ts';
import type { BrokenInput } from './marcxml-parser.ts';
import { readMarcxml } from './read-marcxml.ts';

export interface MarcxmlOptions {
  /** Name of the file, for messages. */
  readonly file?: string;
  /** Source of records that do not name one in field 003. */
  readonly source?: string;
  /** Intentions already dealt with in an earlier run: so many are read over and not yielded. */
  readonly skip?: number;
}

/**
 * Library records in MARCXML as intentions, in the order of the input: one for each record, and one for each fault of
 * the file that lies in no record, so that every record is accounted for.
 * @throws SOURCE_REFUSED if the encoding of the file is not known
 */
export async function* marcxmlIntentions(
  input: AsyncIterable<Uint8Array | string>,
  options: MarcxmlOptions = {},
): AsyncGenerator<Intention> {
  const { file } = options;
  let toSkip = options.skip ?? 0;
  try {
    for await (const some of readMarcxml(input)) {
      for (const read of some) {
        if (toSkip > 0) toSkip--;
        else yield 'broken' in read ? brokenInput(read, file) : marcToBundle(read, options);
      }
    }
  } catch (error) {
    // What is refused as a whole is refused by the name of the file.
    if (!(error instanceof PlatestemmaError) || file === undefined) throw error;
    throw new PlatestemmaError(error.code, `${file}: ${error.message}`, {
      cause: error,
      place: { file, ...error.place },
    });
  }
}

function brokenInput({ broken, after }: BrokenInput, file: string | undefined): Intention {
  const message = `${broken} (after ${after} records)`;
  return {
    outcome: 'refused',
    problem: { code: 'SOURCE_REFUSED', message, place: file === undefined ? {} : { file } },
  };
}
