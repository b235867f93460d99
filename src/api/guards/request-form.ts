import type { Plugin } from 'graphql-yoga';
import type { ApiContext } from '../context.ts';
import { type Refusal, refuse } from '../refusal.ts';
import { endpoint } from '../routes.ts';
import { readBody } from './read-body.ts';
import { paramsOfAddress, paramsOfBody } from './read-params.ts';

/**
 * Requests come by GET or as `application/json`, nothing else: a browser sends JSON to a foreign site only after asking
 * it, so that no page elsewhere can make a reader's browser act here (forms and plain text need no such leave).
 * @param limit bytes of a body
 */
export function requestForm(limit: number): Plugin<ApiContext> {
  return {
    onRequest({ request, url, endResponse }) {
      const refusal = url.pathname === endpoint ? refusalOf(request, limit) : undefined;
      if (refusal !== undefined) endResponse(refuse(refusal));
    },
    onRequestParse({ setRequestParser }) {
      setRequestParser(async request => {
        if (request.method !== 'POST') return paramsOfAddress(new URL(request.url, 'http://localhost'));
        const body = await readBody(request, limit);
        return body === undefined ? (refuse(tooLarge(limit)) as never) : paramsOfBody(body);
      });
    },
    onResponse({ response, setResponse }) {
      // The engine answers it by itself, without a body.
      if (response.status === 406 && response.body === null) setResponse(refuse(notAcceptable));
    },
  };
}

function refusalOf({ method, headers }: Request, limit: number): Refusal | undefined {
  if (method !== 'GET' && method !== 'POST') {
    const message = `expected GET or POST, came ${method.slice(0, 20)}`;
    return { status: 405, code: 'INPUT_INVALID', message, place: { field: 'method' }, headers: { allow: 'GET, POST' } };
  }
  if (method === 'GET') return undefined;
  const type = headers.get('content-type')?.split(';')[0]?.trim().toLowerCase();
  if (type !== 'application/json')
    return unsupported('content-type', `expected application/json, came ${type?.slice(0, 60) ?? 'no content type'}`);
  const encoding = headers.get('content-encoding') ?? 'identity';
  if (encoding.toLowerCase() !== 'identity')
    return unsupported('content-encoding', `expected a body that is not packed, came ${encoding.slice(0, 60)}`);
  return Number(headers.get('content-length') ?? 0) > limit ? tooLarge(limit) : undefined;
}

function unsupported(field: string, message: string): Refusal {
  return { status: 415, code: 'INPUT_INVALID', message, place: { field }, headers: { accept: 'application/json' } };
}

function tooLarge(limit: number): Refusal {
  const message = `expected a body of at most ${limit} bytes, came more`;
  return { status: 413, code: 'QUERY_TOO_COSTLY', message, place: { field: 'body' } };
}

const notAcceptable: Refusal = {
  status: 406,
  code: 'INPUT_INVALID',
  message: 'expected a reader of application/graphql-response+json or application/json in Accept, came none',
  place: { field: 'accept' },
};
