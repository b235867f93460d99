import { parseJson } from '../../domain/text/parse-json.ts';
import { PlatestemmaError } from '../../errors.ts';

/** What GraphQL over HTTP asks with: https://graphql.github.io/graphql-over-http/draft/#sec-Request-Parameters */
export interface RequestParams {
  readonly query: string;
  readonly operationName?: string;
  readonly variables?: Readonly<Record<string, unknown>>;
  readonly extensions?: Readonly<Record<string, unknown>>;
}

type Name = keyof RequestParams;

const names: readonly string[] = ['query', 'operationName', 'variables', 'extensions'] satisfies Name[];

/** @throws INPUT_INVALID with the name of the parameter; a body that is no UTF-8 is refused, so that no character is lost */
export function paramsOfBody(body: Uint8Array): RequestParams {
  const given = parsed(textOf(body), 'body');
  if (!isObject(given)) throw invalid('body', `expected a JSON object, came ${nameOf(given)}`);
  const unknown = Object.keys(given).find(name => !names.includes(name));
  if (unknown !== undefined)
    throw invalid(short(unknown), `expected ${names.join(', ')} in the body, came "${short(unknown)}"`);
  return checked(given);
}

/** @throws INPUT_INVALID with the name of the parameter */
export function paramsOfAddress({ searchParams }: URL): RequestParams {
  const given: Record<string, unknown> = {};
  for (const name of names) {
    const text = searchParams.get(name);
    if (text === null || (text === '' && name !== 'query')) continue;
    given[name] = name === 'variables' || name === 'extensions' ? parsed(text, name) : text;
  }
  return checked(given);
}

function checked(given: Readonly<Record<string, unknown>>): RequestParams {
  const { query, operationName, variables, extensions } = given;
  if (typeof query !== 'string') throw invalid('query', `expected a query as text, came ${nameOf(query)}`);
  if (!(isNone(operationName) || typeof operationName === 'string'))
    throw invalid('operationName', `expected the name of an operation as text, came ${nameOf(operationName)}`);
  for (const [name, value] of Object.entries({ variables, extensions })) {
    if (!isNone(value) && !isObject(value)) throw invalid(name, `expected a JSON object, came ${nameOf(value)}`);
  }
  return Object.fromEntries(
    Object.entries({ query, operationName, variables, extensions }).filter(([, value]) => !isNone(value)),
  ) as unknown as RequestParams;
}

function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw invalid('body', 'expected UTF-8, came bytes that are none');
  }
}

function parsed(text: string, field: string): unknown {
  try {
    return parseJson(text);
  } catch (cause) {
    throw invalid(field, `expected JSON, came "${short(text)}": ${(cause as Error).message}`);
  }
}

function invalid(field: string, message: string): PlatestemmaError {
  return new PlatestemmaError('INPUT_INVALID', `${field}: ${message}`, { place: { field } });
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isNone(value: unknown): boolean {
  return value === undefined || value === null;
}

function nameOf(value: unknown): string {
  if (value === undefined) return 'none';
  if (value === null) return 'null';
  return Array.isArray(value) ? 'a list' : typeof value === 'object' ? 'an object' : JSON.stringify(value).slice(0, 60);
}

function short(text: string): string {
  return text.slice(0, 60);
}
