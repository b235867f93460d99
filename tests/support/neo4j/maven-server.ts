import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, rename, rm } from 'node:fs/promises';
import { createServer } from 'node:net';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { promisify } from 'node:util';
import type { Found } from './find-server.ts';
import { testedVersion } from './test-server.ts';

const run = promisify(execFile);
const folder = import.meta.dirname;

/** What it takes to run the program beside this file. */
export interface ServerProgram {
  /** Name or path of Java. */
  readonly java: string;
  /** Folder of the artifacts. */
  readonly jars: string;
}

/** Where a server keeps what it holds, and how it is spoken to. */
export interface ServerHome {
  readonly home: string;
  readonly port: number;
  readonly password: string;
}

/** A server of the Maven artifacts, run by the program beside this file, on loopback, in a home folder that goes with it. */
export async function mavenServer(env: NodeJS.ProcessEnv): Promise<Found> {
  const program = await serverProgram(env);
  if ('reason' in program) return program;
  const home = await mkdtemp(join(tmpdir(), 'platestemma-neo4j-'));
  const [port, password] = [await freePort(), randomUUID()];
  const server = startProgram(program, { home, port, password }, env);
  await untilReady(server);
  // It ends when this process does, and its input with it.
  server.unref();
  const stop = async () => {
    server.ref();
    const ended = once(server, 'exit');
    server.stdin.end();
    await ended;
    await rm(home, { recursive: true, force: true });
  };
  return { server: { uri: `neo4j://127.0.0.1:${port}`, user: 'neo4j', password, stop } };
}

/** The program, or why it cannot be run. */
export async function serverProgram(env: NodeJS.ProcessEnv): Promise<ServerProgram | { readonly reason: string }> {
  const java = env['JAVA_HOME'] === undefined ? 'java' : join(env['JAVA_HOME'], 'bin', 'java');
  if (!(await isNewEnough(java))) return { reason: 'there is no Java 17 or newer' };
  const jars = await fetchJars(env);
  return jars === undefined ? { reason: 'the Maven artifacts could not be fetched' } : { java, jars };
}

/**
 * Starts a server, which is of use when `untilReady` resolves, and which ends with this process.
 * @param options of Java
 */
export function startProgram(
  { java, jars }: ServerProgram,
  { home, port, password }: ServerHome,
  env: NodeJS.ProcessEnv,
  options: readonly string[] = [],
) {
  return spawn(java, ['-Xmx1g', ...options, '-cp', `${jars}/*`, join(folder, 'TestServer.java'), home, String(port)], {
    env: { ...env, TEST_PASSWORD: password },
    stdio: ['pipe', 'pipe', 'inherit'],
  });
}

async function isNewEnough(java: string): Promise<boolean> {
  try {
    // It answers on standard error: openjdk version "17.0.15" 2025-04-15
    const { stderr } = await run(java, ['-version']);
    return Number(/version "(\d+)/.exec(stderr)?.[1]) >= 17;
  } catch {
    return false;
  }
}

/** Folder of the artifacts, fetched once into the cache of the user; undefined if they cannot be had. */
export async function fetchJars(env: NodeJS.ProcessEnv): Promise<string | undefined> {
  const cache = join(env['XDG_CACHE_HOME'] ?? join(homedir(), '.cache'), 'platestemma', 'neo4j');
  const jars = join(cache, testedVersion);
  if (existsSync(jars)) return jars;
  await mkdir(cache, { recursive: true });
  // Half a folder is never taken for a whole one, also where two runs fetch at once.
  const fetched = await mkdtemp(join(cache, 'fetching-'));
  try {
    const goal = ['dependency:copy-dependencies', `-Dneo4j.version=${testedVersion}`, `-DoutputDirectory=${fetched}`];
    await run('mvn', ['-q', '-B', '-f', join(folder, 'pom.xml'), ...goal]);
    await rename(fetched, jars);
  } catch {
    await rm(fetched, { recursive: true, force: true });
  }
  return existsSync(jars) ? jars : undefined;
}

export async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1');
  await once(probe, 'listening');
  const address = probe.address();
  probe.close();
  await once(probe, 'close');
  return (address as { readonly port: number }).port;
}

/** @throws if it ends before it is ready */
export async function untilReady(server: ChildProcess): Promise<void> {
  const lines: string[] = [];
  for await (const line of createInterface({ input: server.stdout! })) {
    if (line === 'ready') return;
    lines.push(line);
  }
  throw new Error(`the Neo4j server ended before it was ready:\n${lines.join('\n')}`);
}
