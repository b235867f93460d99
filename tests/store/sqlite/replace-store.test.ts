import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, linkSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import { beforeAll, describe, expect, test } from 'vitest';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { removeStore, replaceStore } from '../../../src/store/sqlite/replace-store.ts';
import { historyOfStore } from '../../support/histories.ts';
import { dice } from '../../support/random-graph.ts';
import { runs, seedOfRun } from '../../support/runs.ts';
import { batchOf, plate } from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

async function storeOf(...captions: readonly string[]): Promise<string> {
  const path = temporaryStore();
  const store = await openSqliteStore(path, { create: true });
  for (const caption of captions) await store.write(batchOf(captions.map((_, i) => plate(`${i}`, { caption }))));
  await store.close();
  return path;
}

async function historyOf(path: string): Promise<readonly string[]> {
  const store = await openSqliteStore(path);
  try {
    return await historyOfStore(store);
  } finally {
    await store.close();
  }
}

let [one, other]: [string, string] = ['', ''];
let histories: readonly (readonly string[])[];
beforeAll(async () => {
  [one, other] = [await storeOf('a', 'b', 'c'), await storeOf('d')];
  histories = [await historyOf(one), await historyOf(other)];
});

describe('a store that is put in the place of another', () => {
  test('has all that was in its log', async () => {
    const fresh = await storeOf('e');
    const reader = await openSqliteStore(fresh);
    const writer = await openSqliteStore(fresh);
    await writer.write(batchOf([plate('late')]));
    // The log is put back by who closes last, and who only reads cannot.
    await writer.close();
    await reader.close();
    const history = await historyOf(fresh);
    const place = await storeOf('f');
    await replaceStore(fresh, place, undefined);
    expect(await historyOf(place)).toEqual(history);
    expect(existsSync(fresh)).toBe(false);
  });

  test('leaves that with all it had, under the name that it is kept by', async () => {
    const place = await storeOf('f', 'g');
    const before = await historyOf(place);
    const fresh = await storeOf('e');
    await replaceStore(fresh, place, `${place}.kept`);
    expect(await historyOf(`${place}.kept`)).toEqual(before);
    await removeStore(place);
    expect(await historyOf(`${place}.kept`)).toEqual(before);
  });

  test('is not where somebody has that open', async () => {
    const [place, fresh] = [await storeOf('f'), await storeOf('e')];
    const reader = await openSqliteStore(place);
    await reader.lastChangeSet();
    await expect(replaceStore(fresh, place, `${place}.kept`)).rejects.toMatchObject({ code: 'STORE_BUSY' });
    await reader.close();
    expect([existsSync(fresh), existsSync(`${place}.kept`)]).toEqual([true, false]);
  });

  test('is not where the name that it is kept by is taken', async () => {
    const [place, fresh] = [await storeOf('f'), await storeOf('e')];
    const before = await historyOf(place);
    linkSync(fresh, `${place}.kept`);
    await expect(replaceStore(fresh, place, `${place}.kept`)).rejects.toMatchObject({ code: 'STORE_UNREACHABLE' });
    expect(await historyOf(place)).toEqual(before);
    expect(existsSync(fresh)).toBe(true);
  });
});

test('whenever it is killed, one or the other stands there, whole', async () => {
  const seed = seedOfRun();
  const roll = dice(seed);
  const place = temporaryStore();
  const found = new Set<number>();
  for (let run = 0; run < runs(12, 300); run++) {
    const program = new URL('../../support/swap-stores.ts', import.meta.url).pathname;
    const child = spawn(process.execPath, [program, one, other, place], { stdio: ['ignore', 'pipe', 'inherit'] });
    await once(child.stdout, 'data');
    await setTimeout(roll.below(60));
    child.kill('SIGKILL');
    await once(child, 'close');
    const history = await historyOf(place);
    const which = histories.findIndex(known => known.join('\n') === history.join('\n'));
    expect(which, `seed ${seed}, run ${run}`).not.toBe(-1);
    found.add(which);
  }
  expect(found.size).toBe(2);
}, 600_000);

test('who opens the place meanwhile finds one or the other, or is told that it is busy', async () => {
  const place = temporaryStore();
  const program = new URL('../../support/swap-stores.ts', import.meta.url).pathname;
  const child = spawn(process.execPath, [program, one, other, place], { stdio: ['ignore', 'pipe', 'inherit'] });
  await once(child.stdout, 'data');
  let answered = 0;
  for (let run = 0; run < runs(30, 1000); run++) {
    const history = await historyOf(place).catch(error => {
      expect(error).toMatchObject({ code: 'STORE_BUSY' });
      return undefined;
    });
    if (history === undefined) continue;
    answered++;
    expect(histories.map(known => known.join('\n'))).toContain(history.join('\n'));
  }
  expect(child.exitCode).toBe(null);
  child.kill('SIGKILL');
  await once(child, 'close');
  expect(answered).toBeGreaterThan(0);
}, 600_000);
