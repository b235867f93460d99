import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { copyFileSync, rmSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { schemaNumber } from '../../../src/store/sqlite/schema-text.ts';
import { runs } from '../../support/runs.ts';
import { temporaryStore } from '../../support/temporary-store.ts';
import { makeOldStore } from './old-store.ts';

const program = new URL('./migrate-until-killed.ts', import.meta.url).pathname;

test('a store whose migration was killed is of one schema or the other, and the next who opens it has it whole', async () => {
  const old = temporaryStore();
  makeOldStore(old, 1);
  const seen = new Set<number>();
  for (let kill = 0; kill < runs(8, 100); kill++) {
    const file = temporaryStore();
    copyFileSync(old, file);
    const child = spawn(process.execPath, [program, file], { stdio: ['ignore', 'pipe', 'inherit'] });
    const ended = once(child, 'close');
    await once(child.stdout, 'data');
    await pause(Math.random() * 25);
    child.kill('SIGKILL');
    await ended;
    const database = new DatabaseSync(file);
    seen.add(Number(database.prepare('PRAGMA user_version').get()!['user_version']));
    database.close();
    const store = await openSqliteStore(file);
    expect(await store.facts()).toMatchObject({ schema: schemaNumber, records: 3, claims: 3 });
    expect(await store.lastChangeSet()).toBe(2);
    await store.close();
    rmSync(file);
  }
  expect([...seen].filter(version => version !== 1 && version !== schemaNumber)).toEqual([]);
}, 300_000);
