import { spawn } from 'node:child_process';
import { setTimeout } from 'node:timers/promises';

const main = new URL('../../src/main.ts', import.meta.url).pathname;

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The program as its users run it, in processes of its own. */
export class Program {
  readonly #env: NodeJS.ProcessEnv;
  /** How often commands ended with each code of trouble with the store, and were started again. */
  readonly startedAgain: Record<string, number> = {};

  constructor(env: NodeJS.ProcessEnv) {
    this.#env = env;
  }

  /** @throws if it does not end well */
  async run(args: readonly string[]): Promise<string> {
    const { code, out, err } = await this.#ended(args);
    if (code !== 0) throw new Error(`${args.join(' ')} ended with ${code}: ${err}`);
    return out;
  }

  /** Runs a command to its end: one that ends with trouble with the store is started again, as its user would. */
  async runToTheEnd(args: readonly string[], most = 200): Promise<void> {
    for (let times = 0; times < most; times++) {
      const { code, err } = await this.#ended(args);
      if (code === 0) return;
      const told = /^(STORE_\w+): /m.exec(err)?.[1];
      if (code !== 3 || told === undefined) throw new Error(`${args.join(' ')} ended with ${code}: ${err}`);
      this.startedAgain[told] = (this.startedAgain[told] ?? 0) + 1;
      await setTimeout(200);
    }
    throw new Error(`${args.join(' ')} was started ${most} times and came to no end`);
  }

  /** Serves a store until `stop`. */
  async serve(store: string, more: NodeJS.ProcessEnv = {}) {
    const child = spawn(process.execPath, [main, 'serve', '--store', store, '--port', '0'], {
      env: { ...this.#env, ...more },
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const ended = new Promise<void>(resolve => child.on('close', () => resolve()));
    const url = await new Promise<string>((resolve, reject) => {
      child.stdout.on('data', chunk => {
        const address = /at (http:\S+)/.exec(String(chunk))?.[1];
        if (address !== undefined) resolve(address);
      });
      child.on('close', code => reject(new Error(`serve ended with ${code} before it served`)));
    });
    const stop = async () => {
      child.kill('SIGTERM');
      await ended;
    };
    return { url, isRunning: () => child.exitCode === null && child.signalCode === null, stop };
  }

  #ended(args: readonly string[]): Promise<Ended> {
    const child = spawn(process.execPath, [main, ...args], { env: this.#env, stdio: ['ignore', 'pipe', 'pipe'] });
    let [out, err] = ['', ''];
    child.stdout.on('data', chunk => {
      out += String(chunk);
    });
    child.stderr.on('data', chunk => {
      err += String(chunk);
    });
    return new Promise(resolve => child.on('close', code => resolve({ code, out, err })));
  }
}
