import { setTimeout } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { createApi } from '../../../src/api/create-api.ts';
import type { Bundle } from '../../../src/intake/intention.ts';
import { applyIntake, batchSize } from '../../../src/questions/apply-intake.ts';
import { askStore } from '../../../src/questions/ask-store.ts';
import { checkStore } from '../../../src/questions/check-store.ts';
import { historyOf } from '../../../src/questions/history-of.ts';
import { emptyReport } from '../../../src/questions/intake-report.ts';
import { transferInto } from '../../../src/questions/transfer.ts';
import { checkedGraphStore } from '../../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { openNeo4jStore } from '../../../src/store/neo4j/open.ts';
import { ask, data } from '../../api/ask.ts';
import { editedStore } from '../../support/edited-store.ts';
import { copyStore, historyOfStore } from '../../support/histories.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { Door } from '../../support/neo4j/door.ts';
import { emptyNeo4jStore, neo4jServer } from '../../support/neo4j/empty-neo4j-store.ts';
import { seedOfRun } from '../../support/runs.ts';
import { seededRandom } from '../../support/seeded-random.ts';
import { testWorld } from '../../support/test-world.ts';

/** An empty store, and the door that is the only way to it. */
async function storeBehindDoor(questionLimit?: number): Promise<{ store: GraphStore; door: Door }> {
  const { uri, user, password } = neo4jServer();
  await (await emptyNeo4jStore()).close();
  const door = await Door.to(Number(new URL(uri).port));
  const limit = questionLimit === undefined ? {} : { questionLimit };
  const store = await openNeo4jStore(`neo4j://${user}@127.0.0.1:${door.port}`, { password, ...limit });
  return { store: checkedGraphStore(store), door };
}

/** Shuts a door again and again at moments that follow from a seed, until the work is done. @returns how often */
async function swing(door: Door, seed: number, work: Promise<unknown>): Promise<number> {
  const random = seededRandom(seed);
  let [times, isDone] = [0, false];
  const done = work.finally(() => {
    isDone = true;
  });
  const swinging = async () => {
    while (!isDone) {
      await setTimeout(random() * 250);
      await door.shut();
      times++;
      await setTimeout(random() * 250);
      await door.open();
    }
  };
  await Promise.all([done, swinging()]);
  return times;
}

/** An edition of a work that it shares with others. */
function record(key: string): Bundle {
  const origin = { source: 'X', key };
  const work = `work:${Number(key) % 300}`;
  return {
    outcome: 'taken',
    place: { key },
    origin,
    digest: key,
    rows: [
      { row: { id: '@edition', kind: 'Edition', work: '@work', title: `Views ${key}` }, origin },
      { row: { id: '@work', kind: 'Work', labels: [{ text: work }] }, origin: { source: 'X', key: work } },
      { row: { id: '@dating', kind: 'Dating', of: '@edition', event: 'PUBLISHED', date: '1764' } },
    ],
    links: [],
    remarks: [],
  };
}

async function take(store: GraphStore): Promise<void> {
  const records = async function* () {
    for (let i = 0; i < 5 * batchSize; i++) yield record(`${i}`);
  };
  const options = { intake: 'file', who: 'intake', why: 'a test' };
  await applyIntake(store, testWorld(), records(), emptyReport('run'), options);
}

/** A history, without the time that an intake took. */
async function untimedHistory(store: GraphStore): Promise<readonly string[]> {
  return (await historyOfStore(store))
    .filter(line => !line.startsWith('{"end"'))
    .map(line => line.replace(/"seconds":[\d.e-]+/, ''));
}

describeWithNeo4j('while the server goes and comes', () => {
  test('an intake goes on by itself, to the same history as undisturbed', async () => {
    const undisturbed = checkedGraphStore(memoryStore());
    await take(undisturbed);
    const { store, door } = await storeBehindDoor();
    const seed = seedOfRun();
    expect(await swing(door, seed, take(store)), `seed ${seed}`).toBeGreaterThan(3);
    expect(await untimedHistory(store), `seed ${seed}`).toEqual(await untimedHistory(undisturbed));
    expect((await checkStore(store, testWorld(), { rebuild: false })).faults).toEqual([]);
    await store.close();
    await door.shut();
  });

  test('a transfer goes on by itself, to the same history', async () => {
    const source = await editedStore('memory');
    const { store, door } = await storeBehindDoor();
    const seed = seedOfRun();
    expect(await swing(door, seed, copyStore(source, store)), `seed ${seed}`).toBeGreaterThan(0);
    expect(await historyOfStore(store), `seed ${seed}`).toEqual(await historyOfStore(source));
    await store.close();
    await door.shut();
  });

  test('a transfer that waits too long ends with a clear code, and goes on where it stood when it is started again', async () => {
    const source = await editedStore('memory');
    const { store, door } = await storeBehindDoor(300);
    const shutAfter = async (_versions: number, changeSet: number) => {
      if (changeSet !== 3) return;
      await door.shut();
      await setTimeout(1200);
      await door.open();
    };
    const broken = transferInto(store, historyOf(source), shutAfter);
    await expect(broken).rejects.toMatchObject({ code: expect.stringMatching(/^STORE_(UNREACHABLE|TIMEOUT)$/) });
    await expect
      .poll(() => store.lastChangeSet().catch(() => undefined), { timeout: 10_000 })
      .toBeGreaterThanOrEqual(3);
    expect((await copyStore(source, store)).begunAfter).toBeGreaterThanOrEqual(3);
    expect(await historyOfStore(store)).toEqual(await historyOfStore(source));
    await store.close();
    await door.shut();
  });

  test('questions over HTTP are told so by a clear code, or wait, and are answered when it is back', async () => {
    const source = await editedStore('memory');
    const { store, door } = await storeBehindDoor(1000);
    await copyStore(source, store);
    const api = createApi({ store, questions: askStore(store) });
    const ready = async () => {
      const response = await api.fetch(new Request('http://localhost/ready'));
      return [response.status, await response.json()];
    };
    const queries = [
      '{ search(text: "shore") { nodes { id label } } }',
      '{ reach(piece: "piece-shore-dish") { counts { inEveryCase inSomeCases inNoCase } } }',
      '{ lineage(of: "motif-table-fish-market") { links { nodes { record { id } depth } } } }',
      '{ node(id: "edition-views-leipzig-1779") { ... on Edition { title claims { nodes { id } } } } }',
    ];
    const right = await Promise.all(queries.map(query => data(api, query)));
    for (let time = 0; time < 2; time++) {
      await door.shut();
      const told = await Promise.all(queries.map(query => ask(api, query)));
      for (const { errors } of told) {
        expect(errors?.map(({ extensions }) => extensions?.['code'])).toEqual(['STORE_UNREACHABLE']);
        expect(errors?.[0]?.extensions?.['retriable']).toBe(true);
      }
      expect(await ready()).toEqual([503, { status: 'not ready', code: 'STORE_UNREACHABLE' }]);
      const waiting = queries.map(query => data(api, query));
      await setTimeout(200);
      await door.open();
      expect(await Promise.all(waiting)).toEqual(right);
      expect(await ready()).toEqual([200, { status: 'ready', changeSet: await source.lastChangeSet() }]);
    }
    await store.close();
    await door.shut();
  });
});
