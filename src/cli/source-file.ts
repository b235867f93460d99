import { open, stat } from 'node:fs/promises';
import { PlatestemmaError } from '../errors.ts';

/**
 * Bytes of a file that is to be read.
 * @throws SOURCE_REFUSED for what is no file, or may not be read: before anything is written
 */
export async function sizeOfSource(file: string): Promise<number> {
  try {
    const handle = await open(file);
    await handle.close();
    const found = await stat(file);
    if (found.isDirectory()) throw new Error('it is a folder');
    return found.size;
  } catch (cause) {
    throw new PlatestemmaError(
      'SOURCE_REFUSED',
      `expected a file that can be read, came "${file}": ${(cause as Error).message}`,
      { cause, place: { file } },
    );
  }
}
