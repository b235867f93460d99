import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { demoFiles } from '../../support/demo-store.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore, neo4jServer } from '../../support/neo4j/empty-neo4j-store.ts';
import { runCli } from '../../support/run-cli.ts';

const clone = resolve(import.meta.dirname, '../../..');
const folder = mkdtempSync(join(tmpdir(), 'platestemma-'));
let child: ChildProcess | undefined;

afterAll(() => {
  child?.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

/** The lines of the README, with a store and a server of the tests in the place of the reader's, and any free port. */
function passage(file: string): string {
  const { uri, user, password } = neo4jServer();
  const secret = join(folder, 'store-password');
  writeFileSync(secret, `${password}\n`);
  const lines =
    /<!-- server -->\s+```sh\n((?:.|\n)+?)```/.exec(readFileSync(join(clone, 'README.md'), 'utf8'))?.[1] ?? '';
  return lines
    .replace('secrets/store-password', secret)
    .replace('.store/library.store', file)
    .replaceAll('neo4j://neo4j@127.0.0.1:7687', uri.replace('://', `://${user}@`))
    .replace('-- serve', '-- serve --port 0');
}

describeWithNeo4j('the five lines of the README that lead from a file to a server', () => {
  test('move a graph, prove that it has come whole, and serve it', async () => {
    const file = join(folder, 'library.store');
    expect(await runCli(['intake', 'graph', ...demoFiles, '--store', file])).toMatchObject({ code: 0 });
    await (await emptyNeo4jStore()).close();
    const lines = passage(file);
    expect(lines.trim().split('\n')).toHaveLength(5);

    const started = spawn('bash', ['-euo', 'pipefail', '-c', lines], { cwd: clone, detached: true });
    child = started;
    let [out, err] = ['', ''];
    started.stderr.on('data', chunk => {
      err += String(chunk);
    });
    const url = await new Promise<string>((found, failed) => {
      started.stdout.on('data', chunk => {
        out += String(chunk);
        const address = /at (http:\S+)/.exec(out)?.[1];
        if (address !== undefined) found(address);
      });
      started.on('close', code => failed(new Error(`the lines ended with ${String(code)}: ${out}${err}`)));
    });
    expect(out).toContain('Both agree.');
    expect(out).toContain('Everything agrees.');
    expect((await fetch(new URL('/ready', url))).status).toBe(200);
    const query = '{ reach(piece: "piece-shore-dish") { counts { inEveryCase inSomeCases inNoCase } } }';
    const headers = { 'content-type': 'application/json' };
    const answer = await fetch(url, { method: 'POST', headers, body: JSON.stringify({ query }) });
    expect(await answer.json()).toEqual({
      data: { reach: { counts: { inEveryCase: 6, inSomeCases: 5, inNoCase: 1 } } },
    });
    // The server is what bash waits for: both end.
    process.kill(-started.pid!, 'SIGTERM');
    await once(started, 'close');
  }, 180_000);
});
