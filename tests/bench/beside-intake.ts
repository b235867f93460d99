/**
 * Whether the server goes on: requests beside an intake by a second process into the same store, and beside one and
 * searches without end (expected: under 50 ms at the 95th percentile), and a question past its limit, which ends within 20 ms of it with STORE_TIMEOUT while others
 * are answered. Beside both stands what a busy machine alone makes of them: hello, the least that the server can answer,
 * and how late a clock of the same length rings here. Prints all and writes tests/bench/results/beside-intake.json.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { repeatMarcxml } from '../support/repeat-marcxml.ts';
import { type GraphqlClient, graphqlClient } from './graphql-client.ts';
import { outsideFiles } from './outside-files.ts';
import { type Timing, timingOf } from './percentile.ts';
import { type Asked, hello, historyQuestions, nodeQuestions, searchQuestions } from './questions.ts';
import { writeResult } from './result.ts';
import { startServer } from './server-process.ts';
import { syntheticStore } from './synthetic-store.ts';
import { takeIntake } from './take-intake.ts';

const editions = 100_000;
/** Little enough that the long questions meet it. */
const limit = 15;
const mostRequests = 2000;
/** Rounds beside an intake alone, before searches join. */
const atOnce = 200;
const folder = mkdtempSync(join(tmpdir(), 'platestemma-bench-'));
const store = join(folder, 'graph.store');

/** Questions that look at all there is, on a server that gives them little time. */
const longQuestions: Readonly<Record<string, string>> = {
  'reach of a subject, by title':
    '{reach(at:{placeName:"Meissen"},by:"1790",order:TITLE,filter:{subject:"9",illustrated:true,language:"ita"}){counts{inNoCase} editions{nodes{edition{title}}}}}',
  'reach of all':
    '{reach(at:{placeName:"Meissen"},by:"1790",first:50){counts{inNoCase} editions{nodes{edition{title}}}}}',
  'search for common words': '{search(text:"collection and of the no c",first:50){edges{node{id}}}}',
};

try {
  await syntheticStore(store, editions);
  const late = await pastTheLimit();
  const beside = await besideAnIntake();
  writeResult('beside-intake', { ...beside, limit, pastTheLimit: late });
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function besideAnIntake(): Promise<Record<string, unknown>> {
  const file = join(folder, 'records.xml');
  await repeatMarcxml(outsideFiles('marcxml-19c', '.xml'), 5, file);
  const server = await startServer(store);
  const client = graphqlClient(server.url);
  const kinds = {
    hello,
    node: nodeQuestions(editions),
    search: searchQuestions(),
    history: historyQuestions(editions),
  };
  const { search: _, ...others } = kinds;
  const alone = await askInTurn(client, kinds, round => round < 100);
  let under = true;
  const intake = takeIntake(file, store).finally(() => {
    under = false;
  });
  const beside = await askInTurn(client, kinds, round => under && round < atOnce);
  const searches = searchWithoutEnd(server.url);
  const besideBoth = await askInTurn(client, others, round => under && round < mostRequests);
  const searched = await searches.stop();
  const { records, rate } = await intake;
  client.close();
  await server.stop();
  console.table({
    ...named(alone, 'alone'),
    ...named(beside, 'beside an intake'),
    ...named(besideBoth, 'beside an intake and searches without end'),
  });
  return { alone, beside, besideBoth, searched, intake: { records, perSecond: Math.round(rate) } };
}

/** The longest searches, each begun when the one before has ended, so that one always runs. */
function searchWithoutEnd(url: string): { stop(): Promise<Timing> } {
  const client = graphqlClient(url);
  const next = searchQuestions();
  const taken: number[] = [];
  let goOn = true;
  const run = async () => {
    while (goOn) {
      const { query, variables } = next();
      taken.push(await client.time(query, { ...variables, text: 'collection and of the no c' }));
    }
  };
  const ended = run();
  return {
    stop: async () => {
      goOn = false;
      await ended;
      client.close();
      return timingOf(taken);
    },
  };
}

/** A question of each kind in turn, with a breath between rounds. */
async function askInTurn(
  client: GraphqlClient,
  kinds: Readonly<Record<string, () => Asked>>,
  goOn: (round: number) => boolean,
): Promise<Record<string, Timing>> {
  const taken = Object.keys(kinds).map(name => ({ name, times: [] as number[] }));
  for (let round = 0; goOn(round); round++) {
    for (const { name, times } of taken) {
      const { query, variables } = kinds[name]!();
      times.push(await client.time(query, variables));
    }
    await pause(5);
  }
  return Object.fromEntries(taken.map(({ name, times }) => [name, timingOf(times)]));
}

async function pastTheLimit(): Promise<Record<string, unknown>> {
  const server = await startServer(store, { PLATESTEMMA_QUESTION_LIMIT: String(limit) });
  const [client, other] = [graphqlClient(server.url), graphqlClient(server.url)];
  const next = nodeQuestions(editions);
  // The first questions of a new process may well take longer than the limit: they are not counted.
  for (let asked = 0; asked < 50; asked++) await other.ask(next().query, next().variables);
  for (const query of Object.values(longQuestions)) await client.ask(query);
  const result: Record<string, unknown> = {};
  for (const [name, query] of Object.entries(longQuestions)) {
    const ends: number[] = [];
    const codes: Record<string, number> = {};
    const others: number[] = [];
    const clocks: number[] = [];
    let failed = 0;
    for (let time = 0; time < 15; time++) {
      let under = true;
      const begun = performance.now();
      const clock = pause(limit).then(() => clocks.push(performance.now() - begun - limit));
      const long = client.ask(query).then(({ errors }) => {
        // What was answered in time did not meet the limit.
        if (errors !== undefined) ends.push(performance.now() - begun - limit);
        const code = errors === undefined ? 'answered' : (errors[0]?.extensions?.code ?? 'no code');
        codes[code] = (codes[code] ?? 0) + 1;
        under = false;
      });
      for (let asked = 0; under && asked < 200; asked++) {
        const { query: text, variables } = next();
        const asking = performance.now();
        if ((await other.ask(text, variables)).errors !== undefined) failed++;
        others.push(performance.now() - asking);
        await pause(2);
      }
      await Promise.all([long, clock]);
    }
    result[name] = {
      codes,
      millisecondsAfterLimit: ends.length === 0 ? 'none met it' : timingOf(ends),
      clockHere: timingOf(clocks),
      nodeMeanwhile: { ...timingOf(others), failed },
    };
  }
  client.close();
  other.close();
  await server.stop();
  return result;
}

function named(timings: Readonly<Record<string, Timing>>, when: string): Record<string, Timing> {
  return Object.fromEntries(Object.entries(timings).map(([name, timing]) => [`${name}, ${when}`, timing]));
}
