import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { setTimeout as pause } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import { describe, expect, test } from 'vitest';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { batchOf, plate } from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

const script = (name: string) => join(import.meta.dirname, name);

describe('processes at one store', () => {
  test('two may write in turn, and each sees what the other wrote', async () => {
    const file = temporaryStore();
    const store = await openSqliteStore(file, { create: true });
    await store.write(batchOf([plate('a')]));
    const said = execFileSync(process.execPath, [script('read-and-write.ts'), file], { encoding: 'utf8' });
    expect(said).toBe('read plate-of-a, write done\n');
    expect(await store.write(batchOf([plate('c')]))).toEqual({ changeSet: 3 });
    expect((await store.scan(undefined, 9)).map(row => [row.id, row.since])).toEqual([
      ['plate-of-a', 1],
      ['plate-of-b', 2],
      ['plate-of-c', 3],
    ]);
    await store.close();
  });

  test('one that writes for long is waited for 5 s, then the write is STORE_BUSY and may be made again; reading goes on', async () => {
    const file = temporaryStore();
    const store = await openSqliteStore(file, { create: true });
    await store.write(batchOf([plate('a')]));
    const other = new DatabaseSync(file);
    other.exec('BEGIN IMMEDIATE');
    const begun = performance.now();
    const writing = store.write(batchOf([plate('b')]));
    const refused = expect(writing).rejects.toMatchObject({ code: 'STORE_BUSY', retriable: true });
    expect(await store.rows(['plate-of-a'])).toEqual([{ ...plate('a'), since: 1 }]);
    await refused;
    expect(performance.now() - begun).toBeGreaterThan(4900);
    other.exec('ROLLBACK');
    other.close();
    expect(await store.write(batchOf([plate('b')]))).toEqual({ changeSet: 2 });
    await store.close();
  });
});

test('the log is put back as it grows, also while others read', async () => {
  const store = await openSqliteStore(temporaryStore(), { create: true });
  let greatest = 0;
  for (let batch = 0; batch < 60; batch++) {
    const plates = Array.from({ length: 200 }, (_, i) =>
      plate(`${batch}-${i}`, { lettering: 'abcdefgh '.repeat(1000) }),
    );
    const reading = store.rows(plates.map(row => row.id));
    await store.write(batchOf(plates));
    await reading;
    greatest = Math.max(greatest, (await store.facts()).logBytes!);
  }
  expect((await store.facts()).bytes).toBeGreaterThan(100_000_000);
  expect(greatest).toBeLessThan(90_000_000);
  await store.close();
});

test('the log stays short beside somebody who reads for longer than the writer waits, and rests now and then', async () => {
  const file = temporaryStore();
  const store = await openSqliteStore(file, { create: true });
  const reader = new Worker(
    `const { DatabaseSync } = require('node:sqlite');
    const { workerData: file } = require('node:worker_threads');
    const store = new DatabaseSync(file, { readOnly: true });
    const rest = new Int32Array(new SharedArrayBuffer(4));
    for (;;) {
      store.exec('BEGIN');
      store.prepare('SELECT count(*) FROM node').get();
      Atomics.wait(rest, 0, 0, 300);
      store.exec('COMMIT');
      Atomics.wait(rest, 0, 0, 100);
    }`,
    { eval: true, workerData: file },
  );
  let greatest = 0;
  for (let batch = 0; batch < 60; batch++) {
    const plates = Array.from({ length: 50 }, (_, i) =>
      plate(`${batch}-${i}`, { lettering: 'abcdefgh '.repeat(9000) }),
    );
    await store.write(batchOf(plates));
    await pause(40);
    greatest = Math.max(greatest, (await store.facts()).logBytes!);
  }
  await reader.terminate();
  expect((await store.facts()).bytes).toBeGreaterThan(200_000_000);
  expect(greatest).toBeLessThan(90_000_000);
  await store.close();
}, 60_000);
