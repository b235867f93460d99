import type { Api } from '../../src/api/create-api.ts';

export interface Told {
  readonly message: string;
  readonly path?: readonly (string | number)[];
  readonly extensions?: Readonly<Record<string, unknown>>;
}

export interface Answer {
  readonly status: number;
  readonly data?: unknown;
  readonly errors?: readonly Told[];
}

/** Asks a query as a client would, over HTTP. */
export async function ask(
  api: Api,
  query: string,
  variables?: Readonly<Record<string, unknown>>,
  signal?: AbortSignal,
): Promise<Answer> {
  const response = await api.fetch(
    new Request('http://localhost/graphql', {
      method: 'POST',
      headers: { 'content-type': 'application/json', accept: 'application/graphql-response+json' },
      body: JSON.stringify({ query, variables }),
      signal: signal ?? null,
    }),
  );
  return { status: response.status, ...((await response.json()) as object) };
}

/** Data of an answer that has no errors. */
export async function data(api: Api, query: string, variables?: Readonly<Record<string, unknown>>): Promise<unknown> {
  const answer = await ask(api, query, variables);
  if (answer.errors !== undefined) throw new Error(answer.errors.map(error => error.message).join('; '));
  return answer.data;
}

/** Codes of the errors of an answer. */
export async function codes(
  api: Api,
  query: string,
  variables?: Readonly<Record<string, unknown>>,
): Promise<unknown[]> {
  return ((await ask(api, query, variables)).errors ?? []).map(error => error.extensions?.['code']);
}
