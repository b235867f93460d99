/** Serves a store in the folder of its argument, writes to it over HTTP until the disk is full, makes room, goes on, and says what came of it. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = process.argv[2]!;
const main = new URL('../../src/main.ts', import.meta.url).pathname;
const ballast = join(folder, 'ballast');
writeFileSync(ballast, Buffer.alloc(1_500_000, 'x'));
const server = spawn(process.execPath, [main, 'serve', '--store', join(folder, 'graph.store'), '--port', '0'], {
  stdio: ['ignore', 'pipe', 'pipe'],
});
let log = '';
server.stderr.on('data', chunk => (log += String(chunk)));
const [said] = (await once(server.stdout, 'data')) as [Buffer];
const url = /at (http:\S+)/.exec(String(said))![1]!;

interface Answer {
  readonly data?: {
    readonly addPlate?: { readonly changeSet: number };
    readonly plates?: { readonly totalCount: number };
  };
  readonly errors?: readonly { readonly extensions: { readonly code: string } }[];
}

async function ask(query: string, variables = {}): Promise<Answer> {
  const headers = { 'content-type': 'application/json' };
  const response = await fetch(url, { method: 'POST', headers, body: JSON.stringify({ query, variables }) });
  return (await response.json()) as Answer;
}

const add = (lettering: string) =>
  ask('mutation($lettering: String) { addPlate(input: { lettering: $lettering }) { changeSet } }', { lettering });
const count = async () => (await ask('{ plates(first: 0) { totalCount } }')).data?.plates?.totalCount;

let [acknowledged, code]: [number, string | undefined] = [0, undefined];
while (code === undefined && acknowledged < 1_000) {
  const { data, errors } = await add('x'.repeat(50_000));
  if (data?.addPlate?.changeSet !== undefined) acknowledged++;
  code = errors?.[0]?.extensions.code;
}
const [counted, ready] = [await count(), (await fetch(new URL('/ready', url))).status];
rmSync(ballast);
const changeSet = (await add('x'.repeat(50_000))).data?.addPlate?.changeSet;
server.kill('SIGTERM');
const [ended] = (await once(server, 'close')) as [number];
const events = log
  .trim()
  .split('\n')
  .map(line => (JSON.parse(line) as { event: string; code?: string }).code);
process.stdout.write(
  JSON.stringify({
    code,
    acknowledged,
    counted,
    ready,
    changeSet,
    ended,
    told: events.filter(each => each !== undefined),
  }),
);
