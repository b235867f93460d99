import type { Plugin } from 'graphql-yoga';
import { PlatestemmaError } from '../../errors.ts';
import type { ApiContext } from '../context.ts';

/** Ends a request that takes longer: no further field is worked, and the answer is STORE_TIMEOUT. The store has limits of its own. */
export function timeLimit(milliseconds: number): Plugin<ApiContext> {
  return {
    onExecute({ args }) {
      const over = new AbortController();
      const timer = setTimeout(() => {
        over.abort(
          new PlatestemmaError('STORE_TIMEOUT', `the request took longer than ${milliseconds} ms and was ended`),
        );
      }, milliseconds);
      timer.unref();
      Object.assign(args, { signal: over.signal });
      return { onExecuteDone: () => clearTimeout(timer) };
    },
  };
}
