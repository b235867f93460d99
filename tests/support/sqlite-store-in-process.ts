import { DatabaseSync } from 'node:sqlite';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { Deadline } from '../../src/store/sqlite/deadline.ts';
import { openAndMigrate, openToWrite } from '../../src/store/sqlite/migrate.ts';
import { Reader } from '../../src/store/sqlite/reader.ts';
import { SqliteStore } from '../../src/store/sqlite/sqlite-store.ts';
import type { StoreCalls } from '../../src/store/sqlite/worker-client.ts';
import { Writer } from '../../src/store/sqlite/writer.ts';
import type { WrittenBatch } from '../../src/store/sqlite/written-batch.ts';

export interface InProcess {
  readonly store: GraphStore;
  /** The connection that reads. */
  readonly reading: DatabaseSync;
  /** Texts of the statements that have been used so far. */
  readonly used: () => ReadonlySet<string>;
}

/**
 * The SQLite engine without its threads: the same statements and the same near side, a hundred times faster to open.
 * @param gathered see SearchReader: a small number to meet what else only large stores do
 */
export function sqliteStoreInProcess(file: string, gathered?: number): InProcess {
  openAndMigrate(file, true).close();
  const database = openToWrite(file);
  database.exec('PRAGMA synchronous = OFF');
  const writer = new Writer(database);
  const readers = new DatabaseSync(file, { readOnly: true });
  const reader = new Reader(readers, file, new Deadline(new Int32Array(2)), gathered);
  const reading = callsOf(readers, callOf(reader));
  const hold = () => {
    const held = new DatabaseSync(file, { readOnly: true });
    const holder = new Reader(held, file, new Deadline(new Int32Array(2)));
    holder.hold();
    return callsOf(held, callOf(holder));
  };
  const writing = callsOf(database, (_name, args) => {
    const changeSet = writer.write(args[0] as WrittenBatch);
    writer.putBackLog();
    return changeSet;
  });
  return {
    store: new SqliteStore({ writer: writing, quick: reading, long: reading, words: reading, hold }, 10_000),
    reading: readers,
    used: () => new Set([...writer.prepared.used(), ...reader.prepared.used()]),
  };
}

function callOf(reader: Reader) {
  return (name: string, args: readonly unknown[]) =>
    reader.within(undefined, () =>
      (reader as unknown as Record<string, (...args: readonly unknown[]) => unknown>)[name]!(...args),
    );
}

/** Copies what crosses, as a thread would. */
function callsOf(connection: DatabaseSync, answer: (name: string, args: readonly unknown[]) => unknown): StoreCalls {
  return {
    isClosed: false,
    call: async <T>(name: string, args: readonly unknown[]) =>
      structuredClone(answer(name, structuredClone(args))) as T,
    close: async () => {
      if (connection.isOpen) connection.close();
    },
  };
}
