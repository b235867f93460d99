import type { GraphStore } from '../graph-store.ts';
import { SqliteStore } from './sqlite-store.ts';
import { WorkerClient } from './worker-client.ts';

export interface SqliteOptions {
  /** Make the file if it is not there. */
  readonly create?: boolean;
  /** Longest time a question may take, in milliseconds; 10,000 if absent. */
  readonly questionLimit?: number;
}

/**
 * A store in one SQLite file: a thread that writes, one that reads what is bounded, one that reads what may be long.
 * @throws STORE_UNREACHABLE, STORE_NOT_OURS, STORE_NEWER, STORE_READ_ONLY, STORE_BUSY
 */
export async function openSqliteStore(file: string, options: SqliteOptions = {}): Promise<GraphStore> {
  // The writer first: it makes and migrates the file.
  const writer = await WorkerClient.open({ file, role: 'writer', create: options.create === true });
  const readers = await Promise.all([0, 1].map(() => WorkerClient.open({ file, role: 'reader', create: false })));
  return new SqliteStore(writer, readers[0]!, readers[1]!, options.questionLimit ?? 10_000);
}
