import type { Plugin } from 'graphql-yoga';
import { type ErrorCode, PlatestemmaError } from '../errors.ts';
import { svgToPng } from '../output/draw/svg-to-png.ts';
import type { DrawAsked } from '../questions/draw-asked.ts';
import type { Questions } from '../questions/questions.ts';
import type { Towards } from '../store/graph-store.ts';
import type { ApiContext } from './context.ts';
import { errorTeller } from './guards/tell-error.ts';
import type { Log } from './log.ts';

const address = /^\/draw\/(lineage|descent)\/([^/]+)\.(svg|png)$/;

/**
 * Drawings: `/draw/lineage/<id>.svg` (with `towards` and `depth` as the question has them) and `/draw/descent/<id>.svg`,
 * and the same as `.png`.
 */
export function drawings(questions: Questions, log: Log): Plugin<ApiContext> {
  const tell = errorTeller(log);
  return {
    async onRequest({ request, url, endResponse }) {
      const [, what, id, form] = address.exec(url.pathname) ?? [];
      if (what === undefined || id === undefined) return;
      if (request.method !== 'GET' && request.method !== 'HEAD') return endResponse(notAllowed(request.method));
      try {
        const svg = await questions.draw(askedBy(what, id, url.searchParams));
        endResponse(form === 'svg' ? picture(svg, 'image/svg+xml; charset=utf-8') : await png(svg));
      } catch (error) {
        endResponse(refusal(tell(error)));
      }
    },
  };
}

function askedBy(what: string, of: string, given: URLSearchParams): DrawAsked {
  if (what === 'descent') return { what: 'DESCENT', of };
  const depth = given.get('depth');
  return {
    what: 'LINEAGE',
    of,
    towards: towardsOf(given.get('towards') ?? 'both'),
    ...(depth === null ? {} : { depth: depth === '' ? Number.NaN : Number(depth) }),
  };
}

function towardsOf(word: string): Towards {
  const found = (['SOURCES', 'COPIES', 'BOTH'] as const).find(each => each === word.toUpperCase());
  if (found !== undefined) return found;
  const message = `towards: expected sources, copies or both, came "${word.slice(0, 60)}"`;
  throw new PlatestemmaError('INPUT_INVALID', message, { place: { field: 'towards' } });
}

async function png(svg: string): Promise<Response> {
  return picture(await svgToPng(svg), 'image/png');
}

/** A picture that may change with the next claim, and that runs and fetches nothing even where it is opened by itself. */
function picture(body: string | Uint8Array, type: string): Response {
  const headers = { 'content-type': type, 'cache-control': 'no-cache', 'content-security-policy': policy };
  return new Response(body as BodyInit, { headers });
}

const policy = "default-src 'none'; sandbox; frame-ancestors 'self'";

function refusal(error: Error & { readonly extensions?: Readonly<Record<string, unknown>> }): Response {
  const { code, place, id } = error.extensions ?? {};
  const extensions = { code, ...(place === undefined ? {} : { place }), ...(id === undefined ? {} : { id }) };
  return json(statusOf(code as ErrorCode), { errors: [{ message: error.message, extensions }] });
}

function statusOf(code: ErrorCode): number {
  if (code === 'NOT_FOUND') return 404;
  if (code === 'BROKEN_PROMISE') return 500;
  if (code === 'STORE_TIMEOUT') return 504;
  return code.startsWith('STORE_') ? 503 : 400;
}

function notAllowed(method: string): Response {
  const message = `expected GET, came ${method.slice(0, 20)}`;
  return json(405, { errors: [{ message, extensions: { code: 'INPUT_INVALID' } }] }, { allow: 'GET, HEAD' });
}

function json(status: number, body: unknown, more: Readonly<Record<string, string>> = {}): Response {
  const headers = { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store', ...more };
  return new Response(JSON.stringify(body), { status, headers });
}
