import type { GraphStore } from '../graph-store.ts';
import { openAndMigrate } from './migrate.ts';
import { SqliteStore } from './sqlite-store.ts';
import type { WorkerRole } from './worker.ts';
import { WorkerClient } from './worker-client.ts';

export interface SqliteOptions {
  /** Make the file if it is not there. */
  readonly create?: boolean;
  /** Longest time a question may take, in milliseconds; 10,000 if absent. */
  readonly questionLimit?: number;
}

/**
 * A store in one SQLite file: a thread that writes, one that reads what is bounded, one that reads what may be long, one
 * that looks for words. Each but the bounded reader starts when it is first needed.
 * @throws STORE_UNREACHABLE, STORE_NOT_OURS, STORE_NEWER, STORE_READ_ONLY, STORE_BUSY
 */
export async function openSqliteStore(file: string, options: SqliteOptions = {}): Promise<GraphStore> {
  openAndMigrate(file, options.create === true).close();
  const client = (role: WorkerRole) => new WorkerClient(file, role);
  const quick = client('reader');
  quick.warm();
  const [writer, long, words] = [client('writer'), client('reader'), client('reader')];
  const hold = () => client('holder');
  return new SqliteStore({ writer, quick, long, words, hold }, options.questionLimit ?? 10_000);
}
