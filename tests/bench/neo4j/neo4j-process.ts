import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fetchJars, freePort } from '../../support/neo4j/maven-server.ts';

/** A Neo4j server on loopback, in a process of its own. */
export interface Neo4jProcess {
  /** Address without a name or password, which it does not ask for. */
  readonly uri: string;
  stop(): Promise<void>;
}

/**
 * What a server may use, as much as helps on a machine of 24 GB: the cache holds a graph of a million editions whole, and takes
 * up only what is in it, so that another server has room beside.
 */
export const heapMB = 3072;
export const pageCacheMB = 9216;

/** @param home folder of the database, which is made where there is none, and kept */
export async function startNeo4j(home: string): Promise<Neo4jProcess> {
  mkdirSync(home, { recursive: true });
  const [port, jars] = [await freePort(), await fetchJars(process.env)];
  if (jars === undefined) throw new Error('expected the Maven artifacts of Neo4j, they could not be fetched');
  const program = ['-cp', `${jars}/*`, join(import.meta.dirname, 'BenchServer.java')];
  const child = spawn('java', [`-Xmx${heapMB}m`, ...program, home, String(port), String(pageCacheMB)], {
    stdio: ['pipe', 'pipe', 'ignore'],
  });
  process.once('exit', () => child.kill('SIGKILL'));
  await new Promise<void>((resolve, reject) => {
    child.stdout.on('data', chunk => String(chunk).includes('ready') && resolve());
    child.on('close', code => reject(new Error(`the Neo4j server ended with ${String(code)}`)));
  });
  return {
    uri: `neo4j://127.0.0.1:${port}`,
    stop: async () => {
      child.stdin.end();
      await once(child, 'close');
    },
  };
}
