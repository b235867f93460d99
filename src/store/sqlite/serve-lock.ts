import { statSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { PlatestemmaError } from '../../errors.ts';
import { sqliteError } from './sqlite-error.ts';

/**
 * Makes sure that one process at most serves a store: an exclusive transaction on a file beside it, which the system
 * ends with the process, however it dies. Commands that only ask are not hindered.
 * @returns ends the claim
 * @throws STORE_BUSY if another process serves the store, and what opening its file throws
 */
export function claimServing(file: string): () => void {
  // What is no store gets no file beside it.
  if (statSync(file, { throwIfNoEntry: false })?.isDirectory() === true)
    throw new PlatestemmaError('STORE_UNREACHABLE', `expected the file of a store, came the folder "${file}"`);
  let side: DatabaseSync | undefined;
  try {
    side = new DatabaseSync(`${file}-serving`);
    side.exec('BEGIN EXCLUSIVE');
    const claimed = side;
    return () => claimed.close();
  } catch (cause) {
    side?.close();
    const known = sqliteError(cause, file);
    if (!(known instanceof PlatestemmaError) || known.code !== 'STORE_BUSY') throw known;
    throw new PlatestemmaError('STORE_BUSY', `another process serves the store "${file}"`, { cause, retriable: true });
  }
}
