/**
 * One run of everything that answers are measured by, with the sides interleaved: hello (the least that our server can
 * answer), node, search and reach over HTTP at 10,000 and 100,000 editions, each with a plate; reach beside hello and the
 * bare computation in this process; counts alone, by place and decade, and under filters; start time, memory, and the
 * rate of an intake where the outside material is there. Prints a table and writes tests/bench/results/bench.json with
 * date and commit. Keep the machine quiet: p95 tells how quiet it was; beside it stands the mean time of this process's
 * threads, which other work disturbs less.
 *
 * `npm run bench -- 1000000` for other sizes; a store of more than 100,000 editions is made once and kept in `.store/`.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDesk } from '../../src/compose.ts';
import { outsidePath } from '../support/outside-path.ts';
import { repeatMarcxml } from '../support/repeat-marcxml.ts';
import { type GraphqlClient, graphqlClient } from './graphql-client.ts';
import { largeStore } from './large-store.ts';
import { outsideFiles } from './outside-files.ts';
import { round, type Timing, timingOf } from './percentile.ts';
import {
  type Asked,
  filteredQuestions,
  hello,
  nodeQuestions,
  overHttp,
  reachQuestions,
  searchQuestions,
} from './questions.ts';
import { writeResult } from './result.ts';
import { startServer } from './server-process.ts';
import { syntheticStore } from './synthetic-store.ts';
import { takeIntake } from './take-intake.ts';

const rounds = 10;
/** Not counted: a server that has answered some dozens of questions of a sort has compiled what it answers them with. */
const roundsBefore = 2;
const sizes = process.argv.length > 2 ? process.argv.slice(2).map(Number) : [10_000, 100_000];
/** Larger stores are kept. */
const mostMadeAnew = 100_000;
const folder = mkdtempSync(join(tmpdir(), 'platestemma-bench-'));
const closing: (() => unknown)[] = [];

/** One of the things measured: `times` calls a round. */
interface Side {
  readonly times: number;
  readonly call: () => Promise<number>;
  readonly taken: number[];
  /** Milliseconds that the threads of this process worked, in all; what is asked over HTTP is worked elsewhere. */
  worked: number;
}

try {
  const sides: Record<string, Side> = {};
  const servers: Record<string, unknown> = {};
  const memory: (() => void)[] = [];
  for (const editions of sizes) {
    const file = await storeOf(editions);
    const server = await startServer(file);
    const client = graphqlClient(server.url);
    const { store, questions } = await openDesk(file, { store: file, who: 'a bench', questionLimit: 10_000 });
    closing.push(
      () => client.close(),
      () => store.close(),
      () => server.stop(),
    );
    const [asked, bare, counted, tallied] = Array.from({ length: 4 }, reachQuestions) as [Next, Next, Next, Next];
    const filtered = filteredQuestions();
    const counts = { page: { first: 0 } };
    Object.assign(sides, {
      [`hello ${editions}`]: side(40, () => timed(client, hello())),
      [`node ${editions}`]: side(40, askedEach(client, nodeQuestions(editions))),
      [`search ${editions}`]: side(10, askedEach(client, searchQuestions())),
      [`reach ${editions}`]: side(20, () => timed(client, overHttp(asked()))),
      [`reach in process ${editions}`]: side(20, () => timeOf(() => questions.reach(bare()))),
      [`counts ${editions}`]: side(20, () => timeOf(() => questions.reach({ ...counted(), ...counts }))),
      [`by place ${editions}`]: side(20, () =>
        timeOf(() => questions.reach({ ...tallied(), ...counts, tallies: true })),
      ),
      [`filtered ${editions}`]: side(20, () => timeOf(() => questions.reach(filtered()))),
    });
    memory.push(() => {
      servers[editions] = { startTime: Math.round(server.startTime), memoryMB: server.memory() };
    });
  }
  for (let number = 0; number < roundsBefore + rounds; number++) {
    for (const each of Object.values(sides)) {
      for (let time = 0; time < each.times; time++) {
        const before = process.cpuUsage();
        const took = await each.call();
        const { user, system } = process.cpuUsage(before);
        if (number < roundsBefore) continue;
        each.taken.push(took);
        each.worked += (user + system) / 1000;
      }
    }
  }
  for (const tell of memory) tell();
  const timings = Object.fromEntries(
    Object.entries(sides).map(([name, { taken, worked }]) => [
      name,
      { ...timingOf(taken), worked: round(worked / taken.length) },
    ]),
  );
  const withRatios = ratios(timings);
  console.table(withRatios);
  writeResult('bench', { milliseconds: withRatios, servers, intake: await intake() });
} finally {
  for (const close of closing) await close();
  rmSync(folder, { recursive: true, force: true });
}

type Next = ReturnType<typeof reachQuestions>;

async function storeOf(editions: number): Promise<string> {
  if (editions > mostMadeAnew) return largeStore(editions);
  const file = join(folder, `${editions}.store`);
  await syntheticStore(file, editions);
  return file;
}

function side(times: number, call: () => Promise<number>): Side {
  return { times, call, taken: [], worked: 0 };
}

function askedEach(client: GraphqlClient, next: () => Asked): () => Promise<number> {
  return () => timed(client, next());
}

function timed(client: GraphqlClient, { query, variables }: Asked): Promise<number> {
  return client.time(query, variables);
}

async function timeOf(call: () => Promise<unknown>): Promise<number> {
  const begun = performance.now();
  await call();
  return performance.now() - begun;
}

/** Each beside hello at the same size, and reach beside its baseline: hello and the bare computation. */
function ratios(timings: Readonly<Record<string, Timing>>): Record<string, Timing & Record<string, number>> {
  return Object.fromEntries(
    Object.entries(timings).map(([name, timing]) => {
      const size = name.slice(name.lastIndexOf(' ') + 1);
      const least = timings[`hello ${size}`]!.p50;
      const baseline = least + timings[`reach in process ${size}`]!.p50;
      const besideBaseline = name === `reach ${size}` ? { toBaseline: round(timing.p50 / baseline) } : {};
      return [name, { ...timing, toHello: round(timing.p50 / least), ...besideBaseline }];
    }),
  );
}

async function intake(): Promise<unknown> {
  if (outsidePath('marcxml-19c') === undefined) return 'no outside material: set OUTSIDE_DATA';
  const file = join(folder, 'twice.xml');
  await repeatMarcxml(outsideFiles('marcxml-19c', '.xml'), 2, file);
  const { records, rate, memory, log } = await takeIntake(file, join(folder, 'intake.store'));
  return { records, perSecond: Math.round(rate), memoryMB: memory, logMB: log };
}
