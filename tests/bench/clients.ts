/**
 * Whether many may ask at once: 500 clients for 60 s on the loopback address, each on a connection that it keeps, each
 * asking the next of mixed questions when it has the answer to the one before; beside them clients that read or send a
 * byte a second, and uploads that do not end. Expected: no error but 503, and memory that stays. First a quarter of the
 * time without the neighbours, to see what they change. Prints all and writes tests/bench/results/clients.json.
 *
 * `node tests/bench/clients.ts 100 10` for fewer clients and seconds, after `npm run build`.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { Agent, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { seededRandom } from '../support/seeded-random.ts';
import { badNeighbours } from './bad-neighbours.ts';
import { type Timing, timingOf } from './percentile.ts';
import {
  type Asked,
  hello,
  historyQuestions,
  nodeQuestions,
  overHttp,
  reachQuestions,
  searchQuestions,
} from './questions.ts';
import { writeResult } from './result.ts';
import { startServer } from './server-process.ts';
import { syntheticStore } from './synthetic-store.ts';

const clients = Number(process.argv[2] ?? 500);
const seconds = Number(process.argv[3] ?? 60);
const editions = 20_000;
const folder = mkdtempSync(join(tmpdir(), 'platestemma-bench-'));
const store = join(folder, 'graph.store');

const reach = reachQuestions();
const add = (): Asked => ({
  query: 'mutation { addPlate(input: {caption: "a plate of a client", signed: {who: "a client"}}) { changeSet } }',
});
/** Kinds of questions, with how many of a hundred are of the kind. */
const mix: readonly (readonly [kind: string, share: number, next: () => Asked])[] = [
  ['hello', 10, hello],
  ['node', 44, nodeQuestions(editions)],
  ['history', 15, historyQuestions(editions)],
  ['search', 15, searchQuestions()],
  ['reach', 15, () => overHttp(reach())],
  ['add', 1, add],
];

/** What was answered in a while. */
class Answers {
  readonly times = new Map<string, number[]>(mix.map(([kind]) => [kind, []]));
  readonly errors: Record<string, number> = {};

  count(error: string): void {
    this.errors[error] = (this.errors[error] ?? 0) + 1;
  }

  report(during: number): Readonly<Record<string, unknown>> {
    const all = [...this.times.values()].flat();
    const kinds: Record<string, Timing> = {};
    for (const [kind, times] of this.times) if (times.length > 0) kinds[kind] = timingOf(times);
    return { answersPerSecond: Math.round(all.length / during), all: timingOf(all), kinds, errors: this.errors };
  }
}

try {
  await syntheticStore(store, editions);
  const server = await startServer(store);
  const atStart = server.held();
  const without = await withClients(server.url, seconds / 4);
  const beforehand = server.held();
  const neighbours = badNeighbours(server.url, 3);
  const memory: Record<string, number> = { atStart, afterTheFirstQuarter: beforehand };
  const watching = (async () => {
    for (const third of [1, 2, 3]) {
      await pause((seconds * 1_000) / 3);
      memory[`after ${Math.round((seconds / 3) * third)} s`] = server.held();
    }
  })();
  const beside = await withClients(server.url, seconds);
  await watching;
  const bad = neighbours.report();
  neighbours.stop();
  await pause(2_000);
  memory['two seconds later'] = server.held();
  const ready = (await fetch(new URL('/ready', server.url))).status;
  const peakMegabytes = server.memory();
  await server.stop();
  writeResult('clients', {
    ...{ clients, seconds, editions, without, besideBadNeighbours: beside, badNeighbours: bad },
    ...{ heldMegabytes: memory, peakMegabytes, readyAfterwards: ready },
  });
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function withClients(url: string, during: number): Promise<Readonly<Record<string, unknown>>> {
  const answers = new Answers();
  const end = performance.now() + during * 1_000;
  await Promise.all(Array.from({ length: clients }, (_, i) => client(url, i, end, answers)));
  return answers.report(during);
}

async function client(url: string, number: number, end: number, answers: Answers): Promise<void> {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  const random = seededRandom(number + 1);
  while (performance.now() < end) {
    const [kind, next] = drawn(random() * 100);
    const begun = performance.now();
    const { error, again } = await ask(url, agent, next()).catch((cause: NodeJS.ErrnoException) => ({
      error: cause.code ?? cause.message,
      again: 0,
    }));
    if (error === undefined) answers.times.get(kind)!.push(performance.now() - begun);
    else answers.count(error);
    // Who is told when to come again does.
    if (again > 0) await pause(again * 1_000);
  }
  agent.destroy();
}

function drawn(at: number): readonly [string, () => Asked] {
  let upTo = 0;
  for (const [kind, share, next] of mix) {
    upTo += share;
    if (at < upTo) return [kind, next];
  }
  return ['hello', hello];
}

interface Answered {
  /** Status and code of what was not answered. */
  readonly error: string | undefined;
  /** Seconds until the client may come again. */
  readonly again: number;
}

function ask(url: string, agent: Agent, asked: Asked): Promise<Answered> {
  return new Promise((resolve, reject) => {
    const headers = { 'content-type': 'application/json', accept: 'application/graphql-response+json' };
    const sent = request(url, { method: 'POST', agent, headers }, response => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('error', reject);
      response.on('end', () => {
        const text = Buffer.concat(chunks).toString();
        // To read every answer would take the machine from the server: an answer with errors begins or ends with them.
        const code = /"errors":\[[\s\S]*?"code":"([A-Z_]+)"/.exec(text)?.[1];
        const { statusCode = 0 } = response;
        const error = statusCode === 200 && code === undefined ? undefined : `${statusCode} ${code ?? ''}`.trim();
        resolve({ error, again: Number(response.headers['retry-after'] ?? 0) });
      });
    });
    sent.on('error', reject);
    sent.end(JSON.stringify(asked));
  });
}
