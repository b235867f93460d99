import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { builtProgram } from './built-program.ts';
import { heldMemory, peakMemory } from './peak-memory.ts';

/** Our server in a process of its own. */
export interface ServerProcess {
  /** Address of the GraphQL endpoint. */
  readonly url: string;
  /** Milliseconds from the start of the process until /ready answered 200. */
  readonly startTime: number;
  /** Peak resident set so far in megabytes. */
  memory(): number;
  /** Resident set now in megabytes. */
  held(): number;
  stop(): Promise<void>;
}

export async function startServer(store: string, env: Readonly<Record<string, string>> = {}): Promise<ServerProcess> {
  const main = builtProgram();
  const begun = performance.now();
  const child = spawn(process.execPath, [main, 'serve', '--store', store, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, ...env },
  });
  // A measurement that fails leaves no server behind.
  process.once('exit', () => child.kill('SIGKILL'));
  const url = await new Promise<string>((resolve, reject) => {
    child.stdout.on('data', chunk => {
      const found = /at (http:\S+)/.exec(String(chunk));
      if (found !== null) resolve(found[1]!);
    });
    child.on('close', code => reject(new Error(`the server ended with ${String(code)}`)));
  });
  const answer = await fetch(new URL('/ready', url));
  if (answer.status !== 200) throw new Error(`/ready answered ${answer.status}`);
  return {
    url,
    startTime: performance.now() - begun,
    memory: () => Math.round(peakMemory(child.pid!)),
    held: () => Math.round(heldMemory(child.pid!)),
    stop: async () => {
      child.kill('SIGTERM');
      await once(child, 'close');
    },
  };
}
