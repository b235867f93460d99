/**
 * Kills a transfer with SIGKILL at random moments and starts it again, until it comes to its end; then compares the whole
 * history with that of the source, byte by byte. Arguments: kills (default 10), MARCXML files (default: the outside
 * material). Prints the seed; SEED sets it.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { outsideFiles } from '../bench/outside-files.ts';
import { killedWhen } from '../support/killed-process.ts';
import { repeatMarcxml } from '../support/repeat-marcxml.ts';
import { seededRandom } from '../support/seeded-random.ts';

const kills = Number(process.argv[2] ?? 10);
const seed = Number(process.env['SEED'] ?? Date.now() % 1_000_000);
const random = seededRandom(seed);
const main = new URL('../../src/main.ts', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'platestemma-kill-'));
const at = (name: string): string => join(folder, name);

const records = at('records.xml');
const files = process.argv.length > 3 ? process.argv.slice(3) : outsideFiles('marcxml-19c', '.xml');
const count = await repeatMarcxml(files, 3, records);
const source = at('source.store');
run(['intake', 'marcxml', records, '--store', source]);

const started = performance.now();
run(['transfer', '--from', source, '--to', at('undisturbed.store')]);
const length = performance.now() - started;

const disturbed = at('disturbed.store');
let done = 0;
for (let kill = 0; kill < kills; kill++) {
  // Each run gets about its share of the work, so that all are killed before the end; some before they have begun.
  const milliseconds = 200 + random() * (300 + (2 * length) / kills);
  if (await killedWhen(['transfer', '--from', source, '--to', disturbed], () => setTimeout(milliseconds))) done++;
}
const { begunAfter, agree } = JSON.parse(run(['transfer', '--from', source, '--to', disturbed, '--json'])) as {
  readonly begunAfter: number;
  readonly agree: boolean;
};
const same = agree && history(disturbed) === history(source) && faults(disturbed) === 0;
process.stdout.write(
  `seed ${seed}: ${count} records, ${done} of ${kills} transfers killed before their end, the last went on after change set ${begunAfter}; ${same ? 'nothing was lost' : 'the history differs'}\n`,
);
rmSync(folder, { recursive: true, force: true });
process.exit(same ? 0 : 1);

function run(args: readonly string[]): string {
  return execFileSync(process.execPath, [main, ...args], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
}

function history(store: string): string {
  const file = at('history.jsonl');
  run(['export', '--history', '--store', store, '-o', file]);
  return readFileSync(file, 'utf8');
}

function faults(store: string): number {
  return (JSON.parse(run(['check', '--store', store, '--json'])) as { readonly faults: readonly unknown[] }).faults
    .length;
}
