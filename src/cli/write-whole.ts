import { createWriteStream, statSync } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { PassThrough } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { refusedOutput } from './refused-output.ts';

export interface WholeOptions {
  /** Looks at the file under another name before it is given its own; if it throws, the file is not there. */
  readonly prove?: (unfinished: string) => Promise<void>;
  /** What the bytes go through on their way. */
  readonly through?: NodeJS.ReadWriteStream;
}

/**
 * Writes lines to a file, which stands under its own name when all of it is safe on the disk; a device or pipe of the name
 * takes them as they come.
 * @throws OUTPUT_REFUSED if it cannot be written: nothing of it is left then
 */
export async function writeWhole(
  file: string,
  lines: AsyncIterable<string> | Iterable<string>,
  { prove = async () => undefined, through = new PassThrough() }: WholeOptions = {},
): Promise<void> {
  const isFile = isPlain(file);
  const unfinished = isFile ? `${file}.unfinished` : file;
  try {
    await pipeline(ended(lines), through, createWriteStream(unfinished, { flush: isFile }));
    await prove(unfinished);
    if (isFile) {
      await rename(unfinished, file);
      await flushFolder(dirname(file));
    }
  } catch (error) {
    if (isFile) await rm(unfinished, { force: true }).catch(() => undefined);
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

/** A new name is safe on the disk when its folder is. Windows opens no folders, and keeps names by itself. */
async function flushFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder);
  await handle.sync().finally(() => handle.close());
}

async function* ended(lines: AsyncIterable<string> | Iterable<string>): AsyncGenerator<string> {
  for await (const line of lines) yield `${line}\n`;
}
