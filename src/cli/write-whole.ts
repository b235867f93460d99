import { createWriteStream, statSync } from 'node:fs';
import { rename, rm } from 'node:fs/promises';
import { pipeline } from 'node:stream/promises';
import { refusedOutput } from './refused-output.ts';

/**
 * Writes lines to a file, which stands under its own name when it is whole; a device or pipe of the name takes them as
 * they come.
 * @param prove looks at the file under another name before it is given its own; if it throws, the file is not there
 * @throws OUTPUT_REFUSED if it cannot be written: nothing of it is left then
 */
export async function writeWhole(
  file: string,
  lines: AsyncIterable<string> | Iterable<string>,
  prove: (unfinished: string) => Promise<void> = async () => undefined,
): Promise<void> {
  const unfinished = isPlain(file) ? `${file}.unfinished` : file;
  try {
    await pipeline(ended(lines), createWriteStream(unfinished));
    await prove(unfinished);
    if (unfinished !== file) await rename(unfinished, file);
  } catch (error) {
    if (unfinished !== file) await rm(unfinished, { force: true }).catch(() => undefined);
    throw refusedOutput(error, file);
  }
}

/** A file, or none yet. */
function isPlain(file: string): boolean {
  try {
    return statSync(file).isFile();
  } catch {
    return true;
  }
}

async function* ended(lines: AsyncIterable<string> | Iterable<string>): AsyncGenerator<string> {
  for await (const line of lines) yield `${line}\n`;
}
