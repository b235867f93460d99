import type { GraphStore, HistoryPart, NewRows, WriteBatch } from '../../../src/store/graph-store.ts';
import { partsOf } from '../parts-of.ts';
import { emptyNeo4jStore } from './empty-neo4j-store.ts';

/** The store whose graph is in the database, and the end of what has been asked of any. */
let [present, last]: [object | undefined, Promise<unknown>] = [undefined, Promise.resolve()];

/**
 * A new and empty store, one of several at a time in the one database: the store that is asked has it, and puts its batches
 * again where another had it before. All that is asked of any of them is answered one after the other.
 */
export async function neo4jStoreByTurns(): Promise<GraphStore> {
  const batches: WriteBatch[] = [];
  const itself = {};
  let engine = await inTurn(async () => {
    present = itself;
    return emptyNeo4jStore();
  });

  const call = async (name: string, args: readonly unknown[]): Promise<unknown> => {
    if (present !== itself && name !== 'close') {
      await engine.close();
      engine = await emptyNeo4jStore();
      present = itself;
      for (const { after: _after, ...batch } of batches) await engine.write(batch);
    }
    // Read whole, since another store has the database next.
    if (name === 'history') return partsOf(engine);
    const answer = await (engine as unknown as Record<string, (...given: readonly unknown[]) => Promise<unknown>>)[
      name
    ]!(...args);
    if (name === 'write') batches.push(args[0] as WriteBatch);
    return answer;
  };
  return new Proxy(engine, {
    // A promise has a method "then"; a store has none.
    get: (_engine, name) => {
      if (name === 'then') return undefined;
      // Asks nothing of the database.
      if (name === 'pack') return (part: NewRows) => engine.pack(part);
      if (name === 'history') return () => eachOf(inTurn(() => call(name, [])) as Promise<readonly HistoryPart[]>);
      return (...args: readonly unknown[]) => inTurn(() => call(String(name), args));
    },
  });
}

async function* eachOf(parts: Promise<readonly HistoryPart[]>): AsyncGenerator<HistoryPart> {
  yield* await parts;
}

function inTurn<T>(work: () => Promise<T>): Promise<T> {
  const done = last.then(work);
  last = done.catch(() => undefined);
  return done;
}
