import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

const writer = new URL('./kill-writer.ts', import.meta.url).pathname;

/** Lets a process write, kills it some milliseconds after its first word, and answers the last number it acknowledged. */
async function acknowledgedBefore(file: string, milliseconds: number): Promise<number> {
  const child = spawn(process.execPath, [writer, file], { stdio: ['ignore', 'pipe', 'inherit'] });
  let said = '';
  child.stdout.on('data', (words: Buffer) => {
    if (said === '') setTimeout(() => child.kill('SIGKILL'), milliseconds);
    said += words.toString();
  });
  const [, signal] = await once(child, 'close');
  expect(signal).toBe('SIGKILL');
  // A number is whole only when its line has ended.
  return Number(said.split('\n').at(-2));
}

test('a store whose writer was killed has every change that was acknowledged, and each whole or not at all', async () => {
  const file = temporaryStore();
  for (let kill = 0; kill < 5; kill++) {
    const acknowledged = await acknowledgedBefore(file, Math.random() * 150);
    const store = await openSqliteStore(file);
    const last = await store.lastChangeSet();
    expect(last).toBeGreaterThanOrEqual(acknowledged);
    expect(await store.changeSets([acknowledged])).not.toEqual([undefined]);
    const { records, claims } = await store.facts();
    expect({ records, claims }).toEqual({ records: 2 * last, claims: last });
    const linked = await store.linked([`plate-of-b-${last}`], [{ kind: 'Copying', name: 'source' }]);
    expect(linked.map(rows => rows.map(({ id }) => id))).toEqual([[`copying-of-${last}`]]);
    await store.close();
    const database = new DatabaseSync(file, { readOnly: true });
    expect(database.prepare('PRAGMA integrity_check').all()).toEqual([{ integrity_check: 'ok' }]);
    database.close();
  }
}, 60_000);
