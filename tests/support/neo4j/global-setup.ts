import type { TestProject } from 'vitest/node';
import { findServer } from './find-server.ts';
import type { TestServer } from './test-server.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** The server of this run, or why there is none. */
    readonly neo4j: { readonly server: TestServer } | { readonly reason: string };
  }
}

/** Finds a server before the first test that asks for one. @returns stops what was started */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const found = await findServer(process.env);
  if ('reason' in found) {
    if (process.env['CI'] === 'true') throw new Error(`CI is true, and there is no Neo4j server: ${found.reason}`);
    project.vitest.logger.warn(`Tests with Neo4j are skipped: ${found.reason}`);
    project.provide('neo4j', found);
    return async () => undefined;
  }
  const { uri, user, password, stop } = found.server;
  project.provide('neo4j', { server: { uri, user, password } });
  return stop;
}
