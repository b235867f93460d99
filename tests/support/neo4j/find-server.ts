import { containerServer } from './container-server.ts';
import { mavenServer } from './maven-server.ts';
import type { StartedServer, TestServer } from './test-server.ts';

/** A server, or why there is none. */
export type Found = { readonly server: StartedServer } | { readonly reason: string };

/**
 * A Neo4j server for tests: the one that NEO4J_TEST_URI names (with NEO4J_TEST_USER and NEO4J_TEST_PASSWORD); else one in a
 * container, where Docker answers; else one from the Maven artifacts, where Java and Maven are there.
 */
export async function findServer(env: NodeJS.ProcessEnv): Promise<Found> {
  const named = namedServer(env);
  if (named !== undefined) return { server: { ...named, stop: async () => undefined } };
  const container = await containerServer();
  if ('server' in container) return container;
  const started = await mavenServer(env);
  if ('server' in started) return started;
  return { reason: `NEO4J_TEST_URI is not set; ${container.reason}; ${started.reason}` };
}

function namedServer(env: NodeJS.ProcessEnv): TestServer | undefined {
  const uri = env['NEO4J_TEST_URI'];
  if (uri === undefined) return undefined;
  return { uri, user: env['NEO4J_TEST_USER'] ?? 'neo4j', password: env['NEO4J_TEST_PASSWORD'] ?? '' };
}
