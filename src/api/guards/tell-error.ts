import { randomUUID } from 'node:crypto';
import { GraphQLError } from 'graphql';
import type { Plugin } from 'graphql-yoga';
import { type ErrorCode, PlatestemmaError } from '../../errors.ts';
import type { ApiContext } from '../context.ts';
import type { Log } from '../log.ts';

/**
 * What a client is told of an error: our own with code and place; a fault of the query as it is; anything unexpected
 * only by an id under which the log has it.
 */
export function errorTeller(log: Log): (error: unknown) => Error {
  return error => {
    const cause = original(error);
    if (cause instanceof PlatestemmaError && cause.code !== 'BROKEN_PROMISE') {
      const { code, place, retriable } = cause;
      const extensions = { code, ...(place === undefined ? {} : { place }), ...(retriable ? { retriable } : {}) };
      return told(cause.message, error, { ...extensions, ...httpOf(code) });
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

/**
 * Gives the codes of this program to what the GraphQL engine refuses by itself, and a request without data the status
 * 400. GraphQL over HTTP: an answer without data is 4xx or 5xx.
 */
export function codedErrors(): Plugin<ApiContext> {
  return {
    onExecutionResult({ result }) {
      if (result === undefined || Array.isArray(result) || !('errors' in result)) return;
      for (const error of result.errors ?? []) {
        const code = error.extensions['code'];
        if (code === undefined || String(code).startsWith('GRAPHQL_')) error.extensions['code'] = 'INPUT_INVALID';
        if (!('data' in result) && error.extensions['unexpected'] !== true)
          error.extensions['http'] ??= { status: 400, spec: true };
      }
    },
  };
}

function original(error: unknown): unknown {
  return error instanceof GraphQLError && error.originalError !== undefined ? original(error.originalError) : error;
}

function told(message: string, error: unknown, extensions: Readonly<Record<string, unknown>>): GraphQLError {
  if (!(error instanceof GraphQLError)) return new GraphQLError(message, { extensions });
  const { nodes, source, positions, path } = error;
  return new GraphQLError(message, { nodes, source, positions, path, extensions });
}

/** Status of an answer without data, where it is not 400. */
function httpOf(code: ErrorCode): { readonly http?: { readonly status: number; readonly spec: true } } {
  return code === 'STORE_TIMEOUT' ? { http: { status: 504, spec: true } } : {};
}

/** Where it happened. The message is left out unless it is the engine's own: others may quote texts of records. */
function traceOf(error: unknown): Readonly<Record<string, unknown>> {
  if (!(error instanceof Error)) return { name: typeof error };
  const at = (error.stack ?? '').split('\n').filter(line => line.startsWith('    at '));
  const ours = error instanceof TypeError || error instanceof ReferenceError || error instanceof PlatestemmaError;
  return { name: error.name, ...(ours ? { message: error.message } : {}), at: at.map(line => line.trim()) };
}
