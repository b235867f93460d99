import type { Plugin } from 'graphql-yoga';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { ApiContext } from './context.ts';
import { type GraphiqlPage, graphiqlPage } from './graphiql.ts';

export const endpoint = '/graphql';

/** What is answered beside GraphQL: whether the store can be reached, the page for writing queries, and nothing else. */
export function routes(store: GraphStore): Plugin<ApiContext> {
  let page: Promise<GraphiqlPage> | undefined;
  return {
    async onRequest({ request, url, endResponse }) {
      if (url.pathname === '/ready') return endResponse(await ready(store));
      if (url.pathname !== endpoint) return endResponse(notFound(url.pathname));
      if (!wantsPage(request, url)) return;
      page ??= graphiqlPage();
      const { body, contentSecurityPolicy } = await page;
      const headers = { 'content-type': 'text/html; charset=utf-8', 'content-security-policy': contentSecurityPolicy };
      endResponse(new Response(body, { headers }));
    },
    onResponse({ response }) {
      response.headers.set('x-content-type-options', 'nosniff');
      response.headers.set('referrer-policy', 'no-referrer');
    },
  };
}

/** The store can be reached and read: 200, else 503 with the code. */
async function ready(store: GraphStore): Promise<Response> {
  try {
    return json(200, { status: 'ready', changeSet: await store.lastChangeSet() });
  } catch (error) {
    const code = error instanceof PlatestemmaError ? error.code : 'BROKEN_PROMISE';
    return json(503, { status: 'not ready', code });
  }
}

function notFound(pathname: string): Response {
  const message = `expected ${endpoint}, /draw/…, /health or /ready, came ${pathname.slice(0, 60)}`;
  return json(404, { errors: [{ message, extensions: { code: 'NOT_FOUND' } }] });
}

/** A browser that opens the address, not a program that asks a query by GET. */
function wantsPage(request: Request, url: URL): boolean {
  const wantsHtml = request.headers.get('accept')?.includes('text/html') ?? false;
  return request.method === 'GET' && wantsHtml && !url.searchParams.has('query');
}

function json(status: number, body: unknown): Response {
  const headers = { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store' };
  return new Response(JSON.stringify(body), { status, headers });
}
