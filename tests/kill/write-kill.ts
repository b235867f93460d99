/**
 * Kills with SIGKILL, at random moments, a process that adds, edits, supersedes, withdraws, undoes, records acts and takes in; then looks at
 * what is left: each change set that was acknowledged is there whole, at most one more is and is whole, and `check` finds no
 * fault. Arguments: kills (default 1000). Prints the seed; SEED sets it.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout } from 'node:timers/promises';
import { checkStore } from '../../src/questions/check-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { seededRandom } from '../support/seeded-random.ts';
import { testWorld } from '../support/test-world.ts';

const kills = Number(process.argv[2] ?? 1000);
const seed = Number(process.env['SEED'] ?? Date.now() % 1_000_000);
const random = seededRandom(seed);
const writing = new URL('./writing-process.ts', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'platestemma-kill-'));

/** Kills that one store has to bear. */
const aStore = 25;

const found = { acknowledged: 0, unacknowledged: 0, begun: 0, rows: 0, faults: [] as string[] };
const began: Record<string, number> = {};
const started = performance.now();

for (let kill = 0; kill < kills; kill++) {
  const file = join(folder, `${Math.floor(kill / aStore)}.store`);
  const lines = await linesUntilKilled(file, 1 + seed * 1000 + kill, Math.floor(random() ** 2 * 40), random() * 12);
  await look(file, lines, kill);
  if (found.faults.length > 0) break;
}
const seconds = ((performance.now() - started) / 1000).toFixed(0);
const whats = Object.entries(began).map(([what, times]) => `${times} at ${what}`);
process.stdout.write(
  `seed ${seed}: ${kills} kills in ${seconds} s, of which under way ${whats.join(', ')}; ${found.acknowledged} change sets acknowledged, all there; ${found.unacknowledged} written and not yet acknowledged, all whole; ${found.rows} rows\n`,
);
for (const fault of found.faults) process.stdout.write(`FAULT ${fault}\n`);
rmSync(folder, { recursive: true, force: true });
process.exit(found.faults.length === 0 ? 0 : 1);

/** What the process has said by the time it is killed: so long after it has begun so many writes, or opened the store. */
async function linesUntilKilled(
  file: string,
  itsSeed: number,
  begins: number,
  milliseconds: number,
): Promise<readonly string[]> {
  const child = spawn(process.execPath, [writing, file, String(itsSeed)], { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise<void>((resolve, reject) => {
    child.on('close', (code, signal) =>
      signal === 'SIGKILL' ? resolve() : reject(new Error(`the writing process ended by itself with ${code}`)),
    );
  });
  const lines: string[] = [];
  let left = begins;
  const come = new Promise<void>(resolve => {
    createInterface({ input: child.stdout }).on('line', line => {
      lines.push(line);
      if ((line === 'open' && begins === 0) || (line.startsWith('begin') && --left === 0)) resolve();
    });
  });
  await Promise.race([come, ended]);
  await setTimeout(milliseconds);
  child.kill('SIGKILL');
  await ended;
  return lines;
}

async function look(file: string, lines: readonly string[], kill: number): Promise<void> {
  const fault = (message: string) => found.faults.push(`kill ${kill}, ${file}: ${message}`);
  const store = await openSqliteStore(file);
  try {
    const last = lines.at(-1)!.split(' ');
    const underWay = last[0] === 'begin' ? last[1]! : 'rest';
    began[underWay] = (began[underWay] ?? 0) + 1;
    const acknowledged = pairs(lines);
    const highest = acknowledged.at(-1)?.changeSet;
    for (const { changeSet, rows, what } of acknowledged) {
      const written = await rowsOf(store, changeSet);
      if (written !== rows)
        fault(`${what} was acknowledged as change set ${changeSet} with ${rows} rows, and has ${written}`);
    }
    found.acknowledged += acknowledged.length;
    const now = await store.lastChangeSet();
    const before = acknowledged[0] === undefined ? now : acknowledged[0].changeSet - 1;
    const extra = now - (highest ?? before);
    if (highest !== undefined && now < highest) fault(`change set ${highest} was acknowledged, the last is ${now}`);
    if (highest !== undefined && extra > 1) fault(`${extra} change sets more than were acknowledged`);
    if (highest !== undefined && extra === 1) {
      found.unacknowledged++;
      const written = await rowsOf(store, now);
      if (underWay === 'rest' || written !== Number(last[2])) {
        fault(`${lines.at(-1)} was under way, and change set ${now} has ${written} rows`);
      }
    }
    const check = await checkStore(store, testWorld(), { rebuild: false });
    for (const { id, message } of check.faults) fault(`check: ${id} ${message}`);
    found.rows += check.facts.records + check.facts.claims;
  } finally {
    await store.close();
  }
}

async function rowsOf(store: Awaited<ReturnType<typeof openSqliteStore>>, changeSet: number): Promise<number> {
  const [change] = await store.changesAfter(changeSet - 1, 1);
  return change?.changeSet.number === changeSet ? change.put.length + change.removed.length : 0;
}

interface Acknowledged {
  readonly what: string;
  readonly rows: number;
  readonly changeSet: number;
}

/** What was begun and acknowledged. A line that was cut off by the kill is none. */
function pairs(lines: readonly string[]): readonly Acknowledged[] {
  return lines.flatMap((line, i) => {
    const [, what = '', rows] = /^begin (\w+) (\d+)$/.exec(line) ?? [];
    const [, changeSet] = /^done (\d+)$/.exec(lines[i + 1] ?? '') ?? [];
    return rows === undefined || changeSet === undefined
      ? []
      : [{ what, rows: Number(rows), changeSet: Number(changeSet) }];
  });
}
