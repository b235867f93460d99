import neo4j, { type Driver } from 'neo4j-driver';
import { historyOf } from '../../../src/questions/history-of.ts';
import { transferInto } from '../../../src/questions/transfer.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { emptyState } from '../../../src/store/neo4j/migrate.ts';
import { Neo4jStore } from '../../../src/store/neo4j/neo4j-store.ts';
import { openNeo4jStore } from '../../../src/store/neo4j/open.ts';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { percentile } from '../percentile.ts';
import { type Statement, WatchedConnection } from './watched-connection.ts';

/** The same rows written by a transfer, and by UNWIND statements alone. */
export interface WriteRates {
  readonly rows: number;
  readonly claims: number;
  readonly changeSets: number;
  /** Rows a second, the middle one of the rounds. */
  readonly transfer: number;
  readonly bare: number;
}

/** Rounds that count; there is one before them. */
const rounds = 3;

/**
 * Transfers a store into an empty one, and writes the same rows bare, by turns. Bare means: the nodes, links and steps that the
 * transfer makes, with all their properties, ready in memory, in the same transactions, under the same indexes; without
 * reading, deriving, checking, numbering, counting and keeping the history.
 * @param uri of a database that may be emptied
 */
export async function writeRates(file: string, uri: string): Promise<WriteRates> {
  const driver = neo4j.driver(uri, undefined, { disableLosslessIntegers: true });
  await (await openNeo4jStore(uri, { create: true })).close();
  const watched = new WatchedConnection(uri);
  await transfer(file, new Neo4jStore(watched, 60_000));
  const changes = watched.changes.map(bareOf).filter(statements => statements.length > 0);
  const [rows, claims] = [countRows(changes, 'CREATE (n:Row:'), countRows(changes, 'CREATE (n:Row:Claim:')];
  const taken: Record<'transfer' | 'bare', number[]> = { transfer: [], bare: [] };
  for (let round = 0; round <= rounds; round++) {
    for (const side of round % 2 === 0 ? (['bare', 'transfer'] as const) : (['transfer', 'bare'] as const)) {
      await empty(driver);
      const took = side === 'bare' ? await writeBare(driver, changes) : await transfer(file, await openNeo4jStore(uri));
      if (round > 0) taken[side].push(took);
    }
  }
  await driver.close();
  const rate = (seconds: readonly number[]) => Math.round(rows / percentile(seconds, 0.5));
  return { rows, claims, changeSets: changes.length, transfer: rate(taken.transfer), bare: rate(taken.bare) };
}

/** Seconds that it took. The store is closed. */
async function transfer(file: string, to: GraphStore): Promise<number> {
  const from = await openSqliteStore(file, { questionLimit: 60_000 });
  const begun = performance.now();
  await transferInto(to, historyOf(from));
  const seconds = (performance.now() - begun) / 1000;
  await Promise.all([from.close(), to.close()]);
  return seconds;
}

async function writeBare(driver: Driver, changes: readonly (readonly Statement[])[]): Promise<number> {
  const session = driver.session();
  const begun = performance.now();
  for (const statements of changes) {
    await session.executeWrite(transaction =>
      Promise.all(statements.map(({ text, values }) => transaction.run(text, { ...values }))),
    );
  }
  const seconds = (performance.now() - begun) / 1000;
  await session.close();
  return seconds;
}

/** Everything goes but the schema and the node that says so. */
async function empty(driver: Driver): Promise<void> {
  const session = driver.session();
  await session.run('MATCH (n) WHERE NOT n:Store CALL (n) { DETACH DELETE n } IN TRANSACTIONS OF 10000 ROWS');
  await session.run('MATCH (s:Store) SET s += $state', { state: emptyState });
  await session.close();
}

/** Of a change, what makes nodes and relationships. */
function bareOf(change: readonly Statement[]): readonly Statement[] {
  return change.filter(({ text }) => /^\s*UNWIND \$(?:rows|links|steps) /.test(text) && text.includes('CREATE'));
}

function countRows(changes: readonly (readonly Statement[])[], making: string): number {
  return changes
    .flat()
    .filter(({ text }) => text.includes(making))
    .reduce((sum, { values }) => sum + (values['rows'] as readonly unknown[]).length, 0);
}
