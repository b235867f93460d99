import type { ChildProcess } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePort, type ServerProgram, serverProgram, startProgram, untilReady } from './maven-server.ts';

/** A server that lives for seconds is ready in half the time where Java compiles quickly rather than well. */
const shortLived = ['-XX:TieredStopAtLevel=1', '-XX:+UseSerialGC'];

/** A server that is killed with SIGKILL and started again, on one port and, unless it is emptied, one home folder. */
export class KillableServer {
  readonly port: number;
  readonly password = randomUUID();
  readonly #program: ServerProgram;
  #home: string;
  #running: ChildProcess | undefined;

  private constructor(program: ServerProgram, port: number, home: string) {
    this.#program = program;
    this.port = port;
    this.#home = home;
  }

  /** One that has not been started. @throws where there is no Java or no Maven */
  static async find(env: NodeJS.ProcessEnv): Promise<KillableServer> {
    const program = await serverProgram(env);
    if ('reason' in program) throw new Error(`expected to start a Neo4j server: ${program.reason}`);
    return new KillableServer(program, await freePort(), await newHome());
  }

  /** Address for the command line. */
  get store(): string {
    return `neo4j://neo4j@127.0.0.1:${this.port}`;
  }

  /** Resolves when it answers, on what it held when it was killed. @throws if it is killed before */
  async start(): Promise<void> {
    const { password, port } = this;
    this.#running = startProgram(this.#program, { home: this.#home, port, password }, process.env, shortLived);
    await untilReady(this.#running);
  }

  /** Resolves when its process is gone, wherever it stood. */
  async kill(): Promise<void> {
    const server = this.#running;
    this.#running = undefined;
    if (server === undefined || server.exitCode !== null || server.signalCode !== null) return;
    const ended = once(server, 'exit');
    server.kill('SIGKILL');
    await ended;
  }

  /** Kills it, and throws away what it held: it is started next with nothing in it. */
  async empty(): Promise<void> {
    await this.remove();
    this.#home = await newHome();
  }

  /** Kills it for good. */
  async remove(): Promise<void> {
    await this.kill();
    await rm(this.#home, { recursive: true, force: true });
  }
}

function newHome(): Promise<string> {
  return mkdtemp(join(tmpdir(), 'platestemma-neo4j-'));
}
