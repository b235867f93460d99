import { DatabaseSync } from 'node:sqlite';
import { parentPort, workerData } from 'node:worker_threads';
import { invariant, PlatestemmaError } from '../../errors.ts';
import type { EditionFilter, WindowKey } from '../graph-store.ts';
import { KeyCache } from './key-cache.ts';
import { checkSchema, openAndMigrate } from './migrate.ts';
import { ReachReader } from './reach-reader.ts';
import { Reader } from './reader.ts';
import { sqliteError } from './sqlite-error.ts';
import { sql } from './statements.ts';
import { Writer, type WrittenBatch } from './writer.ts';

/** A thread that holds one connection: the writer, or a reader. Calls come one at a time and are answered in order. */
export interface WorkerData {
  readonly file: string;
  readonly role: 'writer' | 'reader';
  readonly create: boolean;
}

export interface Call {
  readonly number: number;
  readonly name: string;
  readonly args: readonly unknown[];
  /** Milliseconds since 1970. */
  readonly deadline: number;
}

export type Answer =
  | { readonly number: number; readonly value: unknown }
  | {
      readonly number: number;
      readonly error: { readonly code: string; readonly message: string; readonly retriable: boolean };
    };

const { file, role, create } = workerData as WorkerData;
const port = parentPort;
invariant(port !== null, 'a store thread has a parent');

try {
  const calls = role === 'writer' ? writerCalls() : readerCalls();
  port.postMessage({ number: 0, value: 'open' } satisfies Answer);
  port.on('message', (call: Call) => port.postMessage(answer(calls, call)));
} catch (error) {
  port.postMessage({ number: 0, error: plainError(error) } satisfies Answer);
}

function answer(calls: Calls, call: Call): Answer {
  try {
    return { number: call.number, value: calls(call) };
  } catch (error) {
    return { number: call.number, error: plainError(error) };
  }
}

type Calls = (call: Call) => unknown;

function writerCalls(): Calls {
  const database = openAndMigrate(file, create);
  const writer = new Writer(database, file);
  return ({ name, args }) => {
    if (name === 'close') return database.close();
    return writer.write(args[0] as WrittenBatch);
  };
}

function readerCalls(): Calls {
  const database = new DatabaseSync(file, { readOnly: true, timeout: 5000 });
  checkSchema(database, file);
  database.exec('PRAGMA cache_size = -32768; PRAGMA temp_store = MEMORY');
  const reader = new Reader(database, file);
  const keys = new KeyCache(database);
  const reach = new ReachReader(database, id => keys.get(id));
  const profiles = database.prepare(sql.profileOfName);
  const profileNumber = (name: string): number | undefined => profiles.get(name)?.['number'] as number | undefined;
  const reachCalls: Readonly<Record<string, (...args: never[]) => unknown>> = {
    windowGroups: (filter: EditionFilter) => reach.groups(filter),
    irregularEditions: (filter: EditionFilter) => reach.irregular(filter),
    editionsInWindows: (windows: readonly WindowKey[], filter: EditionFilter, after: string, limit: number) =>
      reach.inWindows(windows, filter, after, limit, profileNumber),
    editionsByTitle: (filter: EditionFilter, sort: string, after: string, limit: number) =>
      reach.byTitle(filter, sort, after, limit),
  };
  return ({ name, args, deadline }) => {
    if (name === 'close') return database.close();
    const call = reachCalls[name] ?? (reader as unknown as Record<string, (...args: never[]) => unknown>)[name];
    invariant(call !== undefined, `a reader knows the call ${name}`);
    return reader.within(deadline, () => call.apply(reader, args as never[]));
  };
}

function plainError(error: unknown): Extract<Answer, { error: unknown }>['error'] {
  const known = sqliteError(error, file);
  if (known instanceof PlatestemmaError)
    return { code: known.code, message: known.message, retriable: known.retriable };
  return {
    code: 'BROKEN_PROMISE',
    message: known instanceof Error ? (known.stack ?? known.message) : String(known),
    retriable: false,
  };
}
