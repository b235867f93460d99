import type { Plugin } from 'graphql-yoga';
import { PlatestemmaError } from '../../errors.ts';
import type { ApiContext } from '../context.ts';

/**
 * Ends a request that takes longer, and one whose asker has gone: no further field is worked, what is worked is put
 * down, and the answer is STORE_TIMEOUT. The store has limits of its own.
 */
export function timeLimit(milliseconds: number): Plugin<ApiContext> {
  return {
    onExecute({ args, context: { ending, request } }) {
      const end = (why: string) => ending.abort(new PlatestemmaError('STORE_TIMEOUT', why));
      const timer = setTimeout(
        () => end(`the request took longer than ${milliseconds} ms and was ended`),
        milliseconds,
      );
      timer.unref();
      const gone = () => end('nobody waits for the answer any more');
      request.signal.addEventListener('abort', gone, { once: true });
      Object.assign(args, { signal: ending.signal });
      return {
        onExecuteDone: () => {
          clearTimeout(timer);
          request.signal.removeEventListener('abort', gone);
        },
      };
    },
  };
}
