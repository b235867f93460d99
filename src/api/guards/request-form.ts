import type { Plugin } from 'graphql-yoga';
import type { ApiContext } from '../context.ts';

/**
 * Requests come by GET or as `application/json`, nothing else: a browser sends JSON to a foreign site only after asking
 * it, so that no page elsewhere can make a reader's browser act here (forms and plain text need no such leave).
 */
export function requestForm(): Plugin<ApiContext> {
  return {
    onRequestParse({ request, setRequestParser, fetchAPI }) {
      if (request.method !== 'POST') return;
      const type = request.headers.get('content-type')?.split(';')[0]?.trim().toLowerCase();
      if (type === 'application/json') return;
      const message = `expected application/json, came ${type ?? 'no content type'}`;
      const answer = JSON.stringify({ errors: [{ message, extensions: { code: 'INPUT_INVALID' } }] });
      const headers = { 'content-type': 'application/json; charset=utf-8', accept: 'application/json' };
      setRequestParser(() => new fetchAPI.Response(answer, { status: 415, headers }));
    },
  };
}
