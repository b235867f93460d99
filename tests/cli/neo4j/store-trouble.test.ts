import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, expect, test } from 'vitest';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { Door } from '../../support/neo4j/door.ts';
import { emptyNeo4jStore, neo4jServer } from '../../support/neo4j/empty-neo4j-store.ts';

const main = new URL('../../../src/main.ts', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'platestemma-'));
const secret = 'correct-horse-battery';

let [door, child]: [Door | undefined, ChildProcess | undefined] = [undefined, undefined];

interface Started {
  readonly ended: Promise<{ readonly code: number | null; readonly out: string; readonly err: string }>;
  /** What it has written so far. */
  readonly out: () => string;
}

/** The program in a process of its own, which waits two seconds for a server. */
function start(args: readonly string[], password: Readonly<Record<string, string>>): Started {
  const env = { ...process.env, PLATESTEMMA_QUESTION_LIMIT: '2000', ...password };
  const started = spawn(process.execPath, [main, ...args], { env, stdio: ['ignore', 'pipe', 'pipe'] });
  child = started;
  let [out, err] = ['', ''];
  started.stdout.on('data', chunk => {
    out += String(chunk);
  });
  started.stderr.on('data', chunk => {
    err += String(chunk);
  });
  const ended = once(started, 'close').then(([code]) => ({ code: code as number | null, out, err }));
  return { ended, out: () => out };
}

/** Every sort of command, with the store that it is to work on. */
const commands: readonly (readonly [name: string, args: (store: string) => readonly string[]])[] = [
  ['find', store => ['find', 'shore', '--store', store]],
  ['check', store => ['check', '--store', store, '--json']],
  [
    'intake',
    store => [
      'intake',
      'graph',
      join(import.meta.dirname, '../../../demo-graph/1-people-and-places.jsonl'),
      '--store',
      store,
    ],
  ],
  ['export', store => ['export', '--history', '--store', store, '-o', join(folder, 'none.jsonl')]],
  ['transfer', store => ['transfer', '--from', store, '--to', join(folder, 'none.store')]],
  ['serve', store => ['serve', '--port', '0', '--store', store]],
];

function address(port: number): string {
  return `neo4j://neo4j@127.0.0.1:${port}`;
}

async function openDoor(): Promise<Door> {
  door = await Door.to(Number(new URL(neo4jServer().uri).port));
  return door;
}

afterEach(async () => {
  child?.kill('SIGKILL');
  await door?.shut().catch(() => undefined);
});

describeWithNeo4j('a command', () => {
  beforeAll(async () => {
    await (await emptyNeo4jStore()).close();
    return () => rmSync(folder, { recursive: true, force: true });
  });

  test.each(commands)('%s, without a server, ends with 3 and one line that says so', async (_name, args) => {
    const { port } = await openDoor();
    await door!.shut();
    const { ended } = start(args(address(port)), { PLATESTEMMA_STORE_PASSWORD: secret });
    expect(await ended).toEqual({
      code: 3,
      out: '',
      err: `STORE_UNREACHABLE: the server cannot be reached (neo4j://127.0.0.1:${port})\n`,
    });
  });

  test('with a wrong password ends with 3 and one line, without the password', async () => {
    const { port } = new URL(neo4jServer().uri);
    const { ended } = start(['find', 'shore', '--store', address(Number(port))], {
      PLATESTEMMA_STORE_PASSWORD: secret,
    });
    expect(await ended).toEqual({
      code: 3,
      out: '',
      err: `STORE_UNREACHABLE: the server does not take the name or password it was given (neo4j://127.0.0.1:${port})\n`,
    });
  });

  test('whose file with the password is missing ends with 3 and names it', async () => {
    const file = join(folder, 'missing');
    const { ended } = start(['find', 'shore', '--store', address(1)], { PLATESTEMMA_STORE_PASSWORD_FILE: file });
    expect(await ended).toEqual({
      code: 3,
      out: '',
      err: `STORE_UNREACHABLE: PLATESTEMMA_STORE_PASSWORD_FILE, ${JSON.stringify(file)}: expected a file that can be read, the system says ENOENT\n`,
    });
  });
});

describeWithNeo4j('serve', () => {
  test('outlives its store: it is not ready while the store is away, and ready again when it is back', async () => {
    const { port } = await openDoor();
    const { out } = start(['serve', '--port', '0', '--store', address(port)], {
      PLATESTEMMA_STORE_PASSWORD: neo4jServer().password,
    });
    await expect.poll(out, { timeout: 30_000 }).toMatch(/^Serving .* at http:\S+\n$/);
    const url = new URL('/ready', /at (http:\S+)/.exec(out())![1]);
    const ready = async () => (await fetch(url)).status;
    expect(await ready()).toBe(200);
    await door!.shut();
    expect(await ready()).toBe(503);
    expect((await fetch(new URL('/health', url))).status).toBe(200);
    await door!.open();
    await expect.poll(ready, { timeout: 30_000 }).toBe(200);
    expect(child!.exitCode).toBe(null);
  });
});
