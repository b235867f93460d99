import neo4j, { Neo4jError } from 'neo4j-driver';
import { type ErrorCode, PlatestemmaError } from '../../errors.ts';

type Told = readonly [code: ErrorCode, message: string, retriable: boolean];

const refused: Told = ['STORE_UNREACHABLE', 'the server does not take the name or password it was given', false];
const gone: Told = ['STORE_UNREACHABLE', 'the server cannot be reached', true];
/** A member of a cluster that leads no more: another does, or will. */
const readOnly: Told = ['STORE_READ_ONLY', 'the server takes no changes', true];
const full: Told = ['STORE_FULL', 'the disk of the server is full; nothing of this change was written', false];
const noMemory: Told = ['STORE_BUSY', 'the server had no memory left for what it was asked', true];
const stopped: Told = ['STORE_UNREACHABLE', 'the server has stopped its database, and says why in its log', false];
const tooLong: Told = ['STORE_TIMEOUT', 'the question took longer than its limit and was ended', true];

/**
 * What codes of the server and the driver mean to a user; the longest beginning decides.
 * https://neo4j.com/docs/status-codes/5/errors/all-errors/
 */
const meanings: readonly (readonly [begins: string, told: Told])[] = [
  ['Neo.ClientError.Security', refused],
  ['Neo.ClientError.Security.Forbidden', ['STORE_READ_ONLY', 'the server lets this user make no changes', false]],
  ['Neo.ClientError.Database.DatabaseNotFound', ['STORE_UNREACHABLE', 'the server has no such database', false]],
  ['Neo.ClientError.Cluster.NotALeader', readOnly],
  ['Neo.ClientError.General.ForbiddenOnReadOnlyDatabase', readOnly],
  ['Neo.ClientError.General.WriteOnReadOnlyAccessDatabase', readOnly],
  ['Neo.ClientError.Transaction.TransactionTimedOut', tooLong],
  ['Neo.ClientError.Transaction.Terminated', tooLong],
  ['Neo.TransientError.Transaction.Terminated', tooLong],
  ['Neo.ClientError.Transaction.LockClientStopped', tooLong],
  ['Neo.TransientError', ['STORE_BUSY', 'the server was asked again and again, and was busy each time', true]],
  ['Neo.TransientError.General.DatabaseUnavailable', gone],
  ['Neo.TransientError.Database.DatabaseUnavailable', gone],
  ['Neo.TransientError.General.MemoryPoolOutOfMemoryError', noMemory],
  ['Neo.TransientError.General.TransactionOutOfMemoryError', noMemory],
  // The log is what a change is written to first; a full disk is told in no other words. Then the server stops the database.
  ['Neo.DatabaseError.Transaction.TransactionLogError', full],
  ['Neo.DatabaseError.Transaction.TransactionStartFailed', stopped],
  ['ServiceUnavailable', gone],
  ['SessionExpired', gone],
];

/** The server says it in the words of its system, or of Java. */
const fullDisk = /no space left on device|disk is full|not enough space|out of disk/i;

/** The server has no code for what is longer than its indexes take. */
const tooLarge = /too large to index/i;

/** The driver has no code for a pool of connections that are all taken. */
const poolTaken = /connection acquisition timed out/i;

/** A server that goes while it is greeted looks to the driver like one that speaks another language. */
const goneAtGreeting = /^(?:failed to connect to server|connection was closed by server)/i;

/** A part of the schema that another process made between the server's look for it and its making: it is found next time. */
const madeMeanwhile = 'Neo.ClientError.Schema.EquivalentSchemaRuleAlreadyExists';

/** Whether the same may succeed when it is asked again. */
export function mayPass(error: unknown): boolean {
  if (error instanceof Neo4jError && error.code === madeMeanwhile) return true;
  return neo4j.isRetryableError(error) || isGoneAtGreeting(error);
}

function isGoneAtGreeting(error: unknown): boolean {
  return error instanceof Neo4jError && error.code === 'ProtocolError' && goneAtGreeting.test(error.message);
}

/** An error of the driver as one of ours; other errors pass as they are. @param server address without a name or password */
export function neo4jError(error: unknown, server: string): unknown {
  if (!(error instanceof Neo4jError)) return error;
  if (isGoneAtGreeting(error)) return told(gone);
  if (fullDisk.test(error.message)) return told(full);
  if (tooLarge.test(error.message))
    return told([
      'INPUT_INVALID',
      'an id, a key or a notation is longer than the 8,000 bytes that the server finds it by',
      false,
    ]);
  if (poolTaken.test(error.message))
    return told(['STORE_BUSY', 'all connections to the server are taken; one was waited for and none came free', true]);
  const fitting = meanings.filter(([begins]) => error.code.startsWith(begins));
  const [, meaning] = fitting.reduce<(typeof fitting)[number] | readonly []>(
    (best, each) => (each[0].length > (best[0]?.length ?? -1) ? each : best),
    [],
  );
  if (meaning !== undefined) return told(meaning);
  return new PlatestemmaError('BROKEN_PROMISE', `the store failed: ${error.code}: ${error.message}`, { cause: error });

  function told([code, message, retriable]: Told): PlatestemmaError {
    return new PlatestemmaError(code, `${message} (${server})`, { cause: error, retriable });
  }
}

export function timeout(): PlatestemmaError {
  const [code, message, retriable] = tooLong;
  return new PlatestemmaError(code, message, { retriable });
}

/** Of a change that waited for others until it was ended. */
export function busy(server: string, cause: unknown): PlatestemmaError {
  const message = `another process is writing to the store; it was waited for and did not finish (${server})`;
  return new PlatestemmaError('STORE_BUSY', message, { cause, retriable: true });
}

export function closedError(): PlatestemmaError {
  return new PlatestemmaError('STORE_UNREACHABLE', 'the store has been closed');
}
