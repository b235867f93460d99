/**
 * One run that measures the engine on Neo4j, with the sides interleaved, about graphs of 100,000 editions (other sizes as
 * arguments: `npm run bench:neo4j -- 100000 1000000`), each with imprint, dating and a plate, a family of 60 pictures to a
 * hundred editions, and a lattice. Prints the results, keeps them in tests/bench/results/neo4j.json, and puts them into the
 * table of DEVELOPERS.md. Graphs and their databases are made once and kept in `.store/bench-neo4j/`: remove them for
 * another schema.
 *
 * The sides:
 * - ours: the built program, serving the database over HTTP.
 * - driver: the bare driver in this process, one statement an answer (bare-cypher.ts) over the same database. It gets the rows
 *   that the answer rests on, and works nothing out: no days, verdicts, handedness, contradictions or names in a language. For
 *   reach it is told which windows come first, which our engine works out from tallies; counts are not asked of it. For search
 *   it takes all words with the last one begun as one class, and does not look for some of the words. Ours is compared with it
 *   and a plain hello over HTTP together.
 * - layer: @neo4j/graphql 7 in a process and with a graphql of its own (graphql-layer/), over HTTP by the same kind of server, on
 *   the same database, its claims as nodes, as they are stored. It has the recorded dates in place of the days, and no word for
 *   a path: its document names each of the eight levels within the one before, both ways. It cannot be asked for reach, and of
 *   30 layers of a lattice there is no answer.
 * - light: the same layer over the derived relationship, which has no more of a copying than its id: less than the answer.
 * - file: the built program, serving the same graph from a file.
 * Before anything is measured the answers are compared: those of our two engines as bytes, those of the others by the records
 * found, but for reach and search.
 */
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { graphqlClient } from '../graphql-client.ts';
import { writeResult } from '../result.ts';
import { startServer } from '../server-process.ts';
import { BareDriver } from './bare-driver.ts';
import { embeddedStore, homeOf, keptFolder, type Loaded, load } from './data.ts';
import { startLayer } from './layer-process.ts';
import { checkAgreement, measure } from './measure.ts';
import { startNeo4j } from './neo4j-process.ts';
import { type Question, questionsOf } from './sides.ts';
import { resultsText, rewriteTable } from './table.ts';
import { type WriteRates, writeRates } from './write-rate.ts';

const sizes = process.argv.length > 2 ? process.argv.slice(2).map(Number) : [100_000];
/** Editions of the graph that is written again and again. */
const written = Math.min(10_000, ...sizes);
const closing: (() => unknown)[] = [];

try {
  tell(`rows are written, ${written} editions at a time`);
  const writes = await writeRatesOnScratch();
  const loaded = new Map<number, Loaded>();
  const questions = new Map<number, readonly Question[]>();
  for (const editions of sizes) {
    tell(`a graph of ${editions} editions`);
    const file = await embeddedStore(editions);
    const database = await startNeo4j(homeOf(editions));
    closing.push(() => database.stop());
    loaded.set(editions, await load(file, database.uri, editions));
    questions.set(editions, await questionsAbout(editions, file, database.uri));
  }
  tell('answers are compared, and measured');
  for (const each of [...questions.values()].flat()) await checkAgreement(each, 5);
  const results = { measured: await measure(questions), loaded, writes };
  writeResult('neo4j', { ...results, loaded: Object.fromEntries(loaded) });
  rewriteTable(results);
  process.stdout.write(`${resultsText(results)}\n`);
} finally {
  for (const close of closing.reverse()) await close();
}

/** It takes minutes: whoever waits is told what for. */
function tell(what: string): void {
  process.stderr.write(`${what}\n`);
}

async function questionsAbout(editions: number, file: string, uri: string): Promise<readonly Question[]> {
  const servers = await Promise.all([startServer(uri), startServer(file), startLayer(uri)]);
  const [ours, embedded, layer] = servers.map(({ url }) => graphqlClient(url));
  const driver = new BareDriver(uri);
  closing.push(
    ...servers.map(server => () => server.stop()),
    ...[ours!, embedded!, layer!, driver].map(client => () => client.close()),
  );
  return questionsOf(editions, { ours: ours!, file: embedded!, layer: layer!, driver });
}

async function writeRatesOnScratch(): Promise<WriteRates> {
  const file = await embeddedStore(written);
  const home = join(keptFolder, 'scratch.neo4j');
  rmSync(home, { recursive: true, force: true });
  mkdirSync(home, { recursive: true });
  const server = await startNeo4j(home);
  try {
    return await writeRates(file, server.uri);
  } finally {
    await server.stop();
    rmSync(home, { recursive: true, force: true });
  }
}
