import neo4j from 'neo4j-driver';
import type { GraphStore } from '../graph-store.ts';
import { readAddress } from './address.ts';
import { Connection, writePatience } from './connection.ts';
import { migrate } from './migrate.ts';
import { Neo4jStore } from './neo4j-store.ts';

export interface Neo4jOptions {
  /** Make a store of a database that is empty. */
  readonly create?: boolean;
  /** Absent: the server asks for none. */
  readonly password?: string | undefined;
  /** Longest time a question may take, in milliseconds; 10,000 if absent. */
  readonly questionLimit?: number;
  /** Most connections at once; 16 if absent. */
  readonly connections?: number;
  /** So many records that pass a condition of a search are few: see SearchReader. */
  readonly gathered?: number;
}

/** How long a connection is waited for, whether it is to be made or to come free, in milliseconds. */
const connectionLimit = 5000;

/**
 * A store in a database of a Neo4j server, or of a cluster of them.
 * @param store address, as `neo4j://user@host:7687`; the user is "neo4j" where there is a password and no name
 * @throws INPUT_INVALID for an address that is none, STORE_UNREACHABLE, STORE_NOT_OURS, STORE_NEWER, STORE_READ_ONLY
 */
export async function openNeo4jStore(store: string, options: Neo4jOptions = {}): Promise<GraphStore> {
  const { server, user, database } = readAddress(store);
  const { password, questionLimit = 10_000, connections = 16 } = options;
  const isNamed = user !== undefined || password !== undefined;
  const driver = neo4j.driver(server, isNamed ? neo4j.auth.basic(user ?? 'neo4j', password ?? '') : undefined, {
    disableLosslessIntegers: true,
    maxConnectionPoolSize: connections,
    connectionAcquisitionTimeout: connectionLimit,
    connectionTimeout: connectionLimit,
    maxTransactionRetryTime: writePatience,
    fetchSize: 10_000,
    notificationFilter: { minimumSeverityLevel: 'OFF' },
    userAgent: 'platestemma',
  });
  const connection = new Connection(driver, server, database);
  try {
    await migrate(connection, server, options.create === true, questionLimit);
    return new Neo4jStore(connection, questionLimit, options.gathered);
  } catch (error) {
    await connection.close();
    throw error;
  }
}
