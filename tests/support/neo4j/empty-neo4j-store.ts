import neo4j, { type Driver } from 'neo4j-driver';
import { afterAll, inject } from 'vitest';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { emptyState } from '../../../src/store/neo4j/migrate.ts';
import { type Neo4jOptions, openNeo4jStore } from '../../../src/store/neo4j/open.ts';
import type { TestServer } from './test-server.ts';

let driver: Driver | undefined;

/** The server of this run: see describe-with-neo4j.ts. */
export function neo4jServer(): TestServer {
  const found = inject('neo4j');
  if ('reason' in found) throw new Error(found.reason);
  return found.server;
}

/** A new and empty store. There is one database: a file of tests has one such store at a time. */
export async function emptyNeo4jStore(options: Neo4jOptions = {}): Promise<GraphStore> {
  await emptyDatabase();
  return openStore({ create: true, ...options });
}

/** The store that is there. */
export function openStore(options: Neo4jOptions = {}): Promise<GraphStore> {
  const { uri, user, password } = neo4jServer();
  return openNeo4jStore(uri.replace('://', `://${user}@`), { password, ...options });
}

/** Runs a statement beside the store. */
export async function inDatabase(text: string, values: Readonly<Record<string, unknown>> = {}): Promise<unknown[][]> {
  const { uri, user, password } = neo4jServer();
  driver ??= neo4j.driver(uri, neo4j.auth.basic(user, password), { disableLosslessIntegers: true });
  const session = driver.session();
  const { records } = await session.run(text, values);
  await session.close();
  return records.map(record => [...record.values()]);
}

/** Leaves a database as it is before the first store is made in it. */
export async function dropSchema(): Promise<void> {
  await inDatabase('MATCH (n) CALL (n) { DETACH DELETE n } IN TRANSACTIONS OF 10000 ROWS');
  const constraints = (await inDatabase('SHOW CONSTRAINTS YIELD name')).flat();
  for (const name of constraints) await inDatabase(`DROP CONSTRAINT ${name}`);
  const indexes = (await inDatabase("SHOW INDEXES YIELD name, type WHERE type <> 'LOOKUP' RETURN name")).flat();
  for (const name of indexes) await inDatabase(`DROP INDEX ${name}`);
}

/** Everything goes but the schema and the node that says so: the next store need not make it again. */
async function emptyDatabase(): Promise<void> {
  await inDatabase('MATCH (n) WHERE NOT n:Store CALL (n) { DETACH DELETE n } IN TRANSACTIONS OF 10000 ROWS');
  await inDatabase('MATCH (s:Store) SET s += $state', { state: emptyState });
}

afterAll(async () => {
  await driver?.close();
});
