import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { onTestFinished } from 'vitest';

const main = new URL('../../src/main.ts', import.meta.url).pathname;

export interface ServedProcess {
  readonly child: ChildProcess;
  /** Address of the GraphQL endpoint. */
  readonly url: string;
  /** Exit code, or the signal that ended it. */
  readonly ended: Promise<number | NodeJS.Signals>;
  /** What it has written to standard error so far. */
  said(): string;
}

export interface ServeOptions {
  readonly env?: Readonly<Record<string, string>>;
  /** The program and what comes before its arguments; Node with our main file if absent. */
  readonly command?: readonly [string, ...string[]];
}

/** Serves a store in a process of its own, which does not outlive the test. Rejects with what it says if it does not serve. */
export async function serveInProcess(store: string, options: ServeOptions = {}): Promise<ServedProcess> {
  const [program, ...before] = options.command ?? [process.execPath, main];
  const child = spawn(program, [...before, 'serve', '--store', store, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, ...options.env },
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  let said = '';
  child.stderr.on('data', chunk => (said += String(chunk)));
  const ended = once(child, 'close').then(([code, signal]) => (code ?? signal) as number | NodeJS.Signals);
  const url = await new Promise<string>((resolve, reject) => {
    child.stdout.on('data', chunk => {
      const found = /at (http:\S+)/.exec(String(chunk))?.[1];
      if (found !== undefined) resolve(found);
    });
    void ended.then(code => reject(Object.assign(new Error(said), { code })));
  });
  return { child, url, ended, said: () => said };
}
