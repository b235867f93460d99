import type { Plugin } from 'graphql-yoga';
import type { ApiContext } from '../context.ts';
import { type Refusal, refuse } from '../refusal.ts';

/**
 * A browser says from which page a request comes: one that may change something is taken from the pages of this server
 * and from programs, which say nothing. Beside the form of a request (request-form.ts) it is the second net.
 */
export function ownPages(): Plugin<ApiContext> {
  return {
    onRequest({ request, endResponse }) {
      const refusal = request.method === 'POST' ? refusalOf(request.headers) : undefined;
      if (refusal !== undefined) endResponse(refuse(refusal));
    },
  };
}

/** Fetch Metadata, https://www.w3.org/TR/fetch-metadata/; a browser of before says the origin alone. */
function refusalOf(headers: Headers): Refusal | undefined {
  const site = headers.get('sec-fetch-site');
  if (site !== null) return site === 'same-origin' || site === 'none' ? undefined : foreign('sec-fetch-site', site);
  const origin = headers.get('origin');
  return origin === null || hostOf(origin) === headers.get('host')?.toLowerCase()
    ? undefined
    : foreign('origin', origin);
}

function hostOf(origin: string): string | undefined {
  return URL.parse(origin)?.host;
}

function foreign(field: string, came: string): Refusal {
  const message = `expected a request of a program or of a page of this server, came one of another site (${came.slice(0, 60)})`;
  return { status: 403, code: 'NOT_ALLOWED', message, place: { field } };
}
