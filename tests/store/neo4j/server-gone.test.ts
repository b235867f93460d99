import { setTimeout } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { type Api, createApi } from '../../../src/api/create-api.ts';
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

/** A store, and the door that is the only way to it. */
interface Behind {
  readonly store: GraphStore;
  readonly door: Door;
}

async function emptyStoreBehindDoor(questionLimit: number): Promise<Behind> {
  await (await emptyNeo4jStore()).close();
  const door = await Door.to(Number(new URL(neo4jServer().uri).port));
  return { store: await storeBehind(door, questionLimit), door };
}

async function storeBehind({ port }: Door, questionLimit: number): Promise<GraphStore> {
  const { user, password } = neo4jServer();
  return checkedGraphStore(await openNeo4jStore(`neo4j://${user}@127.0.0.1:${port}`, { password, questionLimit }));
}

/** How often at most a door is shut. */
const swings = 3;

/** Shuts a door now and then, at moments that follow from a seed, until the work is done. @returns how often */
async function swing({ store, door }: Behind, seed: number, work: Promise<unknown>): Promise<number> {
  const random = seededRandom(seed);
  let [times, isDone] = [0, false];
  const done = work.finally(() => {
    isDone = true;
  });
  const swinging = async () => {
    for (; !isDone && times < swings; times++) {
      // Whoever came by the door is through it, and at work.
      await store.lastChangeSet();
      await setTimeout(random() * 200);
      await door.shut();
      await setTimeout(random() * 200);
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
    for (let i = 0; i < 3 * batchSize; i++) yield record(`${i}`);
  };
  const options = { intake: 'file', who: 'intake', why: 'a test' };
  await applyIntake(store, testWorld(), records(), emptyReport('run'), options);
}

/** A history, without the time that an intake took and the change set that it had heard of when it wrote so. */
async function untimedHistory(store: GraphStore): Promise<readonly string[]> {
  return (await historyOfStore(store))
    .filter(line => !line.startsWith('{"end"'))
    .map(line => (line.startsWith('{"checkpoint"') ? line.replace(/"changeSet":\d+,"seconds":[\d.e-]+/, '') : line));
}

const queries = [
  '{ search(text: "shore") { nodes { id label } } }',
  '{ reach(piece: "piece-shore-dish") { counts { inEveryCase inSomeCases inNoCase } } }',
  '{ lineage(of: "motif-table-fish-market") { links { nodes { record { id } depth } } } }',
  '{ node(id: "edition-views-leipzig-1779") { ... on Edition { title claims { nodes { id } } } } }',
];

function apiOf(store: GraphStore): Api {
  return createApi({ store, questions: askStore(store), limits: { time: long } });
}

async function ready(api: Api): Promise<unknown> {
  const response = await api.fetch(new Request('http://localhost/ready'));
  return [response.status, await response.json()];
}

async function close({ store, door }: Behind): Promise<void> {
  await store.close();
  await door.shut();
}

/** Patience that no busy machine wears out, in milliseconds. */
const long = 60_000;

/** What who asks is told of a server that is away. */
const away = { code: expect.stringMatching(/^STORE_(UNREACHABLE|TIMEOUT)$/), retriable: true };

describeWithNeo4j('while the server goes and comes', () => {
  test('an intake goes on by itself, to the same history as undisturbed', async () => {
    const undisturbed = checkedGraphStore(memoryStore());
    await take(undisturbed);
    const behind = await emptyStoreBehindDoor(long);
    const seed = seedOfRun();
    expect(await swing(behind, seed, take(behind.store)), `seed ${seed}`).toBeGreaterThan(0);
    expect(await untimedHistory(behind.store), `seed ${seed}`).toEqual(await untimedHistory(undisturbed));
    expect((await checkStore(behind.store, testWorld(), { rebuild: false })).faults).toEqual([]);
    await close(behind);
  }, 240_000);

  test('a transfer goes on by itself, to the same history', async () => {
    const source = await editedStore('memory');
    const behind = await emptyStoreBehindDoor(long);
    const seed = seedOfRun();
    expect(await swing(behind, seed, copyStore(source, behind.store)), `seed ${seed}`).toBeGreaterThan(0);
    expect(await historyOfStore(behind.store), `seed ${seed}`).toEqual(await historyOfStore(source));
    await close(behind);
  }, 240_000);

  test('a transfer that waits too long ends with a clear code, and goes on where it stood when it is started again', async () => {
    const source = await editedStore('memory');
    const behind = await emptyStoreBehindDoor(2000);
    const { store, door } = behind;
    let isBack = Promise.resolve();
    // The third change is to a row that is looked for first.
    const shutAfterSecond = (_versions: number, changeSet: number) => {
      if (changeSet !== 2) return;
      isBack = (async () => {
        await door.shut();
        await setTimeout(3000);
        await door.open();
      })();
    };
    await expect(transferInto(store, historyOf(source), shutAfterSecond)).rejects.toMatchObject(away);
    await isBack;
    expect((await copyStore(source, store)).begunAfter).toBeGreaterThan(0);
    expect(await historyOfStore(store)).toEqual(await historyOfStore(source));
    await close(behind);
  }, 240_000);

  test('questions over HTTP wait, or are told so by a clear code, and are answered when it is back', async () => {
    const source = await editedStore('memory');
    const right = await Promise.all(queries.map(query => data(apiOf(source), query)));
    const behind = await emptyStoreBehindDoor(long);
    const { door } = behind;
    await copyStore(source, behind.store);
    const patient = apiOf(behind.store);
    expect(await Promise.all(queries.map(query => data(patient, query)))).toEqual(right);
    const hasty = await storeBehind(door, 2500);
    const api = apiOf(hasty);

    await door.shut();
    const waiting = queries.map(query => data(patient, query));
    const told = await Promise.all(queries.map(query => ask(api, query)));
    for (const { errors } of told) expect(errors).toMatchObject([{ extensions: away }]);
    expect(await ready(api)).toEqual([503, { status: 'not ready', code: away.code }]);
    await door.open();
    expect(await Promise.all(waiting)).toEqual(right);
    const answers = () => Promise.all(queries.map(async query => (await ask(api, query)).data));
    await expect.poll(answers, { timeout: 30_000 }).toEqual(right);
    expect(await ready(api)).toEqual([200, { status: 'ready', changeSet: await source.lastChangeSet() }]);
    await hasty.close();
    await close(behind);
  }, 240_000);
});
