import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';

/** Prints a result and keeps it as a file, with date, commit, machine, and how busy it was in the last minute. */
export function writeResult(name: string, result: Readonly<Record<string, unknown>>): void {
  const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { encoding: 'utf8' }).trim();
  const whole = {
    date: new Date().toISOString(),
    commit,
    node: process.versions.node,
    cores: cpus().length,
    load: loadavg()[0],
    ...result,
  };
  const folder = join(import.meta.dirname, 'results');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${name}.json`), `${JSON.stringify(whole, null, 2)}\n`);
  process.stdout.write(`${JSON.stringify(whole, null, 2)}\n`);
}
