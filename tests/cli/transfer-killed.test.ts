import { existsSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { setTimeout } from 'node:timers/promises';
import { beforeAll, expect, test } from 'vitest';
import { checkStore } from '../../src/questions/check-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { historyOfStore } from '../support/histories.ts';
import { killedWhen } from '../support/killed-process.ts';
import { runCli } from '../support/run-cli.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { batchOf, copying, plate } from '../support/store-rows.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

const changeSets = 300;
let source: string;
let whole: readonly string[];
beforeAll(async () => {
  source = temporaryStore();
  const { store } = sqliteStoreInProcess(source);
  for (let n = 1; n <= changeSets; n++) {
    const plates = Array.from({ length: 30 }, (_, i) => plate(`${n}-${i}`, { caption: `no. ${i} of ${n}` }));
    const edited = n === 1 ? [] : [plate(`${n - 1}-7`, { caption: `once more in ${n}` })];
    const copies = plates.slice(1).map(({ id }, i) => copying(`${n}-${i}`, id, `plate-of-${n}-0`));
    await store.write(batchOf([...plates, ...copies, ...edited]));
  }
  whole = await historyOfStore(store);
  await store.close();
});

/** When so many change sets are in a store that another process fills. */
async function has(file: string, count: number): Promise<void> {
  while (changeSetsIn(file) < count) await setTimeout(3);
}

function changeSetsIn(file: string): number {
  if (!existsSync(file)) return 0;
  const database = new DatabaseSync(file, { readOnly: true });
  try {
    return Number(database.prepare('SELECT ifnull(max(number), 0) AS n FROM change_set').get()!['n']);
  } catch {
    // The other process has not made the tables yet.
    return 0;
  } finally {
    // One that stays open would keep what the killed process wrote last from being found when the store is opened next.
    database.close();
  }
}

test('a transfer that is killed leaves the beginning of the history, and goes on to its end when it is started again', async () => {
  const target = temporaryStore();
  let before = 0;
  for (const at of [1, 90, 200]) {
    expect(await killedWhen(['transfer', '--from', source, '--to', target], () => has(target, at))).toBe(true);
    const store = await openSqliteStore(target);
    const last = await store.lastChangeSet();
    expect(last).toBeGreaterThan(before);
    before = last;
    const found = await historyOfStore(store);
    await store.close();
    const until = whole.findIndex(line => line.startsWith(`{"changeSet":${last + 1},`));
    // Rows that a later change set ended hold still in the part that came.
    const part = (until < 0 ? whole : whole.slice(0, until)).map(line =>
      line.replace(`"since":${last},"until":${last + 1}`, `"since":${last}`),
    );
    expect(found.slice(0, -1)).toEqual(part);
  }
  const { code, out } = await runCli(['transfer', '--from', source, '--to', target, '--json']);
  expect({ code, found: JSON.parse(out) as unknown }).toMatchObject({
    code: 0,
    found: { begunAfter: before, changeSets, agree: true },
  });
  const store = await openSqliteStore(target);
  expect(await historyOfStore(store)).toEqual(whole);
  expect((await checkStore(store, testWorld(), { rebuild: false })).faults).toEqual([]);
  await store.close();
}, 300_000);

test('a transfer to a file that is killed leaves no file under its name, and writes it when it is started again', async () => {
  const target = `${temporaryStore()}.jsonl`;
  const isBegun = async () => {
    while (!existsSync(`${target}.unfinished`)) await setTimeout(1);
  };
  expect(await killedWhen(['transfer', '--from', source, '--to', target], isBegun)).toBe(true);
  expect(existsSync(target)).toBe(false);
  expect((await runCli(['transfer', '--from', source, '--to', target])).code).toBe(0);
  expect(existsSync(`${target}.unfinished`)).toBe(false);
});
