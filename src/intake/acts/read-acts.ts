import type { Act } from '../../domain/acts/act.ts';
import { parseJson } from '../../domain/text/parse-json.ts';
import { PlatestemmaError } from '../../errors.ts';
import type { ActsFile } from './acts-file.ts';
import { readActsTable } from './read-acts-table.ts';
import { refusedFile } from './refused-file.ts';

/** Most acts of a file: they are written as one change. Convention. */
const mostActs = 5_000;

/** Largest file, in bytes; convention. */
const mostBytes = 100_000_000;

/**
 * A file with what is given to an act: a JSON object, a JSON list of objects, or a table with a column a field and a row an
 * act.
 * @throws INPUT_INVALID for a file that is neither, has columns that are no fields, or is too large
 */
export async function readActs(input: AsyncIterable<Uint8Array>, act: Act, file: string): Promise<ActsFile> {
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  for await (const chunk of input) {
    bytes += chunk.length;
    if (bytes > mostBytes)
      throw refusedFile(file, `expected at most ${mostBytes.toLocaleString('en')} bytes, came more`);
    chunks.push(chunk);
  }
  const read = isJson(chunks) ? readJson(chunks, file) : await readActsTable(chunks, act, file);
  if (read.acts.length === 0) throw refusedFile(file, `expected at least one row or object for ${act.name}, came none`);
  if (read.acts.length > mostActs)
    throw refusedFile(
      file,
      `expected at most ${mostActs.toLocaleString('en')} rows, came ${read.acts.length.toLocaleString('en')}`,
    );
  return read;
}

function isJson(chunks: readonly Uint8Array[]): boolean {
  const start = new TextDecoder().decode(Buffer.concat(chunks.slice(0, 1)).subarray(0, 1000));
  return /^\s*[[{]/.test(start);
}

function readJson(chunks: readonly Uint8Array[], file: string): ActsFile {
  let value: unknown;
  try {
    value = parseJson(new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks)));
  } catch (cause) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `${file}: expected JSON, came another text: ${(cause as Error).message}`,
      {
        cause,
        place: { file },
      },
    );
  }
  const isSingle = !Array.isArray(value);
  const all = isSingle ? [value] : (value as readonly unknown[]);
  // What is no object is told when it is checked.
  const acts = all.map((given, i) => ({
    record: i + 1,
    given: given as ActsFile['acts'][number]['given'],
    faults: [],
  }));
  return { isSingle, acts };
}
