import { spawn } from 'node:child_process';
import { statSync } from 'node:fs';
import { builtProgram } from './built-program.ts';
import { peakMemory } from './peak-memory.ts';

export interface Taken {
  readonly records: number;
  /** Records a second, as the report of the intake has it. */
  readonly rate: number;
  /** Peak resident set in megabytes. */
  readonly memory: number;
  /** Longest write-ahead log seen, in megabytes. */
  readonly log: number;
}

/** One intake of a MARCXML file into a store, in a process of its own. */
export async function takeIntake(file: string, store: string): Promise<Taken> {
  const main = builtProgram();
  const child = spawn(process.execPath, [main, 'intake', 'marcxml', file, '--store', store, '--json'], {
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  let memory = 0;
  let log = 0;
  const watch = setInterval(() => {
    memory = Math.max(memory, peakMemory(child.pid!));
    log = Math.max(log, (statSync(`${store}-wal`, { throwIfNoEntry: false })?.size ?? 0) / 1e6);
  }, 100);
  let text = '';
  child.stdout.on('data', chunk => {
    text += chunk;
  });
  const code = await new Promise(resolve => child.on('close', resolve));
  clearInterval(watch);
  if (text === '') throw new Error(`the intake ended with ${String(code)}`);
  const { records, seconds } = JSON.parse(text) as { records: number; seconds: number };
  return { records, rate: records / seconds, memory: Math.round(memory), log: Math.round(log) };
}
