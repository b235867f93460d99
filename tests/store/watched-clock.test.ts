import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { type ClockBehind, watchedClock } from '../../src/store/watched-clock.ts';
import { demoFiles } from '../support/demo-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { batchOf, plate } from '../support/store-rows.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const changeSet = (moment: string) => ({ changeSet: { moment, who: 'Ada', why: 'a test' } });

test('a clock that stands before the last change set is told, that of a copy is not', async () => {
  const engine = memoryStore();
  await engine.write(batchOf([plate('a')], changeSet('2026-03-01T00:00:00.000Z')));
  const told: ClockBehind[] = [];
  const store = watchedClock(engine, behind => told.push(behind));
  await store.write(batchOf([plate('a')], changeSet('2026-03-01T00:00:00.001Z')));
  await store.write(batchOf([], changeSet('')));
  await store.write(batchOf([plate('a')], { ...changeSet('2026-01-01T00:00:00.000Z'), keepsMoment: true }));
  expect(told).toEqual([]);
  await store.write(batchOf([plate('a')], changeSet('2026-02-01T00:00:00.000Z')));
  expect(told).toEqual([{ clock: '2026-02-01T00:00:00.000Z', last: '2026-03-01T00:00:00.001Z' }]);
});

test('a process whose clock stands in the past writes no earlier moment, and its log says so', async () => {
  const file = temporaryStore();
  const ahead = '2999-01-01T00:00:00.000Z';
  const store = await openSqliteStore(file, { create: true });
  await store.write(batchOf([plate('a')], changeSet(ahead)));
  const main = new URL('../../src/main.ts', import.meta.url).pathname;
  const args = [main, 'intake', 'graph', demoFiles[0]!, '--store', file];
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  expect(status).toBe(0);
  expect(JSON.parse(stderr)).toMatchObject({ level: 'warn', event: 'clock-behind', last: ahead });
  expect((await store.changeSets([1, 2])).map(set => set?.moment)).toEqual([ahead, ahead]);
  await store.close();
});
