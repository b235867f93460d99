import { PlatestemmaError } from '../../errors.ts';

/** Where a graph is kept by a server, and who asks. */
export interface ServerAddress {
  /** Scheme, host and port alone: may be shown. */
  readonly server: string;
  readonly user: string | undefined;
  /** Name of the database on the server; absent: the one that is home to the user. */
  readonly database: string | undefined;
}

const schemes = /^(?:neo4j|bolt)(?:\+s|\+ssc)?:\/\//;

/** Whether a store is named by the address of a server, and not by the path of a file. */
export function isServerAddress(store: string): boolean {
  return schemes.test(store);
}

/**
 * Reads `neo4j://user@host:7687/database`; bolt for one server without a look at its cluster, +s for an encrypted
 * connection, +ssc for one whose certificate is not checked.
 * @throws INPUT_INVALID if it is none, or has a password in it: it would be seen by whoever sees the command
 */
export function readAddress(store: string): ServerAddress {
  const url = isServerAddress(store) && URL.canParse(store) ? new URL(store) : undefined;
  if (url === undefined || url.hostname === '') {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      'the address of the store: expected "neo4j://user@host:7687", came something else',
    );
  }
  if (url.password !== '') {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      'the address of the store: expected no password in it, came one: set PLATESTEMMA_STORE_PASSWORD_FILE',
    );
  }
  return {
    server: `${url.protocol}//${url.host}`,
    user: url.username === '' ? undefined : decodeURIComponent(url.username),
    database: url.pathname.length > 1 ? decodeURIComponent(url.pathname.slice(1)) : undefined,
  };
}
