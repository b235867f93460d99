/**
 * Kills a Neo4j server with SIGKILL at random moments and starts it again: a third of the kills in the middle of an intake
 * of library records, a third in the middle of a transfer from a file, the rest while questions are asked over HTTP. Our
 * commands go on by themselves, or end with trouble with the store and are started again; the server of questions is never
 * started again. What is there at the end is compared with a file that nothing happened to: the canonical checksum and the
 * make-up of each change set after the intake, the whole history byte by byte after the transfer, every answer. Arguments:
 * kills (default 50), MARCXML files (default: the outside material). Prints the seed; SEED sets it.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { outsideFiles } from '../bench/outside-files.ts';
import { KillableServer } from '../support/neo4j/killable-server.ts';
import { seededRandom } from '../support/seeded-random.ts';
import { Program } from './program.ts';
import { Asker, answersOf } from './questions-over-http.ts';
import { ServerKiller } from './server-killer.ts';

/** How long answers may fail after the server is back, in milliseconds. */
const patience = 60_000;

const kills = Number(process.argv[2] ?? 50);
const seed = Number(process.env['SEED'] ?? Date.now() % 1_000_000);
const library = process.argv.length > 3 ? process.argv.slice(3) : outsideFiles('marcxml-19c', '.xml');
const folder = mkdtempSync(join(tmpdir(), 'platestemma-kill-'));
const at = (name: string): string => join(folder, name);
const file = at('undisturbed.store');
const started = performance.now();

const server = await KillableServer.find(process.env);
const killer = new ServerKiller(server, seededRandom(seed));
const third = Math.ceil(kills / 3);
try {
  say(`seed ${seed}`);
  await duringIntake(third);
  await duringTransfer(Math.min(third, kills - killer.kills));
  await duringQuestions(kills - killer.kills);
  say(`${killer.kills} kills, ${killer.killsWhileStarting} of them of a server that was starting: nothing lost`);
} finally {
  await server.remove();
  rmSync(folder, { recursive: true, force: true });
}

/** Library after library, until the kills are used up. */
async function duringIntake(most: number): Promise<void> {
  const program = new Program(environment());
  const taken: string[] = [];
  await server.start();
  for (let left = most; left > 0 || taken.length === 0; ) {
    const records = recordsOf(taken.length);
    taken.push(records);
    const work = program.runToTheEnd(['intake', 'marcxml', records, '--store', server.store]);
    left -= await killer.during(left, work);
  }
  for (const records of taken) await program.run(['intake', 'marcxml', records, '--store', file]);
  const [found, expected] = [await checked(program, server.store), await checked(program, file)];
  compare('checksum', found.checksum, expected.checksum);
  const [made, undisturbed] = [await history(program, server.store), await history(program, file)];
  compare('change sets', makeUp(made), makeUp(undisturbed));
  say(
    `intake: ${killer.kills} kills, ${found.changeSets} change sets, ${startedAgain(program)}, checksum ${found.checksum}, as undisturbed`,
  );
}

/** Into an empty server again and again, until the kills are used up. */
async function duringTransfer(most: number): Promise<void> {
  const [program, before] = [new Program(environment()), killer.kills];
  const source = await history(program, file);
  const from = at('source.jsonl');
  writeFileSync(from, source);
  let times = 0;
  for (let left = most; left > 0 || times === 0; times++) {
    await server.empty();
    await server.start();
    left -= await killer.during(left, program.runToTheEnd(['transfer', '--from', from, '--to', server.store]));
    compare('history', await history(program, server.store), source);
    await checked(program, server.store);
  }
  say(
    `transfer: ${killer.kills - before} kills in ${times} transfers, ${startedAgain(program)}, the history the same byte by byte`,
  );
}

/** Of the store that was transferred. */
async function duringQuestions(most: number): Promise<void> {
  const [program, last] = [new Program(environment()), killer.kills + most];
  const undisturbed = await program.serve(file);
  const answers = await answersOf(undisturbed.url);
  await undisturbed.stop();
  // A limit that is shorter than the server's start: some are answered late, others told that it is away.
  const ours = await program.serve(server.store, { PLATESTEMMA_QUESTION_LIMIT: '3000' });
  const asker = new Asker(ours.url, answers);
  let slowest = 0;
  try {
    await asker.untilAllRight(patience);
    asker.begin(3);
    while (killer.kills < last) {
      await killer.once(last - killer.kills);
      const back = performance.now();
      await asker.untilAllRight(patience);
      slowest = Math.max(slowest, performance.now() - back);
    }
    await asker.end();
    if (asker.wrong.length > 0)
      throw new Error(`${asker.wrong.length} answers were neither right nor clear, as ${asker.wrong[0]}`);
    if (!ours.isRunning()) throw new Error('our server ended');
  } finally {
    await asker.end();
    await ours.stop();
  }
  say(
    `questions: ${most} kills, ${asker.right} answers right, ${words(asker.told)} told, all right at most ${Math.round(slowest)} ms after the server was back`,
  );
}

/** A file of the library, under control numbers of its own each time that it comes. */
function recordsOf(round: number): string {
  const text = readFileSync(library[round % library.length]!, 'utf8');
  const to = at(`records-${round}.xml`);
  writeFileSync(to, text.replace(/(<marc:controlfield tag="001">)/g, `$1r${round}-`));
  return to;
}

async function checked(program: Program, store: string) {
  const found = JSON.parse(await program.run(['check', '--store', store, '--json'])) as {
    readonly checksum: string;
    readonly changeSets: number;
    readonly faults: readonly unknown[];
  };
  compare('faults', JSON.stringify(found.faults), '[]');
  return found;
}

async function history(program: Program, store: string): Promise<string> {
  const to = at('history.jsonl');
  await program.run(['export', '--history', '--store', store, '-o', to]);
  return readFileSync(to, 'utf8');
}

/** Who made each change set, why, and the kinds of its rows in order: what two runs that give other ids have in common. */
function makeUp(lines: string): string {
  const parts: string[] = [];
  for (const line of lines.split('\n').filter(each => each !== '')) {
    const { changeSet, who, why, rows, kind } = JSON.parse(line) as Readonly<Record<string, unknown>>;
    if (changeSet !== undefined) parts.push(`${changeSet} ${who} ${why} ${rows}`);
    else if (kind !== undefined) parts.push(String(kind));
  }
  return parts.join('\n');
}

function compare(what: string, found: string, expected: string): void {
  if (found === expected) return;
  const [ours, theirs] = [found.split('\n'), expected.split('\n')];
  const line = ours.findIndex((each, i) => each !== theirs[i]);
  throw new Error(
    `${what}: expected ${theirs[line]?.slice(0, 300)}, came ${ours[line]?.slice(0, 300)} in line ${line + 1}`,
  );
}

function environment(): NodeJS.ProcessEnv {
  return { ...process.env, PLATESTEMMA_STORE_PASSWORD: server.password };
}

function startedAgain({ startedAgain: again }: Program): string {
  return `started again ${words(again)}`;
}

function words(counts: Readonly<Record<string, number>>): string {
  const each = Object.entries(counts).map(([code, count]) => `${code} ${count} times`);
  return each.length === 0 ? 'never' : each.join(', ');
}

function say(text: string): void {
  process.stdout.write(`${((performance.now() - started) / 1000).toFixed(0)} s: ${text}\n`);
}
