import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { gunzipSync, gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { markAfter } from '../../src/questions/transfer-mark.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { editedStore } from '../support/edited-store.ts';
import { copyStore } from '../support/histories.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { serveInProcess } from '../support/served-process.ts';
import { batchOf, plate } from '../support/store-rows.ts';
import { temporaryStore } from '../support/temporary-store.ts';

/** Python's gzip module, where Python is there: a reader that is not ours. */
const python = spawnSync('python3', ['--version']).status === 0;

let store: string;
let file: string;
/** The history of the store, as a graph file has it. */
let history: string;
beforeAll(async () => {
  store = temporaryStore();
  const target = await openSqliteStore(store, { create: true });
  await copyStore(await editedStore('memory'), target);
  await target.close();
  file = join(dirname(temporaryStore()), 'graph.jsonl.gz');
  expect(await runCli(['backup', file, '--store', store])).toMatchObject({ code: 0, err: '' });
  history = await historyOf(store);
});

async function historyOf(of: string): Promise<string> {
  return (await runCli(['export', '--history', '--store', of])).out;
}

const restore = (to: string, ...more: readonly string[]) => runCli(['restore', file, '--store', to, ...more]);

/** A store with one plate. */
async function otherStore(): Promise<string> {
  const path = temporaryStore();
  const other = await openSqliteStore(path, { create: true });
  await other.write(batchOf([plate('mine')]));
  await other.close();
  return path;
}

/** What stands in the folder of a store, but what SQLite keeps beside one that was read, and the mark of a server. */
const names = (path: string) =>
  readdirSync(dirname(path)).filter(name => !/-(?:wal|shm|serving|serving-journal)$/.test(name));

describe('backup', () => {
  test('writes the whole history, compressed, and tells what there is', async () => {
    expect(gunzipSync(readFileSync(file)).toString()).toBe(history);
    const again = join(dirname(file), 'again.gz');
    const { code, out } = await runCli(['backup', again, '--store', store]);
    expect(code).toBe(0);
    expect(out).toMatch(
      /^166 versions of records and claims in 5 change sets written to "\S+again\.gz" in [\d.]+ s: [\d,]+ bytes, read again and whole\.\n$/,
    );
    expect(readFileSync(again)).toEqual(readFileSync(file));
    expect(readdirSync(dirname(file))).toEqual(['again.gz', 'graph.jsonl.gz']);
  });

  test('is the same as JSON, with counts and checksums', async () => {
    const target = join(dirname(temporaryStore()), 'b.gz');
    expect(await jsonOf(['backup', target, '--store', store])).toMatchObject({
      ...{ file: target, bytes: readFileSync(file).length, changeSets: 5, versions: 166 },
      sorts: expect.arrayContaining([
        { sort: 'Copying', count: 21, checksum: expect.stringMatching(/^[0-9a-f]{32}$/) },
        { sort: 'awaited', count: 2, checksum: expect.stringMatching(/^[0-9a-f]{32}$/) },
      ]),
    });
  });

  test('does not write over a file that is there', async () => {
    const taken = join(dirname(temporaryStore()), 'taken.gz');
    writeFileSync(taken, 'mine');
    expect(await runCli(['backup', taken, '--store', store])).toEqual({
      ...{ code: 1, out: '' },
      err: `TARGET_NOT_EMPTY: expected no file at "${taken}", came one: name a new one\n`,
    });
    expect(readFileSync(taken, 'utf8')).toBe('mine');
  });

  test('of a store that is not whole, or not there, is refused and leaves nothing', async () => {
    const half = temporaryStore();
    const begun = await openSqliteStore(half, { create: true });
    await begun.write(batchOf([plate('a')], { checkpoint: markAfter(1) }));
    await begun.close();
    const target = `${half}.gz`;
    expect(await runCli(['backup', target, '--store', half])).toMatchObject({
      ...{ code: 1, err: expect.stringMatching(/^SOURCE_REFUSED: expected a store that is whole/) },
    });
    expect(await runCli(['backup', target, '--store', `${half}.none`])).toMatchObject({ code: 3 });
    expect(await runCli(['backup', join(half, 'no-folder.gz'), '--store', store])).toMatchObject({
      ...{ code: 1, err: expect.stringMatching(/^OUTPUT_REFUSED: /) },
    });
    expect(names(half)).toEqual(['graph.store']);
  });

  test.skipIf(!python)('is a file that Python can read (skipped without Python)', () => {
    const script = 'import gzip,sys\nsys.stdout.buffer.write(gzip.open(sys.argv[1]).read())';
    const { status, stdout } = spawnSync('python3', ['-c', script, file]);
    expect([status, stdout.toString()]).toEqual([0, history]);
  });
});

describe('restore', () => {
  test.each(['into a new file', 'into an empty store'])('makes the same store %s', async where => {
    const to = temporaryStore();
    if (where === 'into an empty store') await (await openSqliteStore(to, { create: true })).close();
    const { code, out } = await restore(to);
    expect(code).toBe(0);
    expect(out).toMatch(
      /^166 versions of records and claims in 5 change sets restored to "\S+" in [\d.]+ s: read again, and the same as in the backup\.\n$/,
    );
    expect(await historyOf(to)).toBe(history);
    expect(await jsonOf(['check', '--store', to])).toMatchObject({ changeSets: 5, faults: [] });
    expect(names(to)).toEqual(['graph.store']);
    const made = new DatabaseSync(to, { readOnly: true });
    expect(made.prepare('PRAGMA journal_mode').get()).toEqual({ journal_mode: 'wal' });
    made.close();
  });

  test('takes a graph file with history that is not compressed too', async () => {
    const plain = `${temporaryStore()}.jsonl`;
    writeFileSync(plain, history);
    const to = temporaryStore();
    expect(await runCli(['restore', plain, '--store', to])).toMatchObject({ code: 0 });
    expect(await historyOf(to)).toBe(history);
  });

  test('does not write over a store that holds something, unless it is told to: then it keeps it beside', async () => {
    const to = await otherStore();
    const before = await historyOf(to);
    expect(await restore(to)).toEqual({
      ...{ code: 1, out: '' },
      err: `TARGET_NOT_EMPTY: expected no store at "${to}", or an empty one, came one with 1 change sets: --replace puts the backup in its place and keeps it beside\n`,
    });
    expect(await historyOf(to)).toBe(before);
    expect(names(to)).toEqual(['graph.store']);
    const { code, out } = await restore(to, '--replace');
    const kept = /What was there is kept as "(\S+)"\.\n$/.exec(out)?.[1] ?? '';
    expect(code).toBe(0);
    expect(await historyOf(to)).toBe(history);
    expect(await historyOf(kept)).toBe(before);
    expect(names(to).length).toBe(2);
    expect(await jsonOf(['restore', file, '--store', to, '--replace'])).toMatchObject({
      ...{ file, store: to, kept: expect.stringContaining('.before-'), changeSets: 5, versions: 166 },
    });
  });

  test('puts what is no store aside where it is told to', async () => {
    const to = temporaryStore();
    writeFileSync(to, 'a letter\n'.repeat(200));
    expect(await restore(to)).toMatchObject({ code: 3, err: expect.stringMatching(/^STORE_NOT_OURS: /) });
    expect(readFileSync(to, 'utf8')).toBe('a letter\n'.repeat(200));
    const { kept } = (await jsonOf(['restore', file, '--store', to, '--replace'])) as { readonly kept: string };
    expect(readFileSync(kept, 'utf8')).toBe('a letter\n'.repeat(200));
    expect(await historyOf(to)).toBe(history);
  });

  test('puts a log aside that was left behind without its store', async () => {
    const to = temporaryStore();
    writeFileSync(`${to}-wal`, 'of another store');
    expect(await restore(to)).toMatchObject({ code: 0 });
    expect(await historyOf(to)).toBe(history);
    expect(readFileSync(`${to}.before-wal`, 'utf8')).toBe('of another store');
  });

  test.each<[string, (bytes: Buffer) => Buffer, RegExp]>([
    [
      'cut off',
      bytes => bytes.subarray(0, bytes.length / 2),
      /^INPUT_INVALID: \S+: expected a compressed file that is whole, came one that is damaged or cut off \(/,
    ],
    ['empty', () => Buffer.alloc(0), /^INPUT_INVALID: /],
    ['damaged', bytes => Buffer.from(bytes.map((byte, i) => (i === 2000 ? byte ^ 1 : byte))), /^INPUT_INVALID: /],
    [
      'changed',
      () => gzipSync(history.replace('Amstelodami', 'Amstelodamum')),
      /^INPUT_INVALID: \S+, lines of Place: expected 5-\S+, as its end says, came 5-/,
    ],
    [
      'of a form that comes later',
      () => gzipSync(history.replace('"version":1', '"version":2')),
      /^INPUT_INVALID: .*use the program that wrote it/,
    ],
  ])('of a backup that is %s changes nothing', async (_what, damage, message) => {
    const to = await otherStore();
    const before = await historyOf(to);
    const damaged = join(dirname(to), 'damaged.gz');
    writeFileSync(damaged, damage(readFileSync(file)));
    const { code, out, err } = await runCli(['restore', damaged, '--store', to, '--replace']);
    expect([code, out, err]).toEqual([1, '', expect.stringMatching(message)]);
    expect(await historyOf(to)).toBe(before);
    expect(names(to).toSorted()).toEqual(['damaged.gz', 'graph.store']);
  });

  test('of any byte that was changed or lost is refused, or makes the same store', async () => {
    const bytes = readFileSync(file);
    for (let at = 3; at < bytes.length; at += 997) {
      const damaged = join(dirname(temporaryStore()), 'damaged.gz');
      writeFileSync(damaged, Buffer.from(bytes.map((byte, i) => (i === at ? byte ^ 0x10 : byte))));
      const to = temporaryStore();
      const { code, err } = await runCli(['restore', damaged, '--store', to]);
      // Nothing but what gzip notes of the file for itself may change: RFC 1952, 2.3.
      if (code === 0) expect([at < 10, await historyOf(to)]).toEqual([true, history]);
      else expect([existsSync(to), err]).toEqual([false, expect.stringMatching(/^INPUT_INVALID: /)]);
    }
  });

  test('is no way to empty a database of a server', async () => {
    expect(await runCli(['restore', file, '--store', 'neo4j://127.0.0.1:1', '--replace'])).toEqual({
      ...{ code: 2, out: '' },
      err: '--replace is for a store in a file: empty the database of a server by its own means\n',
    });
  });
});

describe('while a server serves the file', () => {
  test('it is backed up, but not replaced', async () => {
    const to = temporaryStore();
    await restore(to);
    const served = await serveInProcess(to);
    const target = `${to}.gz`;
    expect(await runCli(['backup', target, '--store', to])).toMatchObject({ code: 0 });
    expect(gunzipSync(readFileSync(target)).toString()).toBe(history);
    const refusal = { code: 3, out: '', err: `STORE_BUSY: another process serves the store "${to}"\n` };
    expect(await restore(to, '--replace')).toEqual(refusal);
    expect(await restore(to)).toEqual(refusal);
    expect((await fetch(new URL('/ready', served.url))).status).toBe(200);
    served.child.kill('SIGKILL');
    await served.ended;
    expect(await historyOf(to)).toBe(history);
    expect(await restore(to, '--replace')).toMatchObject({ code: 0 });
  });

  test('nor is one that another command has open', async () => {
    const to = await otherStore();
    const before = await historyOf(to);
    const other = await openSqliteStore(to);
    await other.lastChangeSet();
    expect(await restore(to, '--replace')).toEqual({
      ...{ code: 3, out: '' },
      err: `STORE_BUSY: another process has the store "${to}" open: it is not replaced until that ends\n`,
    });
    await other.write(batchOf([plate('more')]));
    await other.close();
    expect((await historyOf(to)).length).toBeGreaterThan(before.length);
    expect(names(to)).toEqual(['graph.store']);
  });
});
