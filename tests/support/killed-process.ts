import { type ChildProcess, spawn } from 'node:child_process';

const main = new URL('../../src/main.ts', import.meta.url).pathname;

/**
 * Runs a command of the program in a process of its own, and kills it with SIGKILL when `until` resolves.
 * @returns whether it was still going then
 */
export async function killedWhen(
  args: readonly string[],
  until: (child: ChildProcess) => Promise<void>,
): Promise<boolean> {
  const child = spawn(process.execPath, [main, ...args], { stdio: 'ignore' });
  const ended = new Promise<NodeJS.Signals | null>(resolve => child.on('exit', (_code, by) => resolve(by)));
  await Promise.race([ended, until(child).then(() => child.kill('SIGKILL'))]);
  return (await ended) === 'SIGKILL';
}
