import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { jsonResponse } from './refusal.ts';

/** Milliseconds in which a store that is ready answers. Who watches a server waits no longer. */
const patience = 1_000;

/**
 * Answers whether the store can be reached and read: 200, else 503 with the code. The store is asked once at a time,
 * however many want to know.
 */
export function readiness(store: GraphStore): () => Promise<Response> {
  let asking: Promise<number> | undefined;
  return async () => {
    asking ??= store.lastChangeSet().finally(() => {
      asking = undefined;
    });
    try {
      return jsonResponse(200, { status: 'ready', changeSet: await within(asking) });
    } catch (error) {
      const code = error instanceof PlatestemmaError ? error.code : 'BROKEN_PROMISE';
      return jsonResponse(503, { status: 'not ready', code });
    }
  };
}

async function within<T>(asked: Promise<T>): Promise<T> {
  const { promise: late, reject } = Promise.withResolvers<never>();
  const message = `the store did not answer within ${patience} ms`;
  const timer = setTimeout(() => reject(new PlatestemmaError('STORE_TIMEOUT', message)), patience);
  try {
    return await Promise.race([asked, late]);
  } finally {
    clearTimeout(timer);
  }
}
