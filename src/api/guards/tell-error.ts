import { randomUUID } from 'node:crypto';
import { GraphQLError } from 'graphql';
import type { Plugin } from 'graphql-yoga';
import { type ErrorCode, errorCodes, PlatestemmaError } from '../../errors.ts';
import type { ApiContext } from '../context.ts';
import { type Log, seldom } from '../log.ts';
import { clipped, statusOf } from '../refusal.ts';

/**
 * What a client is told of an error: our own with code and place; a fault of the query as it is; anything unexpected
 * only by an id under which the log has it.
 */
export function errorTeller(log: Log): (error: unknown) => GraphQLError {
  const trouble = seldom(log);
  return error => {
    const cause = original(error);
    if (cause instanceof PlatestemmaError && cause.code !== 'BROKEN_PROMISE') {
      const { code, place, moved, retriable } = cause;
      if (troubles.has(code)) trouble({ level: 'warn', event: 'trouble', code });
      const extensions = {
        code,
        ...(place === undefined ? {} : { place }),
        ...(moved === undefined ? {} : { moved }),
        ...(retriable ? { retriable } : {}),
      };
      return told(cause.message, error, { ...extensions, ...httpOf(code, error) });
    }
    if (cause instanceof GraphQLError) return cause;
    const id = randomUUID();
    log({ level: 'error', event: 'unexpected-error', id, ...traceOf(cause) });
    return told(`Unexpected error; the log has it under ${id}`, error, {
      code: 'BROKEN_PROMISE',
      id,
      unexpected: true,
    });
  };
}

/** What the keeper of the server or the store may have to do something about. */
const troubles: ReadonlySet<ErrorCode> = new Set([
  'SERVER_BUSY',
  'STORE_FULL',
  'STORE_READ_ONLY',
  'STORE_NEWER',
  'STORE_NOT_OURS',
  'STORE_UNREACHABLE',
]);

/**
 * Gives the codes of this program, and a place, to what the GraphQL engine refuses by itself, and a request without data
 * its status. GraphQL over HTTP: an answer without data is 4xx or 5xx.
 */
export function codedErrors(): Plugin<ApiContext> {
  return {
    onExecutionResult({ result }) {
      if (result === undefined || Array.isArray(result) || !('errors' in result)) return;
      for (const error of result.errors ?? []) {
        const { extensions } = error;
        giveCode(error);
        if (!('data' in result) && extensions['unexpected'] !== true)
          extensions['http'] ??= { status: statusOf(extensions['code'] as ErrorCode), spec: true };
      }
    },
  };
}

function giveCode(error: GraphQLError): void {
  const { extensions, locations, path } = error;
  const cause = original(error);
  // What a scalar says of a value, which validation has wrapped.
  if (cause instanceof PlatestemmaError) error.message = cause.message;
  error.message = clipped(error.message);
  const given = cause instanceof PlatestemmaError ? cause.code : String(extensions['code']);
  if (locations === undefined && path === undefined && given !== 'BROKEN_PROMISE')
    extensions['place'] ??= { field: given === 'OPERATION_RESOLUTION_FAILURE' ? 'operationName' : 'variables' };
  extensions['code'] = Object.hasOwn(errorCodes, given) ? given : 'INPUT_INVALID';
}

function original(error: unknown): unknown {
  return error instanceof GraphQLError && error.originalError !== undefined ? original(error.originalError) : error;
}

function told(message: string, error: unknown, extensions: Readonly<Record<string, unknown>>): GraphQLError {
  if (!(error instanceof GraphQLError)) return new GraphQLError(message, { extensions });
  const { nodes, source, positions, path } = error;
  return new GraphQLError(message, { nodes, source, positions, path, extensions });
}

/** Status of what was refused before or instead of its execution. */
function httpOf(code: ErrorCode, error: unknown): Readonly<Record<string, unknown>> {
  if (error instanceof GraphQLError) return {};
  const headers = code === 'SERVER_BUSY' ? { headers: { 'retry-after': '1' } } : {};
  return { http: { status: statusOf(code), ...headers } };
}

/** Where it happened. The message is left out unless it is the engine's own: others may quote texts of records. */
function traceOf(error: unknown): Readonly<Record<string, unknown>> {
  if (!(error instanceof Error)) return { name: typeof error };
  const at = (error.stack ?? '').split('\n').filter(line => line.startsWith('    at '));
  const ours = error instanceof TypeError || error instanceof ReferenceError || error instanceof PlatestemmaError;
  return { name: error.name, ...(ours ? { message: error.message } : {}), at: at.map(line => line.trim()) };
}
