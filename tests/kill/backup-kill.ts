/**
 * Kills backups and restores with SIGKILL at random moments while another process takes records in, and looks each time at
 * what is left: no backup that is not whole, no store that is not the old one or the restored one. Arguments: kills (default
 * 20), MARCXML files (default: the outside material). Prints the seed; SEED sets it.
 */
import { execFileSync, spawn } from 'node:child_process';
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { gunzipSync } from 'node:zlib';
import { removeStore } from '../../src/store/sqlite/replace-store.ts';
import { outsideFiles } from '../bench/outside-files.ts';
import { killedWhen } from '../support/killed-process.ts';
import { seededRandom } from '../support/seeded-random.ts';

const kills = Number(process.argv[2] ?? 20);
const seed = Number(process.env['SEED'] ?? Date.now() % 1_000_000);
const random = seededRandom(seed);
const main = new URL('../../src/main.ts', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'platestemma-kill-'));
const at = (name: string): string => join(folder, name);
const [first, ...others] = process.argv.length > 3 ? process.argv.slice(3) : outsideFiles('marcxml-19c', '.xml');

const served = at('served.store');
run(['intake', 'marcxml', first!, '--store', served]);
const writing = spawn(process.execPath, [main, 'intake', 'marcxml', ...others, '--store', served], { stdio: 'ignore' });
const written = new Promise(resolve => writing.on('close', resolve));

let killedBackups = 0;
const backups = [at('first.jsonl.gz')];
const backupLength = timeOf(['backup', backups[0]!, '--store', served]);
for (let kill = 0; kill < kills; kill++) {
  const file = at(`${kill}.jsonl.gz`);
  if (await killedWhen(['backup', file, '--store', served], () => setTimeout(random() * 1.5 * backupLength))) {
    killedBackups++;
    expect(!existsSync(file), `backup ${kill} was killed, and there is no file of its name`);
  } else backups.push(file);
}
await written;
const last = at('last.jsonl.gz');
run(['backup', last, '--store', served]);
backups.push(last);
const whole = linesIn(last);
for (const file of backups) {
  const lines = linesIn(file);
  const sets = lines.filter(line => line.startsWith('{"changeSet":'));
  const same = whole.filter(line => line.startsWith('{"changeSet":')).slice(0, sets.length);
  expect(sets.join() === same.join(), `${file} holds the first change sets`);
  const to = at('again.store');
  run(['restore', file, '--store', to]);
  expect(faults(to) === 0, `nothing is amiss in what ${file} was restored to`);
  await removeStore(to);
}

const old = at('old.store');
run(['intake', 'marcxml', first!, '--store', old]);
const before = history(old);
const place = at('place.store');
copyFileSync(old, place);
let killedRestores = 0;
const restoreLength = timeOf(['restore', last, '--store', at('timed.store')]);
for (let kill = 0; kill < kills; kill++) {
  const args = ['restore', last, '--store', place, '--replace'];
  if (await killedWhen(args, () => setTimeout(random() * 1.2 * restoreLength))) killedRestores++;
  const found = history(place);
  expect(found === before || found === whole.join('\n'), `restore ${kill} left the old store or the restored one`);
  await removeStore(place);
  copyFileSync(old, place);
}
process.stdout.write(
  `seed ${seed}: ${killedBackups} of ${kills} backups killed beside an intake, ${backups.length} whole; ${killedRestores} of ${kills} restores killed; nothing was lost\n`,
);
rmSync(folder, { recursive: true, force: true });

function run(args: readonly string[]): string {
  return execFileSync(process.execPath, [main, ...args], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
}

/** Milliseconds that a command takes. */
function timeOf(args: readonly string[]): number {
  const started = performance.now();
  run(args);
  return performance.now() - started;
}

function linesIn(file: string): readonly string[] {
  return gunzipSync(readFileSync(file)).toString().trimEnd().split('\n');
}

function history(store: string): string {
  const file = at('history.jsonl');
  run(['export', '--history', '--store', store, '-o', file]);
  return readFileSync(file, 'utf8').trimEnd();
}

function faults(store: string): number {
  const found = JSON.parse(run(['check', '--store', store, '--json'])) as { readonly faults: readonly unknown[] };
  return found.faults.length;
}

function expect(holds: boolean, what: string): void {
  if (holds) return;
  process.stdout.write(`seed ${seed}: not so: ${what}\n`);
  process.exit(1);
}
