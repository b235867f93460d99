import { DatabaseSync } from 'node:sqlite';
import { PlatestemmaError } from '../../errors.ts';

/**
 * Makes sure that one process at most serves a store: an exclusive transaction on a file beside it, which the system
 * ends with the process, however it dies. Commands that only ask are not hindered.
 * @returns ends the claim
 * @throws STORE_BUSY if another process serves the store
 */
export function claimServing(file: string): () => void {
  const side = new DatabaseSync(`${file}-serving`);
  try {
    side.exec('BEGIN EXCLUSIVE');
  } catch (cause) {
    side.close();
    throw new PlatestemmaError('STORE_BUSY', `another process serves the store "${file}"`, { cause, retriable: true });
  }
  return () => side.close();
}
