import type { Plugin } from 'graphql-yoga';
import type { GraphStore } from '../store/graph-store.ts';
import type { ApiContext } from './context.ts';
import { type GraphiqlPage, graphiqlPage } from './graphiql.ts';
import { readiness } from './readiness.ts';
import { refuse } from './refusal.ts';

export const endpoint = '/graphql';

/** What is answered beside GraphQL: whether the store can be reached, the page for writing queries, and nothing else. */
export function routes(store: GraphStore): Plugin<ApiContext> {
  const ready = readiness(store);
  let page: Promise<GraphiqlPage> | undefined;
  return {
    async onRequest({ request, url, endResponse, fetchAPI }) {
      if (url.pathname === '/ready') return endResponse(await ready());
      if (url.pathname !== endpoint) return endResponse(notFound(url.pathname));
      if (!wantsPage(request, url)) return;
      page ??= graphiqlPage();
      const { body, contentSecurityPolicy } = await page;
      const headers = { 'content-type': 'text/html; charset=utf-8', 'content-security-policy': contentSecurityPolicy };
      // That of the engine takes the bytes as they are; Node's own makes a copy.
      endResponse(new fetchAPI.Response(body, { headers }));
    },
    onResponse({ response }) {
      response.headers.set('x-content-type-options', 'nosniff');
      response.headers.set('referrer-policy', 'no-referrer');
    },
  };
}

function notFound(pathname: string): Response {
  const message = `expected ${endpoint}, /draw/…, /health or /ready, came ${pathname.slice(0, 60)}`;
  return refuse({ status: 404, code: 'NOT_FOUND', message, place: { field: 'path' } });
}

/** A browser that opens the address, not a program that asks a query by GET. */
function wantsPage(request: Request, url: URL): boolean {
  const wantsHtml = request.headers.get('accept')?.includes('text/html') ?? false;
  return request.method === 'GET' && wantsHtml && !url.searchParams.has('query');
}
