import { readFileSync } from 'node:fs';
import neo4j from 'neo4j-driver';
import { foldVersion } from '../../domain/text/fold.ts';
import { PlatestemmaError } from '../../errors.ts';
import type { Connection } from './connection.ts';
import { cypher } from './statements.ts';

/** Numbers and names are those of the other engine. */
const migrations = [
  '0001-graph.cypher',
  '0002-written.cypher',
  '0003-kinds.cypher',
  '0004-removed.cypher',
  '0005-dates.cypher',
  '0006-groups.cypher',
] as const;

/** Number of the newest migration. */
const schemaNumber = migrations.length;

const zero = neo4j.int(0);

/** What the node Store holds beside the schema before anything has been written. */
export const emptyState = {
  changeSet: zero,
  number: zero,
  texts: [zero, zero, zero, zero],
  tally: zero,
  tallies: [],
  tallyRows: [],
  tokens: [],
} as const;

/**
 * Brings the database to the newest schema. Each statement can be made again, and the number is written after the last: half
 * a migration is made whole by the next who opens the store.
 * @param create make a store of a database that is empty
 * @throws STORE_UNREACHABLE, STORE_NOT_OURS, STORE_NEWER, STORE_READ_ONLY
 */
export async function migrate(connection: Connection, server: string, create: boolean, limit: number): Promise<void> {
  const [schema, isEmpty] = (await connection.question(limit)<[number | null, boolean]>(cypher.schema))[0]!;
  if (schema === schemaNumber) return;
  if (schema !== null && schema > schemaNumber) {
    throw new PlatestemmaError(
      'STORE_NEWER',
      `the store at ${server} has schema ${schema}, this program knows up to ${schemaNumber}: use the newer program`,
    );
  }
  if (schema === null && !isEmpty) {
    throw new PlatestemmaError(
      'STORE_NOT_OURS',
      `the database at ${server} holds something, but no store of this program`,
    );
  }
  if (schema === null && !create) {
    throw new PlatestemmaError(
      'STORE_UNREACHABLE',
      `there is no store at ${server}, its database is empty: take something in first, or name another with --store`,
    );
  }
  for (const name of migrations.slice(schema ?? 0)) {
    // The server takes a change of the schema only by itself.
    for (const statement of statementsOf(name)) await connection.write(run => run(statement));
  }
  await connection.write(run => run(cypher.awaitIndexes));
  await connection.write(run =>
    run(cypher.putSchema, { schema: neo4j.int(schemaNumber), foldVersion: neo4j.int(foldVersion), state: emptyState }),
  );
}

function statementsOf(name: string): readonly string[] {
  const text = readFileSync(new URL(`../../../schema/neo4j/${name}`, import.meta.url), 'utf8');
  return text
    .replace(/^\/\/.*$/gm, '')
    .split(/;$/m)
    .map(statement => statement.trim())
    .filter(statement => statement !== '');
}
