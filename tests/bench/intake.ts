/**
 * How fast library records are taken, stored and indexed, beside how fast pymarc merely parses the same file, in one run
 * with the sides interleaved; then memory and write-ahead log over a file ten times as long. Prints a table and writes
 * tests/bench/results/intake.json with date and commit. Without Python and pymarc the rate stands alone.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { repeatMarcxml } from '../support/repeat-marcxml.ts';
import { outsideFiles } from './outside-files.ts';
import { writeResult } from './result.ts';
import { type Taken, takeIntake } from './take-intake.ts';

const rounds = Number(process.env['ROUNDS'] ?? 3);
const long = process.env['LONG'] !== '0';
const folder = mkdtempSync(join(tmpdir(), 'platestemma-bench-'));
mkdirSync(folder, { recursive: true });

const files = outsideFiles('marcxml-19c', '.xml');
const short = join(folder, 'short.xml');
const records = await repeatMarcxml(files, 10, short);
const python = pythonWithPymarc();

const ours: number[] = [];
const theirs: number[] = [];
for (let round = 0; round < rounds; round++) {
  ours.push((await take(short, `round-${round}`)).rate);
  if (python !== undefined) theirs.push(parseRate(python, short, records));
}
const small = await take(short, 'memory-short');
const result: Record<string, unknown> = {
  records,
  megabytes: Math.round(statSync(short).size / 1e6),
  takenPerSecond: ours.map(Math.round),
  pymarcParsesPerSecond: theirs.map(Math.round),
  ratio: theirs.length === 0 ? null : round2(median(ours) / median(theirs)),
  memoryMB: small.memory,
  logMB: small.log,
};
if (long) {
  const tenfold = join(folder, 'tenfold.xml');
  const many = await repeatMarcxml(files, 100, tenfold);
  const large = await take(tenfold, 'memory-tenfold');
  Object.assign(result, {
    tenfold: {
      records: many,
      perSecond: Math.round(large.rate),
      memoryMB: large.memory,
      logMB: large.log,
      memoryGrowth: round2(large.memory / small.memory),
    },
  });
}
rmSync(folder, { recursive: true, force: true });
writeResult('intake', result);

/** Into a store that is removed again. */
async function take(file: string, name: string): Promise<Taken> {
  const store = join(folder, `${name}.store`);
  const taken = await takeIntake(file, store);
  rmSync(store, { force: true });
  return taken;
}

function pythonWithPymarc(): string | undefined {
  for (const python of [process.env['PYMARC_PYTHON'] ?? 'python3']) {
    try {
      execFileSync(python, ['-c', 'import pymarc'], { stdio: 'ignore' });
      return python;
    } catch {
      process.stderr.write(
        `${python} with pymarc is not there: the rate stands alone (pip install pymarc to compare)\n`,
      );
    }
  }
  return undefined;
}

function parseRate(python: string, file: string, expected: number): number {
  const program =
    'import sys,time,pymarc\nn=[0]\ndef f(r): n[0]+=1\nt=time.time()\npymarc.map_xml(f,sys.argv[1])\nprint(n[0],time.time()-t)';
  const [count, seconds] = execFileSync(python, ['-c', program, file], { encoding: 'utf8' })
    .trim()
    .split(' ')
    .map(Number);
  if (count !== expected) throw new Error(`pymarc read ${count} records, expected ${expected}`);
  return expected / seconds!;
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;
}

function round2(value: number): number {
  return Math.round(value * 100) / 100;
}
