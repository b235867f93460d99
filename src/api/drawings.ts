import type { GraphQLError } from 'graphql';
import type { Plugin } from 'graphql-yoga';
import { type ErrorCode, PlatestemmaError, type SourcePlace } from '../errors.ts';
import { svgToPng } from '../output/draw/svg-to-png.ts';
import type { DrawAsked } from '../questions/draw-asked.ts';
import type { Questions } from '../questions/questions.ts';
import { asOfText } from '../questions/what-if/as-of-text.ts';
import { isGiven, type WhatIf } from '../questions/what-if/what-if.ts';
import type { Towards } from '../store/graph-store.ts';
import type { ApiContext } from './context.ts';
import { errorTeller } from './guards/tell-error.ts';
import type { Turns } from './guards/turns.ts';
import type { Log } from './log.ts';
import { refuse, statusOf } from './refusal.ts';

const address = /^\/draw\/(lineage|descent)\/([^/]+)\.(svg|png)$/;

/**
 * Drawings: `/draw/lineage/<id>.svg` (with `towards` and `depth` as the question has them) and `/draw/descent/<id>.svg`,
 * and the same as `.png`. With `as-of` as of a change set, day or moment; with `without` without some claims.
 */
export function drawings(questions: Questions, turns: Turns, log: Log): Plugin<ApiContext> {
  const tell = errorTeller(log);
  return {
    async onRequest({ request, url, endResponse }) {
      const [, what, id, form] = address.exec(url.pathname) ?? [];
      if (what === undefined || id === undefined) return;
      if (request.method !== 'GET' && request.method !== 'HEAD') return endResponse(notAllowed(request.method));
      try {
        const asked = askedBy(what, id, url.searchParams);
        const whatIf = whatIfOf(url.searchParams);
        endResponse(await turns.run(() => drawn(questions, asked, whatIf, form), request.signal));
      } catch (error) {
        endResponse(refused(tell(error)));
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

function whatIfOf(given: URLSearchParams): WhatIf {
  const when = given.get('as-of');
  const claims = given.get('without')?.split(',') ?? [];
  return {
    ...(when === null ? {} : { asOf: asOfText(when) }),
    ...(claims.length === 0 ? {} : { without: { claims } }),
  };
}

function towardsOf(word: string): Towards {
  const found = (['SOURCES', 'COPIES', 'BOTH'] as const).find(each => each === word.toUpperCase());
  if (found !== undefined) return found;
  const message = `towards: expected sources, copies or both, came "${word.slice(0, 60)}"`;
  throw new PlatestemmaError('INPUT_INVALID', message, { place: { field: 'towards' } });
}

async function drawn(given: Questions, asked: DrawAsked, whatIf: WhatIf, form: string | undefined): Promise<Response> {
  const { questions } = isGiven(whatIf) ? await given.given(whatIf) : { questions: given };
  const svg = await questions.draw(asked);
  return form === 'svg' ? picture(svg, 'image/svg+xml; charset=utf-8') : picture(await svgToPng(svg), 'image/png');
}

/** A picture that may change with the next claim, and that runs and fetches nothing even where it is opened by itself. */
function picture(body: string | Uint8Array, type: string): Response {
  const headers = { 'content-type': type, 'cache-control': 'no-cache', 'content-security-policy': policy };
  return new Response(body as BodyInit, { headers });
}

const policy = "default-src 'none'; sandbox; frame-ancestors 'self'";

function refused({ message, extensions }: GraphQLError): Response {
  const { code, place, id } = extensions as { code: ErrorCode; place?: SourcePlace; id?: string };
  const headers: Readonly<Record<string, string>> = code === 'SERVER_BUSY' ? { 'retry-after': '1' } : {};
  return refuse({ status: statusOf(code), code, message, place: place ?? { field: 'path' }, id, headers });
}

function notAllowed(method: string): Response {
  const message = `expected GET, came ${method.slice(0, 20)}`;
  const place = { field: 'method' };
  return refuse({ status: 405, code: 'INPUT_INVALID', message, place, headers: { allow: 'GET, HEAD' } });
}
