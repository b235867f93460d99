import { execFile } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { promisify } from 'node:util';
import type { Found } from './find-server.ts';
import { testedVersion } from './test-server.ts';

/** A server in a container, where Docker answers. It goes with the run of tests, also when that is killed. */
export async function containerServer(): Promise<Found> {
  try {
    await promisify(execFile)('docker', ['info'], { timeout: 10_000 });
  } catch {
    return { reason: 'Docker does not answer' };
  }
  const { GenericContainer, Wait } = await import('testcontainers');
  const password = randomUUID();
  const container = await new GenericContainer(`neo4j:${testedVersion}-community`)
    .withEnvironment({ NEO4J_AUTH: `neo4j/${password}` })
    .withExposedPorts(7687)
    .withWaitStrategy(Wait.forLogMessage('Started.'))
    .withStartupTimeout(180_000)
    .start();
  const uri = `bolt://${container.getHost()}:${container.getMappedPort(7687)}`;
  const stop = async () => {
    await container.stop();
  };
  return { server: { uri, user: 'neo4j', password, stop } };
}
