import { copyFileSync, existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { gunzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { removeStore } from '../../src/store/sqlite/replace-store.ts';
import { historyOfStore } from '../support/histories.ts';
import { killedWhen } from '../support/killed-process.ts';
import { dice } from '../support/random-graph.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { batchOf, copying, plate } from '../support/store-rows.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const changeSets = 300;
let source: string;
let whole: readonly string[];
let file: string;
beforeAll(async () => {
  source = temporaryStore();
  const { store } = sqliteStoreInProcess(source);
  for (let n = 1; n <= changeSets; n++) await store.write(batchOf(rowsOf(n)));
  whole = await historyOfStore(store);
  await store.close();
  file = `${temporaryStore()}.gz`;
  await runCli(['backup', file, '--store', source]);
});

/** Thirty plates, copies of the first of them, and one of those before once more. */
function rowsOf(n: number) {
  const plates = Array.from({ length: 30 }, (_, i) => plate(`${n}-${i}`, { caption: `no. ${i} of ${n}` }));
  const edited = n === 1 ? [] : [plate(`${n - 1}-7`, { caption: `once more in ${n}` })];
  return [...plates, ...plates.slice(1).map(({ id }, i) => copying(`${n}-${i}`, id, `plate-of-${n}-0`)), ...edited];
}

async function historyOf(path: string): Promise<readonly string[]> {
  const store = await openSqliteStore(path);
  try {
    return await historyOfStore(store);
  } finally {
    await store.close();
  }
}

const isThere = async (path: string) => {
  while (!existsSync(path)) await setTimeout(1);
};

test('a backup that is killed leaves no file under its name, and is written when it is started again', async () => {
  const target = `${temporaryStore()}.gz`;
  const seed = seedOfRun();
  const roll = dice(seed);
  for (let run = 0; run < runs(4, 60); run++) {
    const begun = async () => {
      await isThere(`${target}.unfinished`);
      await setTimeout(roll.below(300));
    };
    const wasKilled = await killedWhen(['backup', target, '--store', source], begun);
    // One that had come to its end is whole.
    if (!wasKilled) expect(gunzipSync(readFileSync(target))).toEqual(gunzipSync(readFileSync(file)));
    else expect(existsSync(target), `seed ${seed}, run ${run}`).toBe(false);
    if (!wasKilled) break;
  }
  if (!existsSync(target)) expect(await runCli(['backup', target, '--store', source])).toMatchObject({ code: 0 });
  expect(readdirSync(dirname(target)).filter(name => name.endsWith('.unfinished'))).toEqual([]);
  expect(readFileSync(target)).toEqual(readFileSync(file));
  expect(await historyOf(source)).toEqual(whole);
}, 600_000);

test('a restore that is killed leaves what was there or what was restored, and is done when it is started again', async () => {
  const to = temporaryStore();
  const { store } = sqliteStoreInProcess(to);
  await store.write(batchOf([plate('mine')]));
  const before = await historyOfStore(store);
  await store.close();
  const old = `${to}.old`;
  copyFileSync(to, old);
  const seed = seedOfRun();
  const roll = dice(seed);
  let killed = 0;
  for (let run = 0; run < runs(6, 100); run++) {
    const args = ['restore', file, '--store', to, '--replace'];
    const soon = () => isThere(`${to}.restoring`).then(() => setTimeout(roll.below(run % 2 === 0 ? 400 : 3000)));
    if (await killedWhen(args, soon)) killed++;
    const found = await historyOf(to);
    expect([before.join(), whole.join()], `seed ${seed}, run ${run}`).toContain(found.join());
    if (found.length === before.length) continue;
    await removeStore(to);
    copyFileSync(old, to);
  }
  expect(killed).toBeGreaterThan(0);
  expect(await runCli(['restore', file, '--store', to, '--replace'])).toMatchObject({ code: 0 });
  expect(await historyOf(to)).toEqual(whole);
  expect(await jsonOf(['check', '--store', to])).toMatchObject({ changeSets, faults: [] });
  expect(existsSync(`${to}.restoring`)).toBe(false);
}, 600_000);

describe('beside somebody who writes', () => {
  /** The first change sets of a history, as they stood then: rows that a later one changed still held. */
  function beginning(lines: readonly string[], last: number): readonly string[] {
    const after = lines.findIndex(line => line.startsWith(`{"changeSet":${last + 1},`));
    const part = (after < 0 ? lines.slice(0, -1) : lines.slice(0, after)).filter(
      line => !/^\{"(?:origin|end)"/.test(line),
    );
    return part.map(line => line.replace(/,"until":(\d+)/, (stamp, until) => (Number(until) > last ? '' : stamp)));
  }

  test('a backup is the store as it was at one moment', async () => {
    const path = temporaryStore();
    const writing = await openSqliteStore(path, { create: true });
    let isOver = false;
    let written = 0;
    const writes = (async () => {
      while (!isOver) {
        const origin = { source: 's', key: `${++written}`, id: `plate-of-${written}-0`, digest: `${written}` };
        const again = written > 20 ? [plate(`${written - 20}-3`, { caption: `again in ${written}` })] : [];
        await writing.write(batchOf([...rowsOf(written), ...again], { origins: [origin] }));
      }
    })();
    const folder = dirname(temporaryStore());
    const backups: string[] = [];
    for (let n = 0; n < 3; n++) {
      const target = join(folder, `${n}.gz`);
      backups.push(target);
      expect(await runCli(['backup', target, '--store', path])).toMatchObject({ code: 0, err: '' });
    }
    isOver = true;
    await writes;
    const history = await historyOfStore(writing);
    await writing.close();
    const lasts: number[] = [];
    for (const target of backups) {
      const lines = gunzipSync(readFileSync(target)).toString().trimEnd().split('\n');
      const last = lines.filter(line => line.startsWith('{"changeSet":')).length;
      lasts.push(last);
      expect(lines.filter(line => line.startsWith('{"origin":')).length).toBe(last);
      expect(lines.filter(line => !/^\{"(?:origin|end)"/.test(line))).toEqual(beginning(history, last));
      const to = temporaryStore();
      expect(await runCli(['restore', target, '--store', to])).toMatchObject({ code: 0 });
      expect(await jsonOf(['check', '--store', to])).toMatchObject({ changeSets: last, faults: [] });
    }
    expect(lasts).toEqual(lasts.toSorted((a, b) => a - b));
    expect(new Set(lasts).size).toBe(3);
  }, 600_000);
});
