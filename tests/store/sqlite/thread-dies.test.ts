import { setTimeout as pause } from 'node:timers/promises';
import type { Worker } from 'node:worker_threads';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { createApi } from '../../../src/api/create-api.ts';
import { askStore } from '../../../src/questions/ask-store.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { ask } from '../../api/ask.ts';
import { crowdedStore } from '../../support/crowded-store.ts';
import { batchOf, copying, plate } from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

/** Threads of the store that is open, in the order in which they were started. */
const threads: Worker[] = [];
const gather = (thread: Worker) => threads.push(thread);
process.on('worker', gather);
afterAll(() => void process.off('worker', gather));
beforeEach(() => void threads.splice(0));

async function withStore(work: (store: GraphStore) => Promise<void>): Promise<void> {
  const store = await openSqliteStore(temporaryStore(), { create: true });
  try {
    await work(store);
  } finally {
    await store.close();
  }
}

/** Two ways in which a thread comes to its end without having been asked to: it is ended, or meets an error of its own. */
const ways: Readonly<Record<string, (thread: Worker) => void>> = {
  'is ended': thread => void thread.terminate(),
  'fails by an error': thread => thread.postMessage(null),
};

describe.each(Object.entries(ways))('a thread that %s', (_way, die) => {
  test('fails what it worked on with a code; what waited behind it is answered by the next', async () => {
    const file = temporaryStore();
    crowdedStore(file, 300_000);
    const store = await openSqliteStore(file, { questionLimit: 60_000 });
    await store.windowGroups({ work: 'work-of-none' });
    const reader = threads.at(-1)!;
    const asked = ['all', 'none', 'all'].map(name => store.windowGroups({ work: `work-of-${name}` }));
    await pause(20);
    die(reader);
    const ends = await Promise.allSettled(asked);
    const failed = ends.flatMap(end => (end.status === 'rejected' ? [end.reason as { code: string }] : []));
    expect(failed.map(({ code }) => code)).toEqual(['BROKEN_PROMISE']);
    expect(threads.at(-1)).not.toBe(reader);
    expect((await store.windowGroups({ work: 'work-of-none' })).changeSet).toBe(1);
    await store.close();
  });

  test('that wrote loses nothing that was acknowledged, and leaves no half of what was not', () =>
    withStore(async store => {
      const known = new Set<number>();
      let [failed, n] = [0, 0];
      for (let round = 0; round < 12; round++) {
        await store.lastChangeSet();
        const written = await store.write(batchOf(rowsOf(n)));
        known.add(written.changeSet);
        const writer = threads.at(-1)!;
        const writing = Array.from({ length: 4 }, (_, i) => store.write(batchOf(rowsOf(n + 1 + i))));
        await pause(Math.random() * 4);
        die(writer);
        for (const each of await Promise.allSettled(writing)) {
          if (each.status === 'fulfilled') known.add(each.value.changeSet);
          else {
            failed++;
            expect(each.reason).toMatchObject({ code: 'BROKEN_PROMISE' });
          }
        }
        await end(writer);
        n += 5;
      }
      expect(failed).toBeGreaterThan(0);
      const last = await store.lastChangeSet();
      const sets = await store.changeSets(Array.from({ length: last }, (_, i) => i + 1));
      expect(sets).not.toContain(undefined);
      expect(Math.max(...known)).toBeLessThanOrEqual(last);
      expect(known.size).toBeGreaterThanOrEqual(last - failed);
      const { records, claims } = await store.facts();
      expect({ records, claims }).toEqual({ records: size * last, claims: last });
    }));
});

/** What strikes a thread is to be met before the next step, also where all that was asked of it was answered before. */
async function end(thread: Worker): Promise<void> {
  while (thread.threadId !== -1) await pause(1);
}

const size = 60;

function rowsOf(n: number) {
  const plates = Array.from({ length: size }, (_, i) => plate(`${n}-${i}`));
  return [...plates, copying(`${n}`, `plate-of-${n}-0`, `plate-of-${n}-1`)];
}

test('who asks over HTTP is told an id, and the next question is answered', () =>
  withStore(async store => {
    const logged: Readonly<Record<string, unknown>>[] = [];
    const api = createApi({ store, questions: askStore(store), log: event => logged.push(event) });
    const query = '{ node(id: "plate-dog-at-gate") { id } }';
    await ask(api, query);
    // A thread may meet its end between two questions: it is tried until one is at work.
    for (let times = 1; logged.length === 0; times++) {
      expect(times).toBeLessThan(200);
      const struck = new Promise<Worker>(resolve =>
        setImmediate(() => {
          threads.at(-1)!.postMessage(null);
          resolve(threads.at(-1)!);
        }),
      );
      const { errors } = await ask(api, query);
      await end(await struck);
      if (errors === undefined) continue;
      expect(errors).toMatchObject([{ extensions: { code: 'BROKEN_PROMISE', id: logged[0]?.['id'] } }]);
    }
    expect(logged).toMatchObject([{ message: expect.stringContaining('a thread of the store failed') }]);
    expect((await ask(api, query)).errors).toBeUndefined();
  }));
