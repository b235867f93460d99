import { Neo4jError } from 'neo4j-driver';
import { describe, expect, test } from 'vitest';
import { PlatestemmaError } from '../../../src/errors.ts';
import { mayPass, neo4jError } from '../../../src/store/neo4j/neo4j-error.ts';

const diagnostic = { OPERATION: '', OPERATION_CODE: '0', CURRENT_SCHEMA: '/' };

function told(code: string, message = 'words of the server'): unknown {
  return neo4jError(new Neo4jError(message, code, '50N42', '', diagnostic), 'neo4j://db.example');
}

describe('errors of the server and the driver', () => {
  test.each([
    ['Neo.ClientError.Security.Unauthorized', 'STORE_UNREACHABLE', false],
    ['Neo.ClientError.Security.AuthenticationRateLimit', 'STORE_UNREACHABLE', false],
    ['Neo.ClientError.Security.Forbidden', 'STORE_READ_ONLY', false],
    ['Neo.ClientError.Database.DatabaseNotFound', 'STORE_UNREACHABLE', false],
    ['Neo.ClientError.Cluster.NotALeader', 'STORE_READ_ONLY', true],
    ['Neo.ClientError.General.ForbiddenOnReadOnlyDatabase', 'STORE_READ_ONLY', true],
    ['Neo.TransientError.Transaction.DeadlockDetected', 'STORE_BUSY', true],
    ['Neo.TransientError.Transaction.LockAcquisitionTimeout', 'STORE_BUSY', true],
    ['Neo.TransientError.General.DatabaseUnavailable', 'STORE_UNREACHABLE', true],
    ['Neo.ClientError.Transaction.TransactionTimedOutClientConfiguration', 'STORE_TIMEOUT', true],
    ['Neo.ClientError.Transaction.Terminated', 'STORE_TIMEOUT', true],
    ['Neo.TransientError.General.MemoryPoolOutOfMemoryError', 'STORE_BUSY', true],
    ['Neo.DatabaseError.Transaction.TransactionLogError', 'STORE_FULL', false],
    ['Neo.DatabaseError.Transaction.TransactionStartFailed', 'STORE_UNREACHABLE', false],
    ['ServiceUnavailable', 'STORE_UNREACHABLE', true],
    ['SessionExpired', 'STORE_UNREACHABLE', true],
  ])('%s is %s', (code, ours, retriable) => {
    expect(told(code)).toMatchObject({ code: ours, retriable });
  });

  test('a full disk and a pool without a free connection are told by their words', () => {
    expect(told('Neo.DatabaseError.Transaction.TransactionCommitFailed', 'No space left on device')).toMatchObject({
      code: 'STORE_FULL',
    });
    expect(
      told('N/A', 'Connection acquisition timed out in 5000 ms. Pool status: Active conn count = 16'),
    ).toMatchObject({
      code: 'STORE_BUSY',
      retriable: true,
    });
  });

  test('a server that goes while it is greeted cannot be reached, and may be asked again', () => {
    for (const message of [
      'Failed to connect to server. Please ensure that your database is listening on the correct host',
      'Connection was closed by server',
    ]) {
      expect(told('ProtocolError', message)).toMatchObject({ code: 'STORE_UNREACHABLE', retriable: true });
      expect(mayPass(new Neo4jError(message, 'ProtocolError', '', '', diagnostic))).toBe(true);
    }
    expect(mayPass(new Neo4jError('cannot be unpacked', 'ProtocolError', '', '', diagnostic))).toBe(false);
  });

  test('a part of the schema that another makes at the same moment is asked for again', () => {
    const code = 'Neo.ClientError.Schema.EquivalentSchemaRuleAlreadyExists';
    expect(mayPass(new Neo4jError('An equivalent index already exists', code, '', '', diagnostic))).toBe(true);
  });

  test('any other is a fault of ours, with the words of the server', () => {
    const error = told('Neo.ClientError.Statement.SyntaxError', "Invalid input 'MATHC'");
    expect(error).toMatchObject({ code: 'BROKEN_PROMISE', message: expect.stringContaining("Invalid input 'MATHC'") });
  });

  test('what is none of theirs passes', () => {
    const error = new PlatestemmaError('NOT_FOUND', 'x');
    expect(neo4jError(error, '')).toBe(error);
  });
});
