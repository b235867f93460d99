import type { ErrorCode, SourcePlace } from '../errors.ts';

/** Why a request is not answered, before or beside GraphQL. */
export interface Refusal {
  /** Status by RFC 9110. */
  readonly status: number;
  readonly code: ErrorCode;
  readonly message: string;
  readonly place?: SourcePlace | undefined;
  /** Id under which the log has an unexpected error. */
  readonly id?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

const json = { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store' };

/** Sentences quote what came, however long that was. */
const longestMessage = 1_000;

export function clipped(message: string): string {
  return message.length <= longestMessage ? message : `${message.slice(0, longestMessage)}…`;
}

/** A refusal in the form in which GraphQL tells errors. */
export function refusalBody({ code, message, place, id }: Refusal): string {
  return JSON.stringify({ errors: [{ message: clipped(message), extensions: { code, place, id } }] });
}

export function refuse(refusal: Refusal): Response {
  return new Response(refusalBody(refusal), { status: refusal.status, headers: { ...json, ...refusal.headers } });
}

export function jsonResponse(status: number, body: unknown): Response {
  return new Response(JSON.stringify(body), { status, headers: json });
}

/** Status of an answer that has this error and no data. */
export function statusOf(code: ErrorCode): number {
  switch (code) {
    case 'NOT_FOUND':
      return 404;
    case 'NOT_ALLOWED':
      return 403;
    case 'BROKEN_PROMISE':
      return 500;
    case 'STORE_TIMEOUT':
      return 504;
    default:
      return code.startsWith('STORE_') || code === 'SERVER_BUSY' ? 503 : 400;
  }
}
