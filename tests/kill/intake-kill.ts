/**
 * Kills an intake with SIGKILL at random moments and starts it again, until it comes to its end; then compares the
 * canonical checksum with that of an undisturbed run. Arguments: kills (default 10), MARCXML files (default: the outside
 * material). Prints the seed; SEED sets it.
 */
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { outsideFiles } from '../bench/outside-files.ts';
import { repeatMarcxml } from '../support/repeat-marcxml.ts';

const kills = Number(process.argv[2] ?? 10);
const seed = Number(process.env['SEED'] ?? Date.now() % 1_000_000);
const random = seeded(seed);
const main = new URL('../../src/main.ts', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'platestemma-kill-'));
const file = join(folder, 'records.xml');
const records = await repeatMarcxml(
  process.argv.length > 3 ? process.argv.slice(3) : outsideFiles('marcxml-19c', '.xml'),
  3,
  file,
);

const undisturbed = join(folder, 'undisturbed.store');
const beginning = performance.now();
run(['find', 'nothing', '--store', undisturbed], true);
const started = performance.now();
run(['intake', 'marcxml', file, '--store', undisturbed]);
const length = performance.now() - started;
const start = started - beginning;

const disturbed = join(folder, 'disturbed.store');
let done = 0;
for (let kill = 0; kill < kills; kill++) {
  // Each run gets about its share of the work, so that all are killed before the end; some before they have begun.
  if (await killedAfter(start / 2 + (random() * 1.5 * length) / kills)) done++;
}
run(['intake', 'marcxml', file, '--store', disturbed]);

const expected = checksum(undisturbed);
const found = checksum(disturbed);
const agree = expected === found;
process.stdout.write(
  `seed ${seed}: ${records} records, ${done} of ${kills} runs killed before their end, checksum ${found}${agree ? ', as undisturbed' : `, expected ${expected}`}\n`,
);
rmSync(folder, { recursive: true, force: true });
process.exit(agree ? 0 : 1);

/** @returns whether the run was still going when it was killed */
async function killedAfter(milliseconds: number): Promise<boolean> {
  const child = spawn(process.execPath, [main, 'intake', 'marcxml', file, '--store', disturbed], { stdio: 'ignore' });
  const timer = setTimeout(() => child.kill('SIGKILL'), milliseconds);
  const signal = await new Promise<NodeJS.Signals | null>(resolve => child.on('exit', (_code, by) => resolve(by)));
  clearTimeout(timer);
  return signal === 'SIGKILL';
}

function run(args: readonly string[], mayFail = false): string {
  try {
    return execFileSync(process.execPath, [main, ...args], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  } catch (error) {
    if (mayFail) return '';
    throw error;
  }
}

function checksum(store: string): string {
  const found = JSON.parse(run(['check', '--store', store, '--json'])) as {
    checksum: string;
    faults: readonly unknown[];
  };
  if (found.faults.length > 0) throw new Error(`check found ${found.faults.length} faults in ${store}`);
  return found.checksum;
}

/** Mulberry32: small, and enough for moments to kill at. */
function seeded(state: number): () => number {
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}
