import { DatabaseSync } from 'node:sqlite';
import { parentPort, workerData } from 'node:worker_threads';
import { invariant, PlatestemmaError } from '../../errors.ts';
import { Deadline } from './deadline.ts';
import { checkSchema, openToWrite } from './migrate.ts';
import { Reader } from './reader.ts';
import { sqliteError } from './sqlite-error.ts';
import { Writer } from './writer.ts';
import type { WrittenBatch } from './written-batch.ts';

/** A holder is a reader that sees the store for ever as it was at its first call. */
export type WorkerRole = 'writer' | 'reader' | 'holder';

/** A thread that holds one connection: the writer, or a reader. Calls come one at a time and are answered in order. */
export interface WorkerData {
  readonly file: string;
  readonly role: WorkerRole;
  /** Shared with the thread that asks; 1 in its first place ends what runs, in the second stands the call to be ended. */
  readonly stop: Int32Array;
}

export interface Call {
  readonly name: string;
  readonly args: readonly unknown[];
  /** Of the calls of its client, from 1. */
  readonly number: number;
  /** Milliseconds from now; undefined: none. */
  readonly limit: number | undefined;
}

export type Answer =
  | { readonly value: unknown }
  | { readonly error: { readonly code: string; readonly message: string; readonly retriable: boolean } };

interface Connection {
  answer(call: Call): unknown;
  /** What is done when the answer is on its way. */
  tidy?(): void;
  close(): void;
}

const { file, role, stop } = workerData as WorkerData;
const port = parentPort;
invariant(port !== null, 'a store thread has a parent');

let connection: Connection | undefined;

port.on('message', (call: Call) => {
  if (call.name === 'close') {
    connection?.close();
    port.close();
    return;
  }
  port.postMessage(answer(call));
  try {
    connection?.tidy?.();
  } catch {
    // The change is written: what hindered the tidying meets the next change, which says so.
  }
});

try {
  connection = open();
} catch {
  // Told to the first who asks.
}
port.postMessage('ready');

function answer(call: Call): Answer {
  try {
    connection ??= open();
    return { value: connection.answer(call) };
  } catch (error) {
    return { error: plainError(error) };
  }
}

function open(): Connection {
  return role === 'writer' ? openWriter() : openReader();
}

function openWriter(): Connection {
  const database = openToWrite(file);
  const writer = new Writer(database);
  return {
    answer: ({ args }) => writer.write(args[0] as WrittenBatch),
    tidy: () => writer.putBackLog(),
    close: () => database.close(),
  };
}

function openReader(): Connection {
  const database = new DatabaseSync(file, { readOnly: true, timeout: 5000 });
  checkSchema(database, file);
  database.exec('PRAGMA cache_size = -32768; PRAGMA temp_store = MEMORY');
  const deadline = new Deadline(stop);
  const reader = new Reader(database, file, deadline);
  if (role === 'holder') reader.hold();
  const answer = ({ name, args, limit, number }: Call) => {
    const call = (reader as unknown as Record<string, (...args: never[]) => unknown>)[name];
    invariant(call !== undefined, `a reader knows the call ${name}`);
    return reader.within(limit, () => call.apply(reader, args as never[]), number);
  };
  return { answer, close: () => database.close() };
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
